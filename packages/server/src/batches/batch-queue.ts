import type { BatchesTable, BatchState } from "../store/batches.ts";
import type { BatchRun } from "./run-batch.ts";

/** Batches one after another: each has all the threads. */
export interface BatchQueue {
  begin(id: string): void;
  /** Stops one that runs or waits; settled when nothing more of it is written. */
  stop(id: string): Promise<void>;
  /** Lets what runs be, to go on at the next start; settled when nothing more is written. */
  close(): Promise<void>;
}

interface Running {
  readonly id: string;
  readonly run: BatchRun;
  readonly ended: Promise<void>;
}

export function openBatchQueue(
  table: BatchesTable,
  start: (id: string) => BatchRun,
  onFailure: (error: unknown) => void,
): BatchQueue {
  const waiting: string[] = [];
  let running: Running | undefined;
  let isClosing = false;
  const finish = (id: string, state: BatchState) => {
    running = undefined;
    if (isClosing) return;
    table.setState(id, state);
    next();
  };
  const fail = (id: string, error: unknown) => {
    onFailure(error);
    finish(id, "stopped");
  };
  const next = () => {
    const id = running === undefined ? waiting.shift() : undefined;
    if (id === undefined) return;
    const run = start(id);
    const ended = run.ended
      .then(() => finish(id, table.open(id).length === 0 ? "done" : "stopped"))
      .catch((error: unknown) => fail(id, error));
    running = { id, run, ended };
  };
  return {
    begin: (id) => {
      waiting.push(id);
      next();
    },
    stop: async (id) => {
      const place = waiting.indexOf(id);
      if (place >= 0) {
        waiting.splice(place, 1);
        table.setState(id, "stopped");
      }
      if (running?.id !== id) return;
      running.run.stop();
      await running.ended;
    },
    close: async () => {
      isClosing = true;
      waiting.length = 0;
      await running?.ended;
    },
  };
}
