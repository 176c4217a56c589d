import { wrapped } from "./wrapped.ts";

export interface ColumnsSpec {
  readonly header?: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Places of the columns that hold figures, and stand to the right. */
  readonly figures?: readonly number[];
  readonly indent?: number;
  /** The least width of each column. */
  readonly least?: readonly number[];
  /** The last column is broken to stay within it. */
  readonly width: number;
}

const gap = "  ";
const lastLeast = 20;

/** Rows in plain columns, without lines or colours; the last column is broken where the terminal is narrow. */
export function columns({ header, rows, figures = [], indent = 0, least = [], width }: ColumnsSpec): string {
  const all = header ? [header, ...rows] : rows;
  const count = Math.max(0, ...all.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, at) =>
    Math.max(least[at] ?? 0, ...all.map((row) => (row[at] ?? "").length)),
  );
  return all.map((row) => lineOf(row, widths, new Set(figures), " ".repeat(indent), width)).join("\n");
}

function lineOf(
  row: readonly string[],
  widths: readonly number[],
  figures: ReadonlySet<number>,
  lead: string,
  width: number,
): string {
  const cells = widths.slice(0, -1).map((size, at) => {
    const cell = row[at] ?? "";
    return figures.has(at) ? cell.padStart(size) : cell.padEnd(size);
  });
  const before = lead + cells.map((cell) => cell + gap).join("");
  const lastAt = widths.length - 1;
  const last = row[lastAt] ?? "";
  if (figures.has(lastAt)) return before + last.padStart(widths[lastAt] ?? 0);
  const within = Math.max(width, before.length + lastLeast);
  const lines = wrapped(last, { width: within, first: before, rest: " ".repeat(before.length) });
  return lines.join("\n").trimEnd() || before.trimEnd();
}
