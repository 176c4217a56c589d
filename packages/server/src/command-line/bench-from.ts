import { type BenchContents, emptyContents } from "../bench/bench-contents.ts";
import { ProblemError } from "../errors.ts";
import { benchSheet } from "../transfer/bench-sheet.ts";
import { checkEntries } from "../transfer/check-entries.ts";
import { readCsv } from "../transfer/read-csv.ts";
import { benchShape, readJson } from "../transfer/read-json.ts";
import { fileFormat } from "./file-format.ts";
import type { InputText } from "./input-text.ts";
import { rowRefusals } from "./row-refusals.ts";

/** A bench as it was exported, JSON or CSV; throws a `ProblemError` that names every line that cannot be taken. */
export function benchFrom({ from, text }: InputText): BenchContents {
  const read = fileFormat(from, text) === "csv" ? readCsv(text, benchSheet) : readJson(text, benchShape);
  const checked = checkEntries(emptyContents, read.entries, "refuse");
  const refused = [...read.refused, ...checked.refused].sort((one, other) => one.line - other.line);
  if (refused.length === 0) return { ...checked.good, goal: checked.good.goal ?? {} };
  throw new ProblemError({
    code: "bad-request",
    message: `${from} cannot be taken for a bench`,
    refusals: rowRefusals(refused),
  });
}
