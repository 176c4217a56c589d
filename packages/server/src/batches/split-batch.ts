import { splitListings } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { GivenRow } from "../store/batches.ts";
import { readCsv } from "../transfer/read-csv.ts";

export const batchFormats = ["text", "lines", "csv", "jsonl"] as const;
export type BatchFormat = (typeof batchFormats)[number];

const rowsMost = 5000;
const textMost = 20_000;

/** The columns, or fields, whose words make up a listing, in this order. */
const wordFields = ["text", "title", "description", "price"] as const;

/** The listings of a text; where nobody says what form it has, it is found out. */
export function splitBatch(text: string, format: BatchFormat = formatOf(text)): Outcome<GivenRow[]> {
  const split = splitters[format](text);
  if (!split.ok) return split;
  const rows = split.value.filter((row) => row.text.trim() !== "");
  const expected = `1 to ${rowsMost} listings of at most ${textMost} characters each`;
  const refuse = (got: string) =>
    problem("bad-request", "The listings were not taken", [{ field: "text", got, expected }]);
  if (rows.length === 0) return refuse("no listing");
  if (rows.length > rowsMost) return refuse(`${rows.length} listings`);
  const long = rows.findIndex((row) => row.text.length > textMost);
  return long < 0 ? done(rows) : refuse(`${rows[long]?.text.length} characters in listing ${long + 1}`);
}

const splitters: Readonly<Record<BatchFormat, (text: string) => Outcome<GivenRow[]>>> = {
  text: (text) => done(splitListings(text).map((words) => ({ text: words }))),
  lines: (text) => done(linesOf(text).map((words) => ({ text: words }))),
  csv: splitCsv,
  jsonl: splitJsonLines,
};

function formatOf(text: string): BatchFormat {
  const lines = linesOf(text);
  const [header = ""] = lines;
  const names = header.split(/[,;\t]/u).map((name) => name.trim().replace(/^"|"$/gu, ""));
  if (names.length > 1 && names.some((name) => name === "text" || name === "title")) return "csv";
  return lines.length > 0 && lines.every(isJson) ? "jsonl" : "text";
}

function linesOf(text: string): string[] {
  return text
    .replace(/^\uFEFF/u, "")
    .split(/\r\n|\n|\r/u)
    .map((line) => line.trim())
    .filter((line) => line !== "");
}

function isJson(line: string): boolean {
  return /^[{"]/u.test(line) && parsed(line) !== undefined;
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function splitCsv(text: string): Outcome<GivenRow[]> {
  const { entries, refused } = readCsv(text, {
    required: [],
    isNumber: (name) => name === "roundTripKm",
    readRow: (cells, line) => ({
      entries: [{ list: "listings", value: Object.fromEntries(cells), lineOf: () => line }],
      refused: [],
    }),
  });
  const [first] = refused;
  if (first)
    return problem("bad-request", `Line ${first.line} of the listings was not read`, [
      { field: first.column, got: first.got, expected: first.expected },
    ]);
  return rowsOf(entries.map(({ value, lineOf }) => ({ value, line: lineOf("") })));
}

function splitJsonLines(text: string): Outcome<GivenRow[]> {
  return rowsOf(linesOf(text).map((line, at) => ({ value: parsed(line), line: at + 1 })));
}

function rowsOf(values: readonly { readonly value: unknown; readonly line: number }[]): Outcome<GivenRow[]> {
  const rows: GivenRow[] = [];
  for (const { value, line } of values) {
    const row = rowOf(value);
    if (!row) {
      const expected = `a listing's words, or an object with ${wordFields.join(", ")}, place or roundTripKm`;
      return problem("bad-request", `Line ${line} of the listings was not read`, [
        { field: `line ${line}`, got: JSON.stringify(value)?.slice(0, 80) ?? "no JSON", expected },
      ]);
    }
    rows.push(row);
  }
  return done(rows);
}

/** Distances are those that a sighting may have. */
const kmMost = 5000;

function rowOf(value: unknown): GivenRow | undefined {
  if (typeof value === "string") return { text: value };
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const said = value as Record<string, unknown>;
  const words = wordFields.flatMap((field) => {
    const word = said[field];
    return typeof word === "string" || typeof word === "number" ? [String(word).trim()] : [];
  });
  const { place, roundTripKm } = said;
  const km =
    roundTripKm === "" || roundTripKm === undefined || roundTripKm === null ? undefined : Number(roundTripKm);
  if (words.length === 0 || (km !== undefined && !(km >= 0 && km <= kmMost))) return undefined;
  return {
    text: words.filter((word) => word !== "").join("\n"),
    ...(typeof place === "string" && place.trim() !== "" ? { place: place.trim().slice(0, 200) } : {}),
    ...(km === undefined ? {} : { roundTripKm: km }),
  };
}
