import type { LengthUnit } from "./length.ts";
import { decimalsFor, fixedText } from "./number.ts";
import { swingWeightText } from "./swing-weight.ts";
import { cmFromIn } from "./units.ts";

/** A computed value between the ends of its 95 % interval. */
export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** "315 g (311–319)"; as many decimals as the width of the interval bears, at most `most`. */
export function intervalText({ value, low, high }: Interval, unit: string, most: number): string {
  const decimals = decimalsFor(low, high, most);
  const word = unit === "" ? "" : unit === "°" ? unit : ` ${unit}`;
  const [lowText, highText] = [fixedText(low, decimals), fixedText(high, decimals)];
  const whole = `${fixedText(value, decimals)}${word}`;
  if (lowText === highText) return whole;
  const dash = highText.startsWith("−") || lowText.startsWith("−") ? " to " : "–";
  return `${whole} (${lowText}${dash}${highText})`;
}

/** "45.2 in (45.0–45.4)", or the same in centimetres. */
export function lengthIntervalText(interval: Interval, unit: LengthUnit): string {
  if (unit === "in") return intervalText(interval, "in", 2);
  const { value, low, high } = interval;
  return intervalText({ value: cmFromIn(value), low: cmFromIn(low), high: cmFromIn(high) }, "cm", 1);
}

/** "D2.3 (D0.9–D3.7)". */
export function swingWeightIntervalText(estimate: { points: number; low: number; high: number }): string {
  return `${swingWeightText(estimate.points)} (${swingWeightText(estimate.low)}–${swingWeightText(estimate.high)})`;
}
