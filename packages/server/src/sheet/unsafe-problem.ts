import type { Part } from "@ferrule/core";
import { type SafetyStop, safetyStops } from "@ferrule/core";
import { problem } from "../errors.ts";

/** Why nothing is done with these parts; nothing where no fault of safety stands against any of them. */
export function unsafeProblem(parts: readonly Part[]) {
  const stops = safetyStops(parts);
  return stops.length === 0 ? undefined : problem("unsafe", undefined, stops.map(stopRefusal));
}

export function stopRefusal({ part, fault }: SafetyStop) {
  return {
    field: `part ${part}`,
    got: fault,
    expected: "no fault of safety: another part, or this fault cleared with a note on the part's inspection",
  };
}
