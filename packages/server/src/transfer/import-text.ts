import type { Existing } from "./check-list.ts";
import type { Entry, ReadText, RowRefusal } from "./entry.ts";

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

/** Where an import goes, and how its text is understood. */
export interface ImportTarget {
  read(format: ImportRequest["format"], text: string): ReadText;
  check(entries: readonly Entry[], existing: Existing): Checked;
}

export interface Checked {
  /** How many of the things are good. */
  readonly taken: number;
  readonly refused: readonly RowRefusal[];
  takeIn(): void;
}

/** Takes the things in a text, or the good ones among them; every bad one is named by line and column. */
export function importText(
  target: ImportTarget,
  { format, text, take, dryRun = false, existing = "refuse" }: ImportRequest,
): ImportReply {
  const read = target.read(format, text);
  const checked = target.check(read.entries, existing);
  const refused = [...read.refused, ...checked.refused].sort((a, b) => a.line - b.line);
  const isTaken = take === "good" || refused.length === 0;
  if (isTaken && !dryRun) checked.takeIn();
  return { taken: isTaken ? checked.taken : 0, dryRun, refused };
}
