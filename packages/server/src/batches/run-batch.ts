import type { FailedRow, JudgedRow, RowsMessage, RowToJudge } from "../threads/judge-rows.ts";
import type { Thread, ThreadPool } from "../threads/thread-pool.ts";
import type { RowsTask } from "../threads/thread-task.ts";

/** The rows of one batch on their way through the threads. */
export interface BatchRun {
  /** Ends when all rows are done, or when it was stopped; rejected where a thread failed. */
  readonly ended: Promise<void>;
  /** Stops it; what has been said by then is entered. */
  stop(): void;
}

/** Rows that a thread is given at once. */
const rowsAtOnce = 8;
/** A thread has to make its own bench ready, which pays from so many rows on. */
const rowsPerThread = 24;
/** What threads say is written to disk together: one write costs as much as many. */
const flushMs = 100;

export function runBatch(
  pool: ThreadPool,
  task: RowsTask,
  rows: readonly RowToJudge[],
  threadsMost: number,
  enter: (results: readonly (JudgedRow | FailedRow)[]) => void,
): BatchRun {
  const count = Math.max(1, Math.min(threadsMost, Math.ceil(rows.length / rowsPerThread)));
  const said: (JudgedRow | FailedRow)[] = [];
  const threads: Thread[] = [];
  let at = 0;
  let isStopped = false;
  const flush = () => {
    if (said.length > 0) enter(said.splice(0));
  };
  const feed = (thread: Thread | undefined) => {
    const next = isStopped ? [] : rows.slice(at, at + rowsAtOnce);
    at += next.length;
    thread?.post(next.length > 0 ? next : "no-more");
  };
  const timer = setInterval(flush, flushMs);
  const work = (place: number) =>
    new Promise<void>((resolve, reject) => {
      threads[place] = pool.start<RowsMessage>(task, {
        message: (message) => {
          if (message === "more") feed(threads[place]);
          else said.push(message);
        },
        ended: (error) => (error ? reject(error) : resolve()),
      });
    });
  const stop = () => {
    isStopped = true;
    for (const thread of threads) thread.stop();
  };
  const ended = Promise.all(Array.from({ length: count }, (_, place) => work(place))).then(flush);
  const over = () => clearInterval(timer);
  ended.then(over, () => {
    over();
    stop();
  });
  return { ended, stop };
}
