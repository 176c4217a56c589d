import type { LengthUnit } from "./length.ts";
import { inFromCm, inFromMm } from "./units.ts";

const pattern =
  /^([+-]?)\s*(?:(\d+(?:[.,]\d+)?|[.,]\d+)(?:[\s-]+(\d+)\/(\d+))?|(\d+)\/(\d+))\s*(in|inch|inches|"|″|cm|mm)?$/i;

/**
 * Inches from what somebody typed: "45 1/4", "45.25", "45,25", "27/32", "114.9 cm", "8.5 mm". A number without a unit is in
 * `unit`. `undefined` when it is no length.
 */
export function parseLength(text: string, unit: LengthUnit): number | undefined {
  const match = pattern.exec(text.trim().replace("−", "-"));
  if (!match) return undefined;
  const [, sign, whole, top, bottom, loneTop, loneBottom, suffix] = match;
  const fraction = fractionOf(top ?? loneTop, bottom ?? loneBottom);
  if (fraction === undefined) return undefined;
  const size = Number((whole ?? "0").replace(",", ".")) + fraction;
  return tidy(inchesOf(sign === "-" ? -size : size, suffix?.toLowerCase() ?? unit));
}

function fractionOf(top: string | undefined, bottom: string | undefined): number | undefined {
  if (top === undefined || bottom === undefined) return 0;
  return Number(bottom) === 0 ? undefined : Number(top) / Number(bottom);
}

function inchesOf(size: number, unit: string): number {
  if (unit === "cm") return inFromCm(size);
  return unit === "mm" ? inFromMm(size) : size;
}

/** Drops the noise of a conversion, far below what any rule or caliper reads. */
function tidy(valueIn: number): number {
  return Number(valueIn.toFixed(6));
}
