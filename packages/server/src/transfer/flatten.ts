import type { Columns, ColumnType } from "./columns.ts";

/**
 * A thing as cells by field path, such as `tip.diameterIn` → `0.335`. Empty lists, empty groups and empty texts have no cell,
 * nor has a `null` where only text or a number is understood.
 */
export function flatten(thing: object, columns: Columns): Map<string, string> {
  const cells = new Map<string, string>();
  for (const [key, value] of Object.entries(thing)) addCells(cells, columns, key, value);
  return cells;
}

function addCells(cells: Map<string, string>, columns: Columns, path: string, value: unknown): void {
  const type = columns.type(path);
  if (value === undefined || (value === null && type !== "open")) return;
  if (type === "words" && Array.isArray(value)) {
    if (value.length > 0) cells.set(path, value.join(" "));
  } else if (columns.isReading(path) && isGroup(value)) {
    for (const [key, inner] of Object.entries(value))
      cells.set(key === "value" ? path : `${path}.${key}`, String(inner));
  } else if (isGroup(value)) {
    for (const [key, inner] of Object.entries(value)) addCells(cells, columns, `${path}.${key}`, inner);
  } else {
    cells.set(path, cellText(type, value));
  }
}

function isGroup(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** In a column that we do not know, a text that could be read as something else is written in quotes. */
function cellText(type: ColumnType, value: unknown): string {
  if (type !== "open" || typeof value !== "string") return String(value);
  return openValue(value) === value ? value : JSON.stringify(value);
}

const openPattern = /^(true|false|null|-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?|".*")$/s;

/** What a cell of a column that we do not know says: a number, true, false, null or a quoted text as in JSON; else the text. */
export function openValue(text: string): unknown {
  if (!openPattern.test(text)) return text;
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
