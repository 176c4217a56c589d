import type { ListShelf } from "../bench/list-shelves.ts";
import { checkList, type ItemSchema } from "./check-list.ts";
import type { Columns } from "./columns.ts";
import { decimalMoney } from "./decimal-money.ts";
import type { RowRefusal } from "./entry.ts";
import type { ImportTarget } from "./import-text.ts";
import { readCsv, type Sheet } from "./read-csv.ts";
import { readJson } from "./read-json.ts";
import { unflatten } from "./unflatten.ts";

/** One list about the bench, as it is read from a file. */
export interface ListFile<T> {
  /** The list's name, under which JSON has it. */
  readonly list: string;
  readonly columns: Columns;
  readonly schema: ItemSchema<T>;
  /** Columns that the header of CSV has to name. */
  readonly required: readonly string[];
  /** A field that is money, which may be written as a decimal beside a column `currency`. */
  readonly money?: string;
  /** What a thing without an id is called, before its number. */
  readonly stem: string;
  readonly where: string;
}

/** Imports into one of the lists about the bench. */
export function listTarget<T extends { id?: string }>(
  shelf: Pick<ListShelf<T>, "all" | "refusals" | "takeIn">,
  { list, columns, schema, required, money, stem, where }: ListFile<T>,
): ImportTarget {
  const sheet: Sheet = {
    required,
    isNumber: (name) => name === money || columns.type(name) === "number",
    readRow: (cells, line) => rowOf(cells, line, list, columns, money),
  };
  const shape = { lists: [list], single: [], expected: `an object with ${list}, or a list of them` } as const;
  return {
    read: (format, text) => (format === "csv" ? readCsv(text, sheet) : readJson(text, shape)),
    check: (entries, existing) => {
      const refused: RowRefusal[] = [];
      const spec = { where, before: shelf.all(), existing, stem: () => stem, refused, check: shelf.refusals };
      const good = checkList<T>(entries, list, schema, spec);
      return { taken: good.length, refused, takeIn: () => shelf.takeIn(good) };
    },
  };
}

function rowOf(
  cells: Map<string, string>,
  line: number,
  list: string,
  columns: Columns,
  money: string | undefined,
): ReturnType<Sheet["readRow"]> {
  const refusals = money === undefined ? [] : decimalMoney(cells, money);
  if (refusals.length > 0) return { entries: [], refused: refusals.map((refusal) => ({ line, ...refusal })) };
  return { entries: [{ list, value: unflatten(cells, columns), lineOf: () => line }], refused: [] };
}
