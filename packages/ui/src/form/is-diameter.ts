import type { FieldPath } from "@ferrule/core";

/** Sizes that the trade names in decimals of an inch whatever else it measures in: tips, bores, butts and cores. */
export function isDiameter(path: FieldPath): boolean {
  return /diameterIn$/i.test(path);
}
