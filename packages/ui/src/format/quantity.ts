import type { MeasuredQuantity } from "@ferrule/core";
import { intervalText, lengthIntervalText, swingWeightIntervalText } from "./interval.ts";
import { fractionText, type LengthUnit, lengthText } from "./length.ts";
import { numberText } from "./number.ts";
import { swingWeightText } from "./swing-weight.ts";
import { cmFromIn } from "./units.ts";

interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A measured or estimated figure of a club by itself. */
export function quantityText(quantity: MeasuredQuantity, value: number, unit: LengthUnit): string {
  if (quantity === "playingLengthIn") return lengthText(value, unit);
  if (quantity === "swingWeightPoints") return swingWeightText(value);
  return `${numberText(value, 1)} ${quantity === "massG" ? "g" : "cpm"}`;
}

/** The same between the ends of its interval. */
export function quantitySpanText(quantity: MeasuredQuantity, span: Span, unit: LengthUnit): string {
  if (quantity === "playingLengthIn") return lengthIntervalText(span, unit);
  if (quantity === "swingWeightPoints") return swingWeightIntervalText({ ...span, points: span.value });
  return quantity === "massG" ? intervalText(span, "g", 1) : intervalText(span, "cpm", 0);
}

/** By how much, with its sign: "+0.4 points". */
export function quantityChangeText(quantity: MeasuredQuantity, value: number, unit: LengthUnit): string {
  const sign = value < 0 ? "−" : "+";
  const size = Math.abs(value);
  switch (quantity) {
    case "playingLengthIn":
      return unit === "cm"
        ? `${sign}${numberText(cmFromIn(size), 1)} cm`
        : `${sign}${numberText(size, 2)} in`;
    case "swingWeightPoints":
      return `${sign}${numberText(size, 1)} points`;
    case "massG":
      return `${sign}${numberText(size, 1)} g`;
    case "frequencyCpm":
      return `${sign}${numberText(size, 0)} cpm`;
  }
}

/** A length on both of the workshop's rules: "44 17/32 in · 1131 mm". */
export function workshopText({ nearestIn, nearestMm }: { nearestIn: number; nearestMm: number }): string {
  return `${fractionText(nearestIn)} in · ${numberText(nearestMm, 1)} mm`;
}
