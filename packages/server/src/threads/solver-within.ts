import {
  type LinearSolver,
  type PlanModel,
  type PlanOptions,
  type PlanSolution,
  solvePlan,
} from "@ferrule/core";

export interface SolveEffort {
  /** How much of the time that is left this model may take. */
  readonly share: number;
  readonly relativeGap: number;
  readonly start?: PlanOptions["start"];
  readonly onProgress?: PlanOptions["onProgress"];
}

/** Even a model that comes last is looked at for so long. */
const leastSeconds = 0.05;

/** A solver of one model after another within so many seconds in all, counted from the first model on. */
export function solverWithin(
  solver: LinearSolver,
  seconds: number,
  shouldStop: () => boolean,
): (model: PlanModel, effort: SolveEffort) => Promise<PlanSolution> {
  const now = () => performance.now();
  let until: number | undefined;
  return (model, { share, ...effort }) => {
    until ??= now() + seconds * 1000;
    const left = ((until - now()) / 1000) * share;
    return solvePlan(model, solver, { ...effort, seconds: Math.max(leastSeconds, left), now, shouldStop });
  };
}
