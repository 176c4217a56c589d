import { setPriority } from "node:os";
import { parentPort } from "node:worker_threads";
import type { LinearSolver } from "@ferrule/core";
import { loadHighsSolver } from "../plan/highs-solver.ts";
import { judgeListings } from "./judge-listings.ts";
import { judgeRows } from "./judge-rows.ts";
import { makePlans } from "./make-plans.ts";
import type { FromThread, ToThread } from "./thread-pool.ts";
import type { ThreadPort } from "./thread-port.ts";
import type { ThreadTask } from "./thread-task.ts";
import { valueWants } from "./value-wants.ts";

/** How far a thread steps back behind the one that answers requests (nice(1)): where cores are few, whoever waits for a reply goes first. */
const stepsBack = 10;

/** Does one task after another, as they come. */
export function main(): void {
  // On Linux this is of the calling thread alone (setpriority(2), "C library/kernel differences"); elsewhere it would be of the program.
  if (process.platform === "linux") setPriority(stepsBack);
  let inbox: Inbox | undefined;
  let solver: Promise<LinearSolver> | undefined;
  const loadOnce = () => {
    solver ??= loadHighsSolver();
    return solver;
  };
  parentPort?.on("message", (message: ToThread) => {
    if ("post" in message) return inbox?.put(message.post);
    inbox = new Inbox();
    void work(message.task, portOf(message.flag, inbox, loadOnce));
  });
}

/** Posts that wait for the task, or the task that waits for a post. */
class Inbox {
  readonly #waiting: unknown[] = [];
  #taker: ((message: unknown) => void) | undefined;

  put(message: unknown): void {
    const taker = this.#taker;
    this.#taker = undefined;
    if (taker) taker(message);
    else this.#waiting.push(message);
  }

  take(): Promise<unknown> {
    if (this.#waiting.length > 0) return Promise.resolve(this.#waiting.shift());
    return new Promise((resolve) => {
      this.#taker = resolve;
    });
  }
}

const tell = (message: FromThread) => parentPort?.postMessage(message);

function portOf(flag: SharedArrayBuffer, inbox: Inbox, solver: ThreadPort["solver"]): ThreadPort {
  const stop = new Int32Array(flag);
  return {
    shouldStop: () => Atomics.load(stop, 0) !== 0,
    say: (said) => tell({ said }),
    next: () => inbox.take(),
    solver,
  };
}

async function work(task: ThreadTask, port: ThreadPort): Promise<void> {
  try {
    await doTask(task, port);
    tell({ ended: null });
  } catch (error) {
    tell({ ended: error as Error });
  }
}

function doTask(task: ThreadTask, port: ThreadPort): Promise<void> {
  if (task.do === "plans") return makePlans(port);
  if (task.do === "judgements") return judgeListings(port);
  return task.do === "values" ? valueWants(task, port) : judgeRows(task, port);
}

if (import.meta.url.endsWith(".js")) main();
