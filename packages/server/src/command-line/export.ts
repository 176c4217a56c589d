import type { Part } from "@ferrule/core";
import { type RowKind, rowKinds } from "../transfer/columns.ts";
import { writeCsv } from "../transfer/write-csv.ts";
import { benchLists, type ListWord, listHelp, listWords } from "./bench-lists.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { fileFormat } from "./file-format.ts";
import { benchFolder, noBench, type OpenedBench, storedToRead } from "./open-bench.ts";
import { wordOption } from "./option-value.ts";
import { writeWholeFile } from "./write-whole-file.ts";
import { WrongUse } from "./wrong-use.ts";

export const exportCommand: Command = {
  name: "export",
  summary: "writes your own bench, or a list about it, as a file",
  takes: "[FILE]",
  words: { least: 0, most: 1 },
  options: {
    list: { takes: "LIST", text: `what is written: ${listHelp(listWords)}; without it, bench` },
    format: { takes: "FORMAT", text: "json or csv; without it, by the file's name, else json" },
    kind: { takes: "KIND", text: `of the bench as CSV, only the rows of one kind: ${rowKinds.join(", ")}` },
    force: { text: "replaces a file that is there already" },
  },
  more: [
    "Without FILE it goes to standard output. JSON of the bench gives the same bench back when it is imported. " +
      "An export holds one list; backup keeps everything.",
  ],
  exits: [],
  examples: [
    { text: "The bench, into a file", line: "ferrule export my-bench.json", exit: exitCodes.done },
    {
      text: "The shafts for a spreadsheet",
      line: "ferrule export --format csv --kind shaft > my-shafts.csv",
      exit: exitCodes.done,
    },
    {
      text: "The prices for --evidence",
      line: "ferrule export --list evidence my-prices.csv",
      exit: exitCodes.done,
    },
  ],
  run: runExport,
};

async function runExport(given: Given, around: Surroundings): Promise<Answer> {
  const [file] = given.words;
  const list = wordOption(given, "list", listWords) ?? "bench";
  const kind = wordOption(given, "kind", rowKinds);
  const stated = wordOption(given, "format", ["csv", "json"]);
  const format = stated ?? (file === undefined ? (kind ? "csv" : "json") : fileFormat(file, "{"));
  if (kind && (list !== "bench" || format !== "csv")) throw new WrongUse("--kind goes with the bench as CSV");
  if (given.isOn("json") && (format === "csv" || file !== undefined))
    throw new WrongUse("--json writes JSON to standard output: it goes with neither a file nor CSV");
  const opened = storedToRead(around);
  if (opened === undefined) throw noBench(benchFolder(around));
  try {
    const json = benchLists[list].json(opened.tools.bench);
    const text = format === "csv" ? csvOf(opened, list, kind) : `${JSON.stringify(json, null, 2)}\n`;
    if (file === undefined) return { exit: exitCodes.done, json, text: () => text, isFile: true };
    writeWholeFile(file, text, given.isOn("force"));
    return { exit: exitCodes.done, json, text: () => `${file} holds the ${list} now, ${countText(json)}` };
  } finally {
    opened.close();
  }
}

function csvOf({ tools: { bench } }: OpenedBench, list: ListWord, kind: RowKind | undefined): string {
  return list === "bench" ? writeCsv(bench.view(), kind) : benchLists[list].csv(bench);
}

/** "73 parts, 20 joints, 3 claims". */
function countText(json: object): string {
  const lists = Object.entries(json).filter((entry): entry is [string, Part[]] => Array.isArray(entry[1]));
  return lists.map(([name, things]) => `${things.length} ${name}`).join(", ");
}
