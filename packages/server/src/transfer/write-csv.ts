import { stringify } from "csv-stringify/sync";
import type { BenchContents } from "../bench/bench-contents.ts";
import { benchColumns, type Columns, type RowKind, rowKinds } from "./columns.ts";
import { flatten } from "./flatten.ts";
import { neutralised } from "./formulas.ts";

/** The bench as CSV, all of it or the rows of one kind; the columns are those that some row fills. */
export function writeCsv(contents: BenchContents, kind?: RowKind): string {
  const rows = rowsOf(contents).filter((row) => kind === undefined || row.get("kind") === kind);
  return writeRows(rows, benchColumns, ["kind"]);
}

/** A list as CSV; the columns are `always` and those that some row fills. */
export function writeListCsv(things: readonly object[], columns: Columns, always: readonly string[]): string {
  return writeRows(
    things.map((thing) => flatten(thing, columns)),
    columns,
    always,
  );
}

function writeRows(
  rows: readonly ReadonlyMap<string, string>[],
  columns: Columns,
  always: readonly string[],
): string {
  const names = columns.sort(new Set([...always, ...rows.flatMap((row) => [...row.keys()])]));
  const cells = rows.map((row) => names.map((name) => neutralised(row.get(name) ?? "")));
  return stringify([names.map(neutralised), ...cells], {
    record_delimiter: "windows",
    // Any one of these ends a row, or a cell, for some reader.
    quoted_match: /[\r\n;\t]/,
  });
}

function rowsOf({ parts, joints, claims, goal }: BenchContents): Map<string, string>[] {
  const sorted = [...parts].sort((a, b) => rowKinds.indexOf(a.kind) - rowKinds.indexOf(b.kind));
  const goals = Object.keys(goal).length === 0 ? [] : [goal];
  const things = [
    ...sorted,
    ...joints.map((joint) => ({ kind: "joint", ...joint })),
    ...claims.map((claim) => ({ kind: "claim", ...claim })),
    ...goals.map((one) => ({ kind: "goal", ...one })),
  ];
  return things.map((thing) => flatten(thing, benchColumns));
}
