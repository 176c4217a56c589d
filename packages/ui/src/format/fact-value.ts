import { fieldChoiceText } from "../words/choice-words.ts";
import type { LengthUnit } from "./length.ts";
import { quantityText, writtenText } from "./written-reading.ts";

/** The value of any field, as a person reads it; a value with no words of its own is shown as it stands. */
export function factValueText(field: string, value: unknown, unit: LengthUnit): string {
  if (value === undefined || value === null) return "not known";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return fieldChoiceText(value);
  if (Array.isArray(value))
    return value.length === 0 ? "none" : value.map((item) => factValueText(field, item, unit)).join(", ");
  if (typeof value === "number") return quantityText(field, value, unit);
  return writtenText(field, value, unit) ?? rangeText(field, value, unit);
}

/** A range of a want, such as `{ min: 44 }`, or any other record, name by name. */
function rangeText(field: string, value: unknown, unit: LengthUnit): string {
  const { min, max, ...rest } = value as Record<string, unknown>;
  const words = [
    ...(min === undefined ? [] : [`at least ${factValueText(field, min, unit)}`]),
    ...(max === undefined ? [] : [`at most ${factValueText(field, max, unit)}`]),
    ...Object.entries(rest).map(([name, item]) => `${name} ${factValueText(name, item, unit)}`),
  ];
  return words.join(", ");
}
