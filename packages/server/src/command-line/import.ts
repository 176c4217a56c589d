import type { Bench } from "../bench/bench.ts";
import { ProblemError } from "../errors.ts";
import {
  type ImportReply,
  type ImportRequest,
  type ImportTarget,
  importText,
} from "../transfer/import-text.ts";
import { benchLists, type ListWord, listHelp, listWords } from "./bench-lists.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { fileFormat } from "./file-format.ts";
import { inputText } from "./input-text.ts";
import { benchFolder, benchToWrite, emptyBench, storedToRead } from "./open-bench.ts";
import { wordOption } from "./option-value.ts";
import { problemText } from "./problem-text.ts";
import { rowRefusals } from "./row-refusals.ts";

const importable = listWords.filter((word) => benchLists[word].target !== undefined);

export const importCommand: Command = {
  name: "import",
  summary: "brings a file of parts, models, prices or books onto your own bench",
  takes: "FILE",
  words: { least: 1, most: 1 },
  options: {
    list: { takes: "LIST", text: `where it goes: ${listHelp(importable)}; without it, bench` },
    format: { takes: "FORMAT", text: "csv or json; without it, by the file's name or its first sign" },
    "dry-run": { text: "says what would be taken, and changes nothing" },
    replace: { text: "puts a row in the place of the one with its id; without it such a row is refused" },
    "take-good": { text: "takes the good rows where others are bad; without it, all or none" },
  },
  more: [
    "FILE may be - for standard input. Everything is taken at once or not at all, also while Ferrule is running. " +
      "The columns are described in docs/csv.md.",
  ],
  exits: [
    [exitCodes.done, "everything in the file was taken, or with --dry-run would be"],
    [
      exitCodes.refused,
      "rows were refused (with --take-good the others were taken), or the file cannot be read",
    ],
  ],
  examples: [
    { text: "Try it first", line: "ferrule import shafts.csv --dry-run", exit: exitCodes.done },
    {
      text: "Parts, and the same again after a change",
      line: "ferrule import shafts.csv && ferrule import shafts.csv --replace",
      exit: exitCodes.done,
    },
    {
      text: "Prices out of another program",
      line: "cat prices.csv | ferrule import - --list evidence",
      exit: exitCodes.done,
    },
  ],
  run: runImport,
};

async function runImport(given: Given, around: Surroundings): Promise<Answer> {
  const list = wordOption(given, "list", importable) ?? "bench";
  const stated = wordOption(given, "format", ["csv", "json"]);
  const input = await inputText(given.words[0] as string, around);
  const reply = importInto(list, around, {
    format: stated ?? fileFormat(input.from, input.text),
    text: input.text,
    take: given.isOn("take-good") ? "good" : "all-or-none",
    dryRun: given.isOn("dry-run"),
    existing: given.isOn("replace") ? "replace" : "refuse",
  });
  return {
    exit: reply.refused.length > 0 ? exitCodes.refused : exitCodes.done,
    json: reply,
    text: () => replyText(reply, list, input.from, benchFolder(around)),
  };
}

/** Where nothing would be taken there is no reason to make a bench either. */
function importInto(list: ListWord, around: Surroundings, request: ImportRequest): ImportReply {
  const trial = tried(list, around, request);
  return request.dryRun || trial.taken === 0
    ? { ...trial, dryRun: request.dryRun === true }
    : taken(list, around, request);
}

function tried(list: ListWord, around: Surroundings, request: ImportRequest): ImportReply {
  const opened = storedToRead(around) ?? emptyBench(around);
  try {
    return importText(targetOf(list, opened.tools.bench), { ...request, dryRun: true });
  } finally {
    opened.close();
  }
}

/** What is there is looked at and changed in one transaction, so that nothing comes between. */
function taken(list: ListWord, around: Surroundings, request: ImportRequest): ImportReply {
  const { tables, tools, close } = benchToWrite(around);
  try {
    if (tools.bench.view().example)
      around.note("what is on the bench is the example; start your own in the page to leave it");
    return tables.together(() => importText(targetOf(list, tools.bench), request), { what: "taken-in" });
  } finally {
    close();
  }
}

function targetOf(list: ListWord, bench: Bench): ImportTarget {
  const target = benchLists[list].target?.(bench);
  if (target) return target;
  throw new ProblemError({ code: "our-bug", message: `nothing is imported into ${list}` });
}

function replyText(
  { taken, dryRun, refused }: ImportReply,
  list: ListWord,
  from: string,
  folder: string,
): string {
  const things = taken === 0 ? "nothing" : taken === 1 ? "1 thing" : `${taken} things`;
  const message = dryRun
    ? `Of ${from} ${things} would be taken into the ${list} in ${folder}; nothing was changed`
    : `Of ${from} ${things} ${taken > 1 ? "were" : "was"} taken into the ${list} in ${folder}`;
  if (refused.length === 0) return message;
  return problemText({
    code: "bad-request",
    message: `${message}. Refused:`,
    refusals: rowRefusals(refused),
  });
}
