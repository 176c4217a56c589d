import type { PlanInput, Want, Watch } from "@ferrule/core";

/** What a plan rests on, without the rules: those are code, and the thread has them. */
export type PlanWorld = Omit<PlanInput, "rules">;

export interface PlanTask {
  readonly do: "plan";
  readonly world: PlanWorld;
  readonly seconds: number;
}

export interface ValuesTask {
  readonly do: "values";
  readonly world: PlanWorld;
  readonly wants: readonly Want[];
}

export interface RowsTask {
  readonly do: "rows";
  readonly world: Omit<PlanWorld, "wishes">;
  readonly watches: readonly Watch[];
}

export type ThreadTask = PlanTask | ValuesTask | RowsTask;
