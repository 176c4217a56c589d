import { Worker } from "node:worker_threads";
import type { PlanModel, PlanSolution } from "@ferrule/core";
import type { PlanMessage, PlanTask } from "./plan-worker.ts";

/** A plan that is being solved in a thread of its own. */
export interface RunningPlan {
  /** The answer: by then the best that was found, with what is proved of it. Rejected where the model contradicts itself. */
  readonly solution: Promise<PlanSolution>;
  /** Ends it soon, with the best so far for an answer. */
  stop(): void;
}

export interface PlanEffort {
  readonly seconds: number;
  readonly relativeGap: number;
  readonly onProgress?: (sofar: PlanSolution) => void;
}

/** The solver looks at the clock and the flag when it can, which may be late; after so long the thread is ended from outside. */
const graceMs = 2_000;
/** From source there is no JavaScript of the thread yet, and its test kit makes it. */
const entry = import.meta.url.endsWith(".ts") ? "./plan-worker.test-kit.mjs" : "./plan-worker.js";

/** Solves a plan in a thread of its own, so that nobody waits for it who need not. */
export function startPlan(model: PlanModel, { seconds, relativeGap, onProgress }: PlanEffort): RunningPlan {
  const flag = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const workerData: PlanTask = { model, seconds, relativeGap, flag };
  const worker = new Worker(new URL(entry, import.meta.url), { workerData, execArgv: [] });
  let latest: PlanSolution | undefined;
  let timer: NodeJS.Timeout | undefined;
  const endIn = (ms: number) => {
    clearTimeout(timer);
    timer = setTimeout(() => void worker.terminate(), ms);
  };
  const solution = new Promise<PlanSolution>((resolve, reject) => {
    worker.on("message", (message: PlanMessage) => {
      if (latest === undefined) endIn(seconds * 1000 + graceMs);
      latest = message.solution;
      if (message.done) resolve(message.solution);
      else onProgress?.(message.solution);
    });
    worker.on("error", reject);
    worker.on("exit", () => {
      clearTimeout(timer);
      if (latest === undefined) reject(new Error("the thread that solves the plan ended without an answer"));
      else resolve(latest);
    });
  });
  return {
    solution,
    stop: () => {
      Atomics.store(new Int32Array(flag), 0, 1);
      endIn(graceMs);
    },
  };
}
