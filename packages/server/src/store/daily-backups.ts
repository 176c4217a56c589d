import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { backupTo } from "./backup.ts";
import { backupsFolderIn, dailyBackupName, dayOfDaily, namesIn } from "./backups-folder.ts";
import { openToRead } from "./database.ts";
import { daysToKeep } from "./days-to-keep.ts";
import { clearDrafts } from "./drafts.ts";

export interface DailyBackupsOptions {
  readonly dataFolder: string;
  /** Today where this machine is, such as 2026-11-25. */
  readonly today: () => string;
  /** Is told why the backup of a day could not be made, once for each day. */
  readonly failed: (words: string) => void;
}

/** What one look came to: the file of a backup that was made, that today's is there already, or why there is none. */
export type DailyBackup =
  | { readonly state: "made"; readonly file: string }
  | { readonly state: "there" }
  | { readonly state: "failed"; readonly why: string };

export interface DailyBackups {
  /** Makes today's backup unless it is there, and takes away those that the rule does not keep. */
  look(): DailyBackup;
  /** Ends the looking. */
  close(): void;
}

/** Often enough that a machine which slept over midnight is not long without its backup. */
const betweenLooksMs = 3_600_000;

/**
 * A backup of the bench each day that Ferrule runs: one now, and one an hour at most after a day has begun. What fails is told and
 * tried again an hour later, and nothing else stops for it. Looks do not keep the process going.
 */
export function openDailyBackups(options: DailyBackupsOptions): DailyBackups {
  let toldOn: string | undefined;
  const look = () => {
    const looked = backUpToday(options);
    const day = options.today();
    if (looked.state === "failed" && toldOn !== day) {
      toldOn = day;
      options.failed(
        `Today's backup of the bench could not be made: ${looked.why}. It is tried again every hour`,
      );
    }
    return looked;
  };
  const timer = setInterval(look, betweenLooksMs).unref();
  return { look, close: () => clearInterval(timer) };
}

function backUpToday({ dataFolder, today }: DailyBackupsOptions): DailyBackup {
  const folder = backupsFolderIn(dataFolder);
  const name = dailyBackupName(today());
  try {
    mkdirSync(folder, { recursive: true });
    clearDrafts(folder, /^daily-/);
    const looked = namesIn(folder).includes(name)
      ? ({ state: "there" } as const)
      : make(dataFolder, join(folder, name));
    if (looked.state !== "failed") thin(folder, today());
    return looked;
  } catch (error) {
    return { state: "failed", why: (error as Error).message };
  }
}

function make(dataFolder: string, file: string): DailyBackup {
  const database = openToRead(dataFolder);
  if (database === undefined) return { state: "failed", why: `there is no bench in ${dataFolder}` };
  try {
    const made = backupTo(database, file);
    if (made.ok) return { state: "made", file: made.value.file };
    const [refusal] = made.problem.refusals ?? [];
    return { state: "failed", why: `${refusal?.field ?? file}: ${refusal?.got ?? made.problem.message}` };
  } finally {
    database.close();
  }
}

/** Takes away what the rule does not keep. Files with names that Ferrule does not give are not looked at. */
function thin(folder: string, today: string): void {
  const days = namesIn(folder).flatMap((name) => dayOfDaily(name) ?? []);
  const kept = new Set([today, ...daysToKeep(days)]);
  for (const day of days) if (!kept.has(day)) rmSync(join(folder, dailyBackupName(day)), { force: true });
}
