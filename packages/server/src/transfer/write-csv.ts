import { stringify } from "csv-stringify/sync";
import type { BenchContents } from "../bench/bench-contents.ts";
import { type RowKind, rowKinds, sortColumns } from "./columns.ts";
import { flatten } from "./flatten.ts";
import { neutralised } from "./formulas.ts";

/** The bench as CSV, all of it or the rows of one kind; the columns are those that some row fills. */
export function writeCsv(contents: BenchContents, kind?: RowKind): string {
  const rows = rowsOf(contents).filter((row) => kind === undefined || row.get("kind") === kind);
  const columns = sortColumns(new Set(["kind", ...rows.flatMap((row) => [...row.keys()])]));
  const cells = rows.map((row) => columns.map((column) => neutralised(row.get(column) ?? "")));
  return stringify([columns.map(neutralised), ...cells], {
    record_delimiter: "windows",
  });
}

function rowsOf({ parts, joints, claims, goal }: BenchContents): Map<string, string>[] {
  const sorted = [...parts].sort((a, b) => rowKinds.indexOf(a.kind) - rowKinds.indexOf(b.kind));
  const goals = Object.keys(goal).length === 0 ? [] : [goal];
  return [
    ...sorted.map(flatten),
    ...joints.map((joint) => flatten({ kind: "joint", ...joint })),
    ...claims.map((claim) => flatten({ kind: "claim", ...claim })),
    ...goals.map((one) => flatten({ kind: "goal", ...one })),
  ];
}
