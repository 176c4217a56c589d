import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("../../data/reference/", import.meta.url);

/** What a row hands to the calculator it names; every number's unit is in its name. */
export type Given = Readonly<Record<string, unknown>>;

export type Answer = Readonly<Record<string, number | string>>;

/** One figure from outside the project (or derived apart from it) and how near we have to come. */
export interface ReferenceRow {
  readonly id: string;
  readonly of: string;
  readonly given: Given;
  readonly expect: Answer;
  readonly tol: { readonly abs: number } | { readonly rel: number };
  readonly tolWhy: string;
  readonly source: string;
  readonly at: string;
  readonly kind: "printed" | "measured" | "computed";
  readonly by: string | null;
  readonly crossCheck: string | null;
}

export interface ReferenceTable {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly at: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly number[])[];
  readonly sanity: Readonly<
    Record<string, { readonly direction: "rising" | "falling" | "one-peak"; readonly stepSpread?: number }>
  >;
}

/** The rows of every `physics-*.json` but the transcribed tables, with the file each stands in. */
export function physicsRows(): { readonly file: string; readonly row: ReferenceRow }[] {
  const files = readdirSync(folder).filter((name) => /^physics-(?!tables).*\.json$/.test(name));
  return files.flatMap((file) => readJson<ReferenceRow[]>(file).map((row) => ({ file, row })));
}

export function physicsTables(): ReferenceTable[] {
  return readJson<ReferenceTable[]>("physics-tables.json");
}

/** The names of the expected values that were missed, each with what came instead; empty when the row holds. */
export function missesOf(row: ReferenceRow, got: Answer): string[] {
  return Object.entries(row.expect).flatMap(([name, expected]) => {
    const actual = got[name];
    return holds(row, expected, actual)
      ? []
      : [`${name}: expected ${expected} ${toleranceText(row)}, got ${actual}`];
  });
}

/** Everything a reader needs to see what went wrong and where to look it up. */
export function failureText(file: string, row: ReferenceRow, misses: readonly string[]): string {
  const where = `${row.source}, ${row.at}`;
  return `${file} ${row.id}\n  given ${JSON.stringify(row.given)}\n  ${misses.join("\n  ")}\n  source ${where}`;
}

function holds(row: ReferenceRow, expected: number | string, actual: number | string | undefined): boolean {
  if (typeof expected === "string" || typeof actual !== "number") return actual === expected;
  const allowed = "abs" in row.tol ? row.tol.abs : row.tol.rel * Math.abs(expected);
  return Math.abs(actual - expected) <= allowed;
}

function toleranceText(row: ReferenceRow): string {
  const amount = "abs" in row.tol ? `± ${row.tol.abs}` : `± ${row.tol.rel * 100} %`;
  return `${amount} (${row.tolWhy})`;
}

function readJson<T>(file: string): T {
  return JSON.parse(readFileSync(new URL(file, folder), "utf8")) as T;
}
