import { constants, copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { done, type Outcome, problem } from "../errors.ts";
import { checkBackup } from "./backup.ts";
import { databaseFileName } from "./database.ts";
import { latestSchema } from "./migrations.ts";
import { onDisk } from "./on-disk.ts";
import { type Database, openSqlite } from "./sqlite.ts";

export interface Restored {
  readonly file: string;
  readonly schema: number;
  /** Where the bench that was there before is kept; nothing where there was none. */
  readonly kept: string | null;
}

/** SQLite's primary result codes for a file that is no sound database: SQLITE_CORRUPT and SQLITE_NOTADB. */
const damagedCodes: ReadonlySet<unknown> = new Set([11, 26]);

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
  const draft = `${target}.${process.pid}.part`;
  try {
    mkdirSync(folder, { recursive: true });
    copyFileSync(backup, draft);
    onDisk(draft);
    if (existsSync(target) && !isClosed(target))
      return problem("bad-request", `The bench in ${folder} is in use. Stop Ferrule, then restore`);
    const kept = keep(folder, target);
    renameSync(draft, target);
    onDisk(folder);
    return done({ file: target, schema, kept });
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

/** Folds the log of a database into it, which only somebody can who has it alone. A damaged one nobody can use. */
function isClosed(file: string): boolean {
  let database: Database | undefined;
  try {
    database = openSqlite(file);
    // Not as a statement, which would hold the database open until it is collected.
    database.exec("PRAGMA journal_mode = DELETE");
    return true;
  } catch (error) {
    const primary = ((error as { errcode?: number }).errcode ?? 0) & 0xff;
    if (damagedCodes.has(primary)) return true;
    if (primary === 5 || primary === 6) return false;
    throw error;
  } finally {
    database?.close();
  }
}

/** Copies what is there under a free name. A log left beside it belongs to it and must not be read into another. */
function keep(folder: string, target: string): string | null {
  if (!existsSync(target)) return null;
  const kept = freeName(folder);
  for (const end of ["", "-wal"])
    if (existsSync(target + end)) copyFileSync(target + end, kept + end, constants.COPYFILE_EXCL);
  onDisk(kept);
  for (const end of ["-wal", "-shm"]) rmSync(target + end, { force: true });
  return kept;
}

function freeName(folder: string): string {
  for (let count = 1; ; count += 1) {
    const name = join(folder, `bench-before-restore-${count}.sqlite`);
    if (!existsSync(name)) return name;
  }
}
