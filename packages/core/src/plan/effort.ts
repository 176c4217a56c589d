import type { Counts } from "./draft.ts";
import type { Prices } from "./dual-bound.ts";
import type { PlanSolution } from "./plan-model.ts";

/** What may be spent on solving. `now` is in milliseconds; solving ends at `until`. */
export interface Effort {
  readonly relativeGap: number;
  /** A choice to begin from, as far as there is room for it. */
  readonly start?: Counts;
  readonly until: number;
  readonly now: () => number;
  readonly shouldStop: () => boolean;
  readonly onBetter: (sofar: SolvedPart) => void;
}

export interface SolvedPart {
  readonly counts: Counts;
  readonly net: number;
  readonly bound: number;
  /** Of the relaxation, or that need none; null where neither proves anything. */
  readonly prices: Prices | null;
  readonly method: PlanSolution["method"];
  readonly stopped: boolean;
}
