import { numberText } from "./number.ts";
import { cmFromIn, mmFromIn } from "./units.ts";

export type LengthUnit = "in" | "cm";

const partsPerInch = 32;

/** The nearest 1/32 of an inch as a workshop says it: "45 1/4", "27/32", "44". */
export function fractionText(valueIn: number): string {
  const parts = Math.round(Math.abs(valueIn) * partsPerInch);
  const whole = Math.floor(parts / partsPerInch);
  const sign = valueIn < 0 && parts > 0 ? "−" : "";
  const [top, bottom] = lowestTerms(parts % partsPerInch, partsPerInch);
  if (top === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${top}/${bottom}` : `${sign}${whole} ${top}/${bottom}`;
}

function lowestTerms(top: number, bottom: number): readonly [number, number] {
  return top > 0 && top % 2 === 0 ? lowestTerms(top / 2, bottom / 2) : [top, bottom];
}

/** A length as somebody would set it out at the bench: "45.25 in (45 1/4)" or "114.9 cm". */
export function lengthText(valueIn: number, unit: LengthUnit): string {
  if (unit === "cm") return `${numberText(cmFromIn(valueIn), 1)} cm`;
  const decimal = numberText(valueIn, 3);
  const fraction = fractionText(valueIn);
  return decimal === fraction ? `${decimal} in` : `${decimal} in (${fraction})`;
}

/** A tip, bore, butt or core: the trade's size in inches, with millimetres for those who read centimetres. */
export function diameterText(valueIn: number, unit: LengthUnit): string {
  const inches = `${numberText(valueIn, 4).replace(/^0\./, ".")} in`;
  return unit === "cm" ? `${inches} (${numberText(mmFromIn(valueIn), 2)} mm)` : inches;
}
