import type { LengthUnit } from "./length.ts";
import { cmFromIn } from "./units.ts";

/** A quantity as it is typed into a field, exact enough to come back as it was. `none` is any unit but a length's. */
export function lengthInput(value: number, unit: LengthUnit | "none"): string {
  return unit === "cm" ? String(Number(cmFromIn(value).toFixed(6))) : String(value);
}
