import type { PlanInput, Want, Watch } from "@ferrule/core";

/** What a plan rests on, without the rules: those are code, and the thread has them. */
export type PlanWorld = Omit<PlanInput, "rules" | "wishes">;

/** Judgements, as many as are posted. */
export interface JudgementsTask {
  readonly do: "judgements";
}

/** Plans, as many as are posted. */
export interface PlansTask {
  readonly do: "plans";
}

export interface ValuesTask {
  readonly do: "values";
  readonly world: PlanWorld;
  readonly wishes: PlanInput["wishes"];
  readonly wants: readonly Want[];
}

export interface RowsTask {
  readonly do: "rows";
  readonly world: PlanWorld;
  readonly watches: readonly Watch[];
}

export type ThreadTask = JudgementsTask | PlansTask | ValuesTask | RowsTask;
