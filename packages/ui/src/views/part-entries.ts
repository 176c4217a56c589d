import type { Part } from "@ferrule/core";

const elsewhere = new Set(["id", "kind", "faults", "deniedFaults", "note"]);

/** The facts of a part by dotted path, one entry each; readings stay whole. */
export function partEntries(part: Part): readonly (readonly [field: string, value: unknown])[] {
  return Object.entries(part)
    .filter(([name]) => !elsewhere.has(name))
    .flatMap(([name, value]) => spread(name, value));
}

function spread(name: string, value: unknown): (readonly [string, unknown])[] {
  const isGroup =
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    !("value" in value) &&
    !("amountMinor" in value);
  if (!isGroup) return [[name, value]];
  return Object.entries(value).flatMap(([inner, innerValue]) => spread(`${name}.${inner}`, innerValue));
}
