import { Worker } from "node:worker_threads";
import type { ThreadTask } from "./thread-task.ts";

/** What a thread is given: something to do, with a flag that is not zero once it has to come to an end; or more to do it with. */
export type ToThread =
  | { readonly task: ThreadTask; readonly flag: SharedArrayBuffer }
  | { readonly post: unknown };

/** What a thread says: something of its task, or that the task has ended, with the reason where it failed. */
export type FromThread = { readonly said: unknown } | { readonly ended: Error | null };

export interface ThreadEvents<Message> {
  message(message: Message): void;
  /** Called once, when the task has ended: with the reason where it failed. */
  ended(error: Error | undefined): void;
}

/** One task in a thread. */
export interface Thread {
  post(message: unknown): void;
  /** Asks the task to come to an end with what it has; one that does not within some seconds is ended. */
  stop(): void;
  /** Ends it at once; nothing more is heard of it but that it has ended. */
  end(): void;
}

/** The threads of one server. One that is done with its task is kept for the next: it has everything loaded. */
export interface ThreadPool {
  start<Message>(task: ThreadTask, on: ThreadEvents<Message>): Thread;
  /** Ends them all, when the server closes. */
  close(): Promise<void>;
}

/** A solver looks at the flag when it can, which may be late. */
const graceMs = 10_000;
const idleKept = 1;

/** From source there is no JavaScript of the thread yet, and its test kit makes it. */
const entry = import.meta.url.endsWith(".ts") ? "./thread.test-kit.mjs" : "./thread.js";

export function openThreadPool(): ThreadPool {
  const all = new Set<Worker>();
  const idle: Worker[] = [];
  const open = () => {
    const worker = new Worker(new URL(entry, import.meta.url), { execArgv: [] });
    all.add(worker);
    // A thread that waits for its next task does not keep the program up.
    worker.once("exit", () => {
      all.delete(worker);
      if (idle.includes(worker)) idle.splice(idle.indexOf(worker), 1);
    });
    return worker;
  };
  const giveBack = (worker: Worker) => {
    if (idle.length >= idleKept) void worker.terminate();
    else idle.push(worker);
  };
  return {
    start: (task, on) => run(idle.pop() ?? open(), task, on, giveBack),
    close: async () => {
      await Promise.all([...all].map((worker) => worker.terminate()));
    },
  };
}

function run<Message>(
  worker: Worker,
  task: ThreadTask,
  on: ThreadEvents<Message>,
  giveBack: (worker: Worker) => void,
): Thread {
  const flag = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  let timer: NodeJS.Timeout | undefined;
  let isOver = false;
  const over = (error: Error | undefined) => {
    if (isOver) return;
    isOver = true;
    clearTimeout(timer);
    worker.off("message", hear).off("error", over).off("exit", exit);
    on.ended(error);
  };
  const exit = () => over(undefined);
  const hear = (message: FromThread) => {
    if ("said" in message) return on.message(message.said as Message);
    over(message.ended ?? undefined);
    giveBack(worker);
  };
  worker.on("message", hear).on("error", over).on("exit", exit);
  const tell = (message: ToThread) => worker.postMessage(message);
  tell({ task, flag });
  const end = () => {
    if (isOver) return;
    worker.off("message", hear);
    void worker.terminate();
  };
  return {
    post: (message) => {
      if (!isOver) tell({ post: message });
    },
    stop: () => {
      Atomics.store(new Int32Array(flag), 0, 1);
      if (!isOver) timer ??= setTimeout(end, graceMs);
    },
    end,
  };
}
