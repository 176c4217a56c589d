import type { Fault } from "../parts/fault.ts";
import type { Part } from "../parts/part.ts";
import { isUnsafe } from "../worth/unsafe-faults.ts";

/** A fault with which a part is not to be swung, so that nothing with it is built, described or sold as a club. */
export interface SafetyStop {
  readonly part: string;
  readonly fault: Fault;
}

/** Every fault of safety that stands against these parts; one is cleared by a person, with a note. */
export function safetyStops(parts: readonly Part[]): readonly SafetyStop[] {
  return parts.flatMap(({ id, faults }) =>
    (faults ?? []).filter(isUnsafe).map((fault) => ({ part: id, fault })),
  );
}

/** Faults of safety that a change of a part would drop without a word. */
export function droppedSafetyFaults(
  before: Pick<Part, "faults">,
  after: Pick<Part, "faults">,
): readonly Fault[] {
  return (before.faults ?? []).filter((fault) => isUnsafe(fault) && !(after.faults ?? []).includes(fault));
}
