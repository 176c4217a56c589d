import type { FindingData } from "../findings/outcome.ts";
import type { WorkRow } from "../parts/reference.ts";
import { plainFormats } from "./plain-teller.ts";

/** What to do at a step: the work table's sentence with the step's own figures put in. */
export function sayStep(row: WorkRow, names: readonly string[], data: FindingData): string {
  const sentence = row.text.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = data[name];
    return value === undefined ? whole : formatted(name, value);
  });
  return names.length === 0 ? sentence : `${sentence} (${names.join(", ")})`;
}

function formatted(name: string, value: FindingData[string]): string {
  if (typeof value !== "number") return String(value);
  if (name.endsWith("In")) return plainFormats.inches(value);
  if (name.endsWith("G")) return plainFormats.grams(value);
  return String(value);
}
