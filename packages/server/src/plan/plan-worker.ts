import { parentPort, workerData } from "node:worker_threads";
import { type PlanModel, type PlanSolution, solvePlan } from "@ferrule/core";
import { loadHighsSolver } from "./highs-solver.ts";

/** What the thread is given: the model, how long and how well to solve it, and a flag that is not zero once it has to stop. */
export interface PlanTask {
  readonly model: PlanModel;
  readonly seconds: number;
  readonly relativeGap: number;
  readonly flag: SharedArrayBuffer;
}

export interface PlanMessage {
  readonly done: boolean;
  readonly solution: PlanSolution;
}

/** Solves the plan that this thread was started for; each better answer is sent at once, the last one as `done`. */
export async function main(): Promise<void> {
  const { model, seconds, relativeGap, flag } = workerData as PlanTask;
  const stop = new Int32Array(flag);
  const send = (message: PlanMessage) => parentPort?.postMessage(message);
  const solution = await solvePlan(model, await loadHighsSolver(), {
    seconds,
    relativeGap,
    now: () => performance.now(),
    // The thread is deaf while it solves: only shared memory reaches it.
    shouldStop: () => Atomics.load(stop, 0) !== 0,
    onProgress: (sofar) => send({ done: false, solution: sofar }),
  });
  send({ done: true, solution });
}

if (import.meta.url.endsWith(".js")) await main();
