import { constants, copyFileSync, existsSync, linkSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { done, type Outcome, problem } from "../errors.ts";
import { checkBackup } from "./backup.ts";
import { databaseFileName } from "./database.ts";
import { draftOf } from "./drafts.ts";
import { latestSchema } from "./migrations.ts";
import { onDisk } from "./on-disk.ts";
import { isDamage, isInUse } from "./open-problem.ts";
import { openSqlite } from "./sqlite.ts";

export interface Restored {
  readonly file: string;
  readonly schema: number;
  /** Where the bench that was there before is kept; nothing where there was none. */
  readonly kept: string | null;
}

/**
 * Puts a backup in the place of the database in a folder, which is kept beside it. Refused while anybody has that database
 * open, and where the backup is damaged or of a newer version; until the backup is in its place the old one stays.
 */
export function restoreFrom(backup: string, folder: string): Outcome<Restored> {
  const sound = checkBackup(backup);
  if (!sound.ok) return sound;
  const { schema } = sound.value;
  if (schema > latestSchema)
    return problem("bad-request", "The backup was written by a newer version of Ferrule", [
      { field: backup, got: `schema ${schema}`, expected: `schema ${latestSchema} or older; update Ferrule` },
    ]);
  const target = join(folder, databaseFileName);
  const draft = draftOf(target);
  try {
    mkdirSync(folder, { recursive: true });
    copyFileSync(backup, draft);
    onDisk(draft);
    const alone = takeAlone(target);
    if (alone === undefined)
      return problem("bad-request", `The bench in ${folder} is in use. Stop Ferrule, then restore`);
    try {
      const kept = keep(folder, target);
      renameSync(draft, target);
      onDisk(folder);
      return done({ file: target, schema, kept });
    } finally {
      alone.letGo();
    }
  } catch (error) {
    return problem("bad-request", "The backup was not restored", [
      {
        field: folder,
        got: (error as Error).message,
        expected: "a folder that can be written, with room in it",
      },
    ]);
  } finally {
    rmSync(draft, { force: true });
  }
}

/**
 * Folds the log of a database into it and keeps everybody else out of it until it is let go, so that nobody begins to write to what is
 * just being put away. Nothing where somebody has it open. A damaged one nobody can use, and one that is not there neither.
 */
function takeAlone(file: string): { letGo(): void } | undefined {
  if (!existsSync(file)) return { letGo: () => {} };
  const database = openSqlite(file);
  try {
    // Not as a statement, which would hold the database open until it is collected.
    database.exec("PRAGMA journal_mode = DELETE; PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE");
    return { letGo: () => database.close() };
  } catch (error) {
    database.close();
    if (isDamage(error)) return { letGo: () => {} };
    if (isInUse(error)) return undefined;
    throw error;
  }
}

/**
 * Gives what is there a second name, a free one. The file is not opened for that: to close it again would let go of the lock on it.
 * A log left beside it belongs to it and must not be read into another.
 */
function keep(folder: string, target: string): string | null {
  if (!existsSync(target)) return null;
  const kept = freeName(folder);
  for (const end of ["", "-wal"]) if (existsSync(target + end)) secondName(target + end, kept + end);
  for (const end of ["-wal", "-shm"]) rmSync(target + end, { force: true });
  return kept;
}

function secondName(file: string, name: string): void {
  try {
    linkSync(file, name);
  } catch (error) {
    if ((error as { code?: string }).code === "EEXIST") throw error;
    // Some disks know one name for a file only.
    copyFileSync(file, name, constants.COPYFILE_EXCL);
    onDisk(name);
  }
}

function freeName(folder: string): string {
  for (let count = 1; ; count += 1) {
    const name = join(folder, `bench-before-restore-${count}.sqlite`);
    if (!existsSync(name)) return name;
  }
}
