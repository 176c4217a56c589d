import { fields } from "@ferrule/core";

/**
 * What a column of the CSV holds. `words` are names without blanks, in one cell; `names` may have blanks and have a column each,
 * such as `aliases.0`, or one cell with semicolons between them. An `open` column is a field we do not know: its cells say
 * themselves what they are.
 */
export type ColumnType = "text" | "number" | "boolean" | "words" | "names" | "open";

/** The columns of one kind of file. */
export interface Columns {
  type(name: string): ColumnType;
  /** Whether it is a reading, which has columns for its uncertainty and source beside it. */
  isReading(name: string): boolean;
  /** The names in the order of an export. */
  sort(names: Iterable<string>): string[];
}

/** Columns by kind of row, in the order in which they are written. */
export const rowKinds = [
  "head",
  "adapter",
  "shaft",
  "grip",
  "cover",
  "wrench",
  "joint",
  "claim",
  "goal",
] as const;
export type RowKind = (typeof rowKinds)[number];

/** Text and true-or-false columns; the order here is the order in an export. Numbers come from the field table. */
const textColumns = [
  ...["kind", "id", "type", "parts.0", "parts.1", "receiver", "adapter", "verdict", "evidence", "on"],
  ...["maker", "model", "clubType", "clubNumber", "suits", "material", "flex", "hand", "family", "skill"],
  ...["socket.type", "socket.family", "socket.form", "bore.form", "tip.form", "length.basis"],
  ...["paid.currency", "soldFor.currency", "acquiredOn", "soldOn", "note"],
];
const wordsColumns = ["faults", "deniedFaults"];
const booleanColumns = ["socket.throughBore", "ribbed", "localRule46"];
const plainNumberColumns = [
  "year",
  "paid.amountMinor",
  "soldFor.amountMinor",
  "playingLengthIn",
  "swingWeightPoints",
  "limit",
];

const columnTypes: ReadonlyMap<string, ColumnType> = new Map<string, ColumnType>([
  ...textColumns.map((name) => [name, "text"] as const),
  ...wordsColumns.map((name) => [name, "words"] as const),
  ...booleanColumns.map((name) => [name, "boolean"] as const),
  ...[...plainNumberColumns, ...Object.keys(fields)].map((name) => [name, "number"] as const),
]);

function isReadingPath(path: string): boolean {
  return Object.hasOwn(fields, path);
}

function columnType(name: string): ColumnType {
  const known = columnTypes.get(name);
  if (known) return known;
  const [, base, end] = /^(.*)\.(plusMinus|source)$/.exec(name) ?? [];
  if (base !== undefined && isReadingPath(base)) return end === "source" ? "text" : "number";
  if (/^settings\.\d+\.label$/.test(name)) return "text";
  if (/^settings\.\d+\.rotationDeg$/.test(name) || /^targets\.[a-z]+\.\w+$/.test(name)) return "number";
  return "open";
}

/** Puts columns in the order of an export: known ones as listed, a reading's three together, the rest by name. */
function sortColumns(names: Iterable<string>): string[] {
  return sortByRank(names, [...columnTypes.keys()], (name) => name.replace(/\.(plusMinus|source)$/, ""));
}

/** The columns of the bench's own file. */
export const benchColumns: Columns = { type: columnType, isReading: isReadingPath, sort: sortColumns };

/** Names in a stated order; one that is not in it goes by its base, or comes last. */
export function sortByRank(
  names: Iterable<string>,
  order: readonly string[],
  baseOf: (name: string) => string,
): string[] {
  const places = new Map(order.map((name, at) => [name, at]));
  const rank = (name: string) => places.get(name) ?? places.get(baseOf(name)) ?? places.size;
  const byName = (a: string, b: string) => a.localeCompare(b, "en", { numeric: true });
  return [...names].sort((a, b) => rank(a) - rank(b) || byName(a, b));
}
