/** One row or column bound: −∞ and ∞ where there is none. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** A linear programme to be maximised; columns that are `whole` take whole numbers. */
export interface LinearProgramme {
  readonly columns: readonly { readonly cost: number; readonly bounds: Bounds; readonly whole: boolean }[];
  readonly rows: readonly {
    readonly bounds: Bounds;
    readonly entries: readonly { readonly column: number; readonly factor: number }[];
  }[];
}

/** What a solver came to. `values` and `objective` are null where it has nothing that keeps within all bounds. */
export interface LinearAnswer {
  readonly status: "best" | "stopped" | "impossible" | "unbounded" | "failed";
  readonly values: readonly number[] | null;
  readonly objective: number | null;
  /** No answer is greater than this; null where the solver does not say. */
  readonly bound: number | null;
  /** What one more of a row's bound would bring, for a programme without whole columns. */
  readonly prices: readonly number[] | null;
}

/** When to be content: after so many seconds, or so near the best, as a share of it. */
export interface SolverOptions {
  readonly seconds: number;
  readonly relativeGap: number;
  /** A feasible value of every column to begin from. */
  readonly start?: readonly number[];
  /** Asked now and then while solving; once it says yes, the best so far is the answer. */
  readonly shouldStop?: () => boolean;
}

/** Whatever solves linear programmes: HiGHS in the server and in a worker of the page. */
export type LinearSolver = (programme: LinearProgramme, options: SolverOptions) => Promise<LinearAnswer>;
