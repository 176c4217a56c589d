import { valueOrThrow } from "../errors.ts";
import { restoreFrom } from "../store/restore.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { benchFolder } from "./open-bench.ts";

export const restoreCommand: Command = {
  name: "restore",
  summary: "puts a backup in the place of your own bench, which is kept beside it",
  takes: "FILE",
  words: { least: 1, most: 1 },
  options: {},
  more: [
    "Ferrule has to be stopped. The backup is read through first; what was there before stays in the folder as " +
      "bench-before-restore-1.sqlite, or the next number that is free, and can be restored in the same way.",
  ],
  exits: [],
  examples: [{ text: "Go back to a backup", line: "ferrule restore backup.sqlite", exit: exitCodes.done }],
  run: runRestore,
};

async function runRestore({ words }: Given, around: Surroundings): Promise<Answer> {
  const folder = benchFolder(around);
  const restored = valueOrThrow(restoreFrom(words[0] as string, folder));
  const before = restored.kept ? `; what was there before is ${restored.kept}` : "";
  return {
    exit: exitCodes.done,
    json: restored,
    text: () => `The bench in ${folder} is that of ${words[0]} now${before}`,
  };
}
