import type { Fault } from "../parts/fault.ts";
import type { Part } from "../parts/part.ts";

/** Faults with which a thing must not be sold to be swung: it can break or come apart. */
const unsafe: ReadonlySet<Fault> = new Set([
  "crack",
  "caved-face",
  "crease-shaft",
  "dent-shaft",
  "exposed-fibre",
  "bent-shaft",
  "adapter-damaged",
  "loose-joint",
]);

export const isUnsafe = (fault: Fault) => unsafe.has(fault);

/** The faults asserted of these parts with which they must not be swung. */
export function unsafeFaults(parts: readonly Part[]): Fault[] {
  return parts.flatMap(({ faults }) => (faults ?? []).filter((fault) => unsafe.has(fault)));
}
