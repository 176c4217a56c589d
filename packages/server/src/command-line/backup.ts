import { valueOrThrow } from "../errors.ts";
import { backupTo } from "../store/backup.ts";
import { openToRead } from "../store/database.ts";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { benchFolder, noBench } from "./open-bench.ts";

export const backupCommand: Command = {
  name: "backup",
  summary: "keeps a copy of everything in one file, also while Ferrule is running",
  takes: "FILE",
  words: { least: 1, most: 1 },
  options: { force: { text: "replaces a file that is there already" } },
  more: [
    "The copy is the bench, the lists, the books, the settings and what can be undone, as they are at that moment. It is read " +
      "through before it takes its name, so a file of that name is whole. ferrule restore FILE brings it back.",
    "Ferrule makes one of its own accord on each day that it runs, in the folder backups beside the bench. It does not outlive the " +
      "disk: put a copy on another one now and then.",
  ],
  exits: [],
  examples: [
    { text: "Once", line: "ferrule backup my-backup.sqlite", exit: exitCodes.done },
    {
      text: "Every night by cron, one for each day of the week",
      line: "ferrule backup bench-$(date +%a).sqlite --force",
      exit: exitCodes.done,
    },
  ],
  run: runBackup,
};

async function runBackup(given: Given, around: Surroundings): Promise<Answer> {
  const folder = benchFolder(around);
  const database = openToRead(folder);
  if (database === undefined) throw noBench(folder);
  try {
    const backup = valueOrThrow(backupTo(database, given.words[0] as string, { force: given.isOn("force") }));
    const { file, bytes } = backup;
    return {
      exit: exitCodes.done,
      json: backup,
      text: () =>
        `${file} holds everything in ${folder} now (${Math.ceil(bytes / 1024)} kB), and was read through`,
    };
  } finally {
    database.close();
  }
}
