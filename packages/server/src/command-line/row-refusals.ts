import type { Refusal } from "@ferrule/core";
import type { RowRefusal } from "../transfer/entry.ts";

/** Why rows were not taken, each with its line and its column or field. */
export function rowRefusals(rows: readonly RowRefusal[]): Refusal[] {
  return rows.map(({ line, column, got, expected }) => ({ field: `line ${line}, ${column}`, got, expected }));
}
