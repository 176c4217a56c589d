import { droppedSafetyFaults, type Part, type Refusal } from "@ferrule/core";

/** A fault of safety is never taken back in passing, by hand or by a file: a person clears it with a note. */
export function droppedFaultRefusals(before: Part | undefined, part: Part): Refusal[] {
  if (before === undefined) return [];
  return droppedSafetyFaults(before, part).map((fault) => ({
    field: "faults",
    got: `no ${fault}, which was said of this part before`,
    expected: `${JSON.stringify(fault)} among them, until a person clears it with a note on the part's inspection`,
  }));
}
