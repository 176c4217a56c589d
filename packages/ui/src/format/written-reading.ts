import { type FieldPath, fields } from "@ferrule/core";
import { diameterText, type LengthUnit, lengthText } from "./length.ts";
import { numberText } from "./number.ts";
import { cmFromIn } from "./units.ts";

const unitWords = { g: " g", deg: "°", cm3: " cm³", cpm: " cpm", none: "" } as const;

/** A reading as it was written, in its field's unit: "45.25 in (45 1/4)", "198 g ± 2". `undefined` where there is none. */
export function writtenText(path: string, written: unknown, unit: LengthUnit): string | undefined {
  if (typeof written === "number") return quantityText(path, written, unit);
  if (typeof written !== "object" || written === null || !("value" in written)) return undefined;
  const { value, plusMinus } = written as { value: unknown; plusMinus?: unknown };
  if (typeof value !== "number") return undefined;
  const text = quantityText(path, value, unit);
  return typeof plusMinus === "number" && plusMinus > 0
    ? `${text} ± ${plainText(path, plusMinus, unit)}`
    : text;
}

/** A number in the unit that its field's name says. */
export function quantityText(path: string, value: number, unit: LengthUnit): string {
  const kind = unitOf(path);
  if (kind !== "in") return `${numberText(value, 2)}${unitWords[kind]}`;
  return /diameterIn$/i.test(path) ? diameterText(value, unit) : lengthText(value, unit);
}

function plainText(path: string, value: number, unit: LengthUnit): string {
  const inCm = unitOf(path) === "in" && unit === "cm" && !/diameterIn$/i.test(path);
  return numberText(inCm ? cmFromIn(value) : value, 4);
}

function unitOf(path: string): "in" | "g" | "deg" | "cm3" | "cpm" | "none" {
  const known =
    fields[path as FieldPath] ??
    fields[path.replace(/^(?:head|adapter|shaft|grip|holder)\./, "") as FieldPath];
  if (known) return known.unit;
  const suffix = /(In|G|Deg|Cm3|Cpm)$/.exec(path)?.[1]?.toLowerCase();
  return (suffix as "in" | "g" | "deg" | "cm3" | "cpm" | undefined) ?? "none";
}
