import { CsvError, parse } from "csv-parse/sync";
import { deepest } from "../wire/deepest.ts";
import { type ReadText, type RowRefusal, thingsMost, tooManyThings } from "./entry.ts";
import { restored } from "./formulas.ts";

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/** What the rows of one kind of file are. */
export interface Sheet {
  /** Columns that the header has to name. */
  readonly required: readonly string[];
  /** Whether a column holds numbers, which have a decimal comma where semicolons stand between the cells. */
  isNumber(name: string): boolean;
  /** The thing in a row of cells by their columns' names, or why there is none. */
  readRow(cells: Map<string, string>, line: number): ReadText;
}

/** Reads rows as `writeCsv` and `writeListCsv` write them; a semicolon or a tab between cells is understood as well. */
export function readCsv(text: string, sheet: Sheet): ReadText {
  const delimiter = delimiterOf(text);
  const rows = splitRows(text, delimiter);
  if (!Array.isArray(rows)) return { entries: [], refused: [rows] };
  const [header, ...body] = rows;
  if (header === undefined)
    return onlyRefusal({
      line: 1,
      column: sheet.required[0] ?? "(the whole text)",
      got: "an empty text",
      expected: "a line with the names of the columns",
    });
  const names = header.cells.map((cell) => restored(cell).trim());
  const refused = headerRefusals(header.line, names, sheet.required);
  if (refused.length > 0) return { entries: [], refused };
  const cellOf = cellReader(names, sheet, delimiter === ";");
  return joinReads(body.map((row) => readRow(row, names, cellOf, sheet)));
}

export function onlyRefusal(refusal: RowRefusal): ReadText {
  return { entries: [], refused: [refusal] };
}

function joinReads(reads: readonly ReadText[]): ReadText {
  return {
    entries: reads.flatMap(({ entries }) => entries),
    refused: reads.flatMap(({ refused }) => refused),
  };
}

/** The rows with the line each begins in; blank ones are left out. */
function splitRows(text: string, delimiter: string): Row[] | RowRefusal {
  try {
    // For every row that is shorter than the first one the parser looks through all of that, so its width is seen to before.
    const width = recordsOf(text, delimiter, 1)[0]?.record.length ?? 0;
    if (width > columnsMost) return tooManyColumns(width);
    const records = recordsOf(text, delimiter, thingsMost + 2);
    if (records.length > thingsMost + 1) return tooManyThings();
    let line = 1;
    const rows = records.map(({ record, raw }) => {
      const row = { line, cells: record };
      line += raw.match(/\r\n|\n|\r/g)?.length ?? 0;
      return row;
    });
    return rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return brokenText(error);
  }
}

function recordsOf(text: string, delimiter: string, to: number): { record: string[]; raw: string }[] {
  return parse(text, {
    bom: true,
    raw: true,
    relax_column_count: true,
    delimiter,
    to,
    record_delimiter: ["\r\n", "\n", "\r"],
  }) as unknown as { record: string[]; raw: string }[];
}

function brokenText(error: CsvError): RowRefusal {
  const { lines, column } = error as unknown as {
    lines?: number;
    column?: number | string;
  };
  const name = typeof column === "number" ? `column ${column + 1}` : (column ?? "(the row)");
  return {
    line: lines ?? 1,
    column: name,
    got: error.message,
    expected: "CSV as in RFC 4180, with quotes opened and closed",
  };
}

/** The one that the header has most of, quoted names left aside. */
function delimiterOf(text: string): string {
  const header = (/^[^\r\n]*/.exec(text)?.[0] ?? "").replace(/"[^"]*"/g, "");
  const count = (sign: string) => header.split(sign).length;
  return [",", ";", "\t"].reduce((most, sign) => (count(sign) > count(most) ? sign : most));
}

/** A cell as it is meant: without the apostrophe before what looks like a formula, and with a point in a number. */
function cellReader(names: readonly string[], sheet: Sheet, hasDecimalComma: boolean) {
  const isNumber = names.map((name) => hasDecimalComma && sheet.isNumber(name));
  return (cell: string, at: number) => {
    const meant = restored(cell);
    return isNumber[at] && decimalComma.test(meant) ? meant.replace(",", ".") : meant;
  };
}

const decimalComma = /^\s*[+-]?\d+,\d+\s*$/;

const columnsMost = 2000;

function tooManyColumns(count: number): RowRefusal {
  return {
    line: 1,
    column: "(the header)",
    got: `${count} columns`,
    expected: `at most ${columnsMost} columns`,
  };
}

const forbiddenSteps: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);

function headerRefusals(line: number, names: readonly string[], required: readonly string[]): RowRefusal[] {
  const before = new Set<string>();
  const isRepeated = (name: string) => before.has(name) || !before.add(name);
  const refused = names.flatMap((name): RowRefusal[] => {
    if (name !== "" && isRepeated(name))
      return [
        {
          line,
          column: name,
          got: "the same column again",
          expected: "each column once",
        },
      ];
    const steps = name.split(".");
    const isForbidden = steps.length > deepest || steps.some((step) => forbiddenSteps.has(step));
    return isForbidden
      ? [
          {
            line,
            column: name,
            got: "a name that no field has",
            expected: "the name of a field",
          },
        ]
      : [];
  });
  const missing = required
    .filter((name) => !names.includes(name))
    .map((name) => ({
      line,
      column: name,
      got: shortened(`the columns ${names.join(", ")}`),
      expected: `a column named ${name}`,
    }));
  return [...missing, ...refused];
}

function shortened(text: string): string {
  return text.length > 500 ? `${text.slice(0, 499)}…` : text;
}

function readRow(
  { line, cells }: Row,
  names: readonly string[],
  cellOf: (cell: string, at: number) => string,
  sheet: Sheet,
): ReadText {
  const nameless = cells.findIndex((cell, at) => cell !== "" && !names[at]);
  if (nameless >= 0) {
    const got = JSON.stringify(cells[nameless]);
    return onlyRefusal({
      line,
      column: `column ${nameless + 1}`,
      got,
      expected: "an empty cell, since the column has no name",
    });
  }
  const named = cells.slice(0, names.length).map((cell, at) => [names[at] ?? "", cellOf(cell, at)] as const);
  return sheet.readRow(new Map(named), line);
}
