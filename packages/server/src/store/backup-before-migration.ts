import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { localToday } from "../clock.ts";
import { StartupProblem } from "../startup-problem.ts";
import { backupTo } from "./backup.ts";
import { backupsFolderIn, freeBeforeName } from "./backups-folder.ts";
import { latestSchema } from "./migrations.ts";
import { onDisk } from "./on-disk.ts";
import type { Database } from "./sqlite.ts";

/** What a migration is of. */
interface OlderDatabase {
  readonly schema: number;
  readonly note: (words: string) => void;
}

/**
 * Keeps a copy of a database of an older version before it is brought up to date, in the folder `backups` beside it. Throws a
 * `StartupProblem` where that cannot be done: no migration without a backup.
 */
export function backUpBeforeMigration(
  database: Database,
  dataFolder: string,
  { schema, note }: OlderDatabase,
): void {
  const folder = backupsFolderIn(dataFolder);
  // Nothing is in it yet: a first start that broke off.
  if (schema === 0) return;
  try {
    mkdirSync(folder, { recursive: true });
    onDisk(dataFolder);
  } catch (error) {
    throw notBackedUp(schema, folder, (error as Error).message);
  }
  const backup = backupTo(database, join(folder, freeBeforeName(folder, localToday(), latestSchema)));
  if (!backup.ok) throw notBackedUp(schema, folder, backup.problem.refusals?.[0]?.got ?? "no reason given");
  note(
    `The bench was written by an older version of Ferrule and is brought up to date (schema ${schema} to ${latestSchema}); ` +
      `as it was before it is kept in ${backup.value.file}`,
  );
}

function notBackedUp(schema: number, folder: string, why: string): StartupProblem {
  return new StartupProblem(
    `The bench was written by an older version of Ferrule (schema ${schema}, this one writes ${latestSchema}), and no backup of it could ` +
      `be made in ${folder} (${why}), so that it has been left as it is. Make room there and make it writable, then start again`,
  );
}
