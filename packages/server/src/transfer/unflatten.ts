import type { Columns, ColumnType } from "./columns.ts";
import { openValue } from "./flatten.ts";

type Group = Record<string, unknown>;

/** The thing behind a row of cells; what a cell cannot mean is left as text, for the schema to refuse with its reason. */
export function unflatten(cells: ReadonlyMap<string, string>, columns: Columns): Group {
  const thing: Group = {};
  for (const [path, text] of cells) {
    if (text === "" || isReadingDetail(columns, path)) continue;
    const value = cellValue(columns.type(path), text);
    place(thing, path.split("."), columns.isReading(path) ? withDetails(cells, path, value) : value);
  }
  return withLists(thing) as Group;
}

function isReadingDetail(columns: Columns, path: string): boolean {
  const base = path.replace(/\.(plusMinus|source)$/, "");
  return base !== path && columns.isReading(base);
}

function withDetails(cells: ReadonlyMap<string, string>, path: string, value: unknown): unknown {
  const plusMinus = cells.get(`${path}.plusMinus`);
  const source = cells.get(`${path}.source`);
  if (!plusMinus && !source) return value;
  return {
    value,
    ...(plusMinus ? { plusMinus: cellValue("number", plusMinus) } : {}),
    ...(source ? { source } : {}),
  };
}

function cellValue(type: ColumnType, text: string): unknown {
  switch (type) {
    case "text":
      return text;
    case "words":
      return text.trim().split(/[\s,;]+/);
    case "names":
      return text
        .split(";")
        .map((name) => name.trim())
        .filter((name) => name !== "");
    case "boolean":
      return booleanFrom(text);
    case "number":
      return numberFrom(text);
    case "open":
      return openValue(text);
  }
}

function booleanFrom(text: string): unknown {
  const word = text.trim().toLowerCase();
  if (word === "true" || word === "yes") return true;
  return word === "false" || word === "no" ? false : text;
}

function numberFrom(text: string): unknown {
  const trimmed = text.trim();
  return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(trimmed) ? Number(trimmed) : text;
}

function place(group: Group, steps: readonly string[], value: unknown): void {
  const [first, ...rest] = steps as [string, ...string[]];
  if (rest.length === 0) {
    group[first] = value;
    return;
  }
  const inner = group[first];
  const next: Group =
    typeof inner === "object" && inner !== null && !Array.isArray(inner) ? (inner as Group) : {};
  group[first] = next;
  place(next, rest, value);
}

/** Groups whose keys are all counts become lists, in order. */
function withLists(value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  const entries = Object.entries(value).map(([key, inner]) => [key, withLists(inner)] as const);
  if (entries.length > 0 && entries.every(([key]) => /^\d+$/.test(key))) {
    return entries.sort(([a], [b]) => Number(a) - Number(b)).map(([, inner]) => inner);
  }
  return Object.fromEntries(entries);
}
