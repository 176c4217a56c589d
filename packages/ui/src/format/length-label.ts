import { fractionText, type LengthUnit } from "./length.ts";
import { numberText } from "./number.ts";
import { cmFromIn } from "./units.ts";

/** A length as short as a drawing wants it: "45 1/4 in", or "114.9 cm". */
export function lengthLabel(valueIn: number, unit: LengthUnit): string {
  return unit === "cm" ? `${numberText(cmFromIn(valueIn), 1)} cm` : `${fractionText(valueIn)} in`;
}
