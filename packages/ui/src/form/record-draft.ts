import type { Money } from "@ferrule/core";
import { moneyInput, parseMoney } from "../format/money.ts";
import { parseNumber } from "../format/parse-number.ts";
import { valueAt, withValue } from "./path.ts";
import type { RecordField } from "./record-field.ts";

/** What stands in a plain form, word for word, by field path. */
export type RecordDraft = Readonly<Record<string, string>>;

/** The words that describe a record. */
export function draftFromRecord(fields: readonly RecordField[], record: unknown): RecordDraft {
  return Object.fromEntries(fields.map((field) => [field.path, wordsOf(field, valueAt(record, field.path))]));
}

function wordsOf(field: RecordField, value: unknown): string {
  if (value === undefined || value === null) return "";
  switch (field.control) {
    case "yes-no":
      return value ? "yes" : "no";
    case "names":
      return (value as readonly string[]).join(", ");
    case "minor":
      return moneyInput(value as number, field.currency);
    case "money":
      return moneyInput(Math.abs((value as Money).amountMinor), field.currency);
    case "lines":
      return field.write(value);
    default:
      return String(value);
  }
}

/** The record that the words describe, and by field path what could not be read. */
export function recordFromDraft(
  fields: readonly RecordField[],
  draft: RecordDraft,
): { record: Record<string, unknown>; slips: Readonly<Record<string, string>> } {
  let record: Record<string, unknown> = {};
  const slips: Record<string, string> = {};
  for (const field of fields) {
    const text = draft[field.path]?.trim() ?? "";
    const value = text === "" ? field.empty : readValue(field, text);
    if (text === "" && field.needed) slips[field.path] = "This is needed.";
    else if (text !== "" && value === undefined)
      slips[field.path] = `Got "${text}", expected ${expected(field)}.`;
    else if (value !== undefined) record = withValue(record, field.path, value);
  }
  return { record, slips };
}

function readValue(field: RecordField, text: string): unknown {
  switch (field.control) {
    case "number":
      return parseNumber(text);
    case "yes-no":
      return text === "yes";
    case "names":
      return text
        .split(",")
        .map((name) => name.trim())
        .filter(Boolean);
    case "minor":
      return parseMoney(text, field.currency);
    case "money": {
      const amountMinor = parseMoney(text, field.currency);
      return amountMinor === undefined ? undefined : { amountMinor, currency: field.currency };
    }
    case "lines":
      return field.read(text);
    default:
      return text;
  }
}

function expected(field: RecordField): string {
  switch (field.control) {
    case "number":
      return "a number, such as 12 or 0.5";
    case "minor":
    case "money":
      return "an amount, such as 45, 45,50 or 45.50";
    case "lines":
      return `lines such as "${field.example.split("\n")[0]}"`;
    default:
      return "something else";
  }
}
