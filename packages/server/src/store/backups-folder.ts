import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** Where backups that Ferrule makes of its own accord are kept, unless the environment says otherwise. */
export const backupsFolderIn = (dataFolder: string) => join(dataFolder, "backups");

/** The names that Ferrule gives them; whatever is called otherwise is somebody's own. */
const dailyName = /^daily-(\d{4}-\d{2}-\d{2})\.sqlite$/;
const beforeName = /^(\d{4}-\d{2}-\d{2})-before-schema-\d+(?:-\d+)?\.sqlite$/;

export const dailyBackupName = (day: string) => `daily-${day}.sqlite`;

/** The day of a daily backup by its name; nothing for any other file. */
export function dayOfDaily(name: string): string | undefined {
  return dailyName.exec(name)?.[1];
}

/** A name for the backup before a migration, free in the folder: `2026-11-25-before-schema-6.sqlite`. */
export function freeBeforeName(folder: string, day: string, schema: number): string {
  const stem = `${day}-before-schema-${schema}`;
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? `${stem}.sqlite` : `${stem}-${count}.sqlite`;
    if (!existsSync(join(folder, name))) return name;
  }
}

/** The latest of the backups that Ferrule made in a data folder, by their names. */
export function latestBackup(dataFolder: string): string | undefined {
  const folder = backupsFolderIn(dataFolder);
  const dayOf = (name: string) => dayOfDaily(name) ?? beforeName.exec(name)?.[1] ?? "";
  const [latest] = namesIn(folder)
    .filter((name) => dayOf(name) !== "")
    .sort((one, other) => dayOf(other).localeCompare(dayOf(one)) || one.localeCompare(other));
  return latest === undefined ? undefined : join(folder, latest);
}

/** What is in a folder, by name; nothing where there is none that can be read. */
export function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder).sort();
  } catch {
    return [];
  }
}
