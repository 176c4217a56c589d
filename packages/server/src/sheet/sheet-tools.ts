import type { Answers } from "../bench/answers.ts";
import type { Bench } from "../bench/bench.ts";
import type { ReferenceTables } from "../reference-files.ts";
import type { Tables } from "../store/tables.ts";
import type { Costs } from "../trade/costs.ts";
import type { ReadyModels } from "../trade/ready-models.ts";

/** What sheets, inspections and sale descriptions work with. */
export interface SheetTools {
  readonly tables: Tables;
  readonly bench: Bench;
  readonly answers: Answers;
  readonly reference: ReferenceTables;
  readonly costs: Costs;
  readonly models: ReadyModels;
  readonly today: () => string;
}
