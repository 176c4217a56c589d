import type { Bench } from "../bench/bench.ts";
import { checkEntries, type Existing } from "./check-entries.ts";
import type { RowRefusal } from "./entry.ts";
import { readCsv } from "./read-csv.ts";
import { readJson } from "./read-json.ts";

export interface ImportRequest {
  readonly format: "csv" | "json";
  readonly text: string;
  /** Whether the good rows are taken when others are bad. */
  readonly take: "good" | "all-or-none";
  /** Says what would happen, and changes nothing. */
  readonly dryRun?: boolean;
  readonly existing?: Existing;
}

export interface ImportReply {
  readonly taken: number;
  readonly dryRun: boolean;
  readonly refused: readonly RowRefusal[];
}

/** Takes the things in a text onto the bench, or the good ones among them; every bad one is named by line and column. */
export function importText(
  bench: Bench,
  { format, text, take, dryRun = false, existing = "refuse" }: ImportRequest,
): ImportReply {
  const read = format === "csv" ? readCsv(text) : readJson(text);
  const checked = checkEntries(bench.view(), read.entries, existing);
  const refused = [...read.refused, ...checked.refused].sort((a, b) => a.line - b.line);
  const isTaken = take === "good" || refused.length === 0;
  if (isTaken && !dryRun) bench.takeIn(checked.good);
  return { taken: isTaken ? checked.taken : 0, dryRun, refused };
}
