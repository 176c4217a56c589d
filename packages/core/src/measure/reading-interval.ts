import type { Interval } from "../interval.ts";
import type { Reading } from "../parts/reading.ts";
import { interval95 } from "./uncertainty.ts";

/** The 95 % interval of a reading, in the reading's own unit. */
export function readingInterval({ value, plusMinus }: Reading): Interval {
  return interval95({ value, standardUncertainty: plusMinus });
}

/** The 95 % interval of one reading less another, in their common unit; the two are taken as independent. */
export function differenceInterval(one: Reading, other: Reading): Interval {
  return interval95({
    value: one.value - other.value,
    standardUncertainty: Math.hypot(one.plusMinus, other.plusMinus),
  });
}
