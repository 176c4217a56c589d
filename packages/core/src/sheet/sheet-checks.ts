import type { Part } from "../parts/part.ts";
import { type InspectionRow, inspectionRowsFor } from "./inspection.ts";

/** One look at a part before work begins, and what has been said of it so far. */
export interface SheetCheck {
  readonly row: string;
  readonly question: string;
  /** `found` and `not-there` were said by somebody; `not-looked` was said by nobody. */
  readonly state: "found" | "not-there" | "not-looked";
}

/** What to look at on a part before it is worked on. What was denied is looked at again, for time has passed since. */
export function sheetChecks(part: Part, rows: readonly InspectionRow[]): readonly SheetCheck[] {
  return inspectionRowsFor(part, rows).map((row) => ({
    row: row.id,
    question: row.question,
    state: stateOf(part, row),
  }));
}

function stateOf({ faults = [], deniedFaults = [] }: Part, { yes, no }: InspectionRow): SheetCheck["state"] {
  if (yes.some((fault) => faults.includes(fault))) return "found";
  return no.length > 0 && no.every((fault) => deniedFaults.includes(fault)) ? "not-there" : "not-looked";
}
