import type { Deal, DealQuery } from "@ferrule/core";
import type { JudgeMessage, JudgePost } from "../threads/judge-listings.ts";
import type { Thread, ThreadPool } from "../threads/thread-pool.ts";
import type { PlanWorld } from "../threads/thread-task.ts";

/** Judges listings for the stored bench in a thread of their own, which keeps what is worked out once for a bench. */
export interface Judgements {
  /** `priced` names what the prices of the bench rest on. Rejected where the thread fails. */
  judge(priced: string, world: PlanWorld, query: DealQuery): Promise<Deal>;
}

interface Waiting {
  readonly resolve: (deal: Deal) => void;
  readonly reject: (error: Error) => void;
}

/** How long a thread is kept that has nothing to do. */
const idleMs = 300_000;

export function openJudgements(pool: ThreadPool): Judgements {
  const waiting = new Map<number, Waiting>();
  let thread: Thread | undefined;
  let timer: NodeJS.Timeout | undefined;
  let count = 0;
  const hear = (message: JudgeMessage) => {
    const asked = waiting.get(message.number);
    waiting.delete(message.number);
    if ("deal" in message) asked?.resolve(message.deal);
    else asked?.reject(message.error);
    if (waiting.size === 0) timer = setTimeout(leave, idleMs).unref();
  };
  const leave = () => {
    post("no-more");
    thread = undefined;
  };
  const ended = (error: Error | undefined) => {
    thread = undefined;
    for (const asked of waiting.values())
      asked.reject(error ?? new Error("the thread that judges has ended"));
    waiting.clear();
  };
  const post = (message: JudgePost) => {
    thread ??= pool.start<JudgeMessage>({ do: "judgements" }, { message: hear, ended });
    thread.post(message);
  };
  return {
    judge: (priced, world, query) =>
      new Promise((resolve, reject) => {
        clearTimeout(timer);
        count += 1;
        waiting.set(count, { resolve, reject });
        post({ number: count, priced, world, query });
      }),
  };
}
