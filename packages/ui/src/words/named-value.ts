import { factValueText } from "../format/fact-value.ts";
import type { LengthUnit } from "../format/length.ts";
import { moneyText } from "../format/money.ts";
import { swingWeightText } from "../format/swing-weight.ts";

/** Fields that hold a number which is no quantity: a year is never written as 2,021. */
const plainNumbers: ReadonlySet<string> = new Set(["year", "rate", "version"]);

/** The value of any field of anything that is kept, as a person reads it. */
export function namedValue(field: string, value: unknown, unit: LengthUnit, currency: string): string {
  const name = field.split(".").at(-1) ?? field;
  if (value === undefined || value === null) return "nothing";
  if (isMoney(value)) return moneyText(value.amountMinor, value.currency);
  if (typeof value === "number") {
    if (name.endsWith("Minor")) return moneyText(value, currency);
    if (plainNumbers.has(name)) return String(value);
    return name === "swingWeightPoints" ? swingWeightText(value) : factValueText(field, value, unit);
  }
  if (Array.isArray(value))
    return value.length === 0 ? "none" : value.map((one) => itemText(field, one, unit, currency)).join(", ");
  return typeof value === "object" && !("value" in value)
    ? recordText(value, unit, currency)
    : factValueText(field, value, unit);
}

function itemText(field: string, value: unknown, unit: LengthUnit, currency: string): string {
  const { id: _id, name, ...rest } = (value ?? {}) as { id?: unknown; name?: unknown };
  if (typeof name !== "string") return namedValue(field, value, unit, currency);
  return `${name} (${recordText(rest, unit, currency)})`;
}

function recordText(record: object, unit: LengthUnit, currency: string): string {
  return Object.entries(record)
    .map(([name, value]) => `${spaced(name)} ${namedValue(name, value, unit, currency)}`)
    .join(", ");
}

/** "roundTripKm" is "round trip": the unit stands at the value, or goes without saying. */
function spaced(name: string): string {
  return name
    .replace(/(?:In|G|Deg|Cm3|KgCm2|Points|Minor)$/, "")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase();
}

function isMoney(value: unknown): value is { amountMinor: number; currency: string } {
  return typeof value === "object" && value !== null && "amountMinor" in value && "currency" in value;
}
