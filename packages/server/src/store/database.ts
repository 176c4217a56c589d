import { existsSync, mkdirSync, renameSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { backUpBeforeMigration } from "./backup-before-migration.ts";
import { checkSound } from "./check-sound.ts";
import { diskProblem } from "./disk-problem.ts";
import { clearDrafts, draftOf } from "./drafts.ts";
import { latestSchema, migrate, schemaOf } from "./migrations.ts";
import { onDisk } from "./on-disk.ts";
import { folderProblem, openProblem } from "./open-problem.ts";
import { resultCodes } from "./result-codes.ts";
import { type Database, openSqlite } from "./sqlite.ts";

export const databaseFileName = "bench.sqlite";

export interface OpenOptions {
  /** Is told what somebody who starts Ferrule should know. */
  readonly note?: (words: string) => void;
}

/**
 * Opens the bench's database in a folder, which is made when it is not there; without a folder the database is in memory.
 * Once a write returns it is on disk: write-ahead log, synchronised in full at every commit. One of an older version is brought up
 * to date once a backup of it has been made. Throws a `StartupProblem` where it cannot be used; it is left as it was found then.
 */
export function openDatabase(folder: string | undefined, { note = () => {} }: OpenOptions = {}): Database {
  if (folder === undefined) return prepare(openSqlite(":memory:"));
  makeFolder(folder);
  const file = join(folder, databaseFileName);
  let database: Database | undefined;
  try {
    clearDrafts(folder, databaseFileName);
    if (!checkSound(file)) makeDatabase(file, folder);
    const inode = statSync(file).ino;
    database = openSqlite(file);
    holdForWriting(database);
    // Somebody who restores a backup may have put another file in its place while this waited for the right to write.
    if (statSync(file).ino !== inode)
      throw Object.assign(new Error("replaced meanwhile"), { errcode: resultCodes.busy });
    const schema = schemaOf(database);
    if (schema < latestSchema) backUpBeforeMigration(database, folder, { schema, note });
    migrate(database);
    return database;
  } catch (error) {
    database?.close();
    throw openProblem(error, file, folder);
  }
}

/**
 * Opens the database of a folder without the right to write: nothing is made or brought up to date, and whoever writes to it
 * is not held up. `undefined` where there is none.
 */
export function openToRead(folder: string): Database | undefined {
  const file = join(folder, databaseFileName);
  if (!existsSync(file)) return undefined;
  let database: Database | undefined;
  try {
    database = openSqlite(file, { readOnly: true });
    database.exec("PRAGMA busy_timeout = 2000");
    // Nothing is looked at before the first question.
    database.prepare("SELECT count(*) FROM sqlite_schema").get();
    return database;
  } catch (error) {
    database?.close();
    throw openProblem(error, file, folder);
  }
}

/**
 * Closes the database with everything in its one file, so that the file alone is a backup. Where the disk has no room for that, what
 * was written stays in the log beside it, and the next start finds it there.
 */
export function closeDatabase(database: Database): void {
  try {
    database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
  } catch (error) {
    if (diskProblem(error) === undefined) throw error;
  } finally {
    database.close();
  }
}

/** Runs a piece of work whole or not at all; throws a `ProblemError` where the disk refuses it. */
export function inTransaction<T>(database: Database, work: () => T): T {
  try {
    database.exec("BEGIN IMMEDIATE");
    return committed(database, work);
  } catch (error) {
    throw diskProblem(error) ?? error;
  }
}

function committed<T>(database: Database, work: () => T): T {
  try {
    const result = work();
    database.exec("COMMIT");
    return result;
  } catch (error) {
    // A failed commit may have ended the transaction already.
    if (database.isTransaction) database.exec("ROLLBACK");
    throw error;
  }
}

function makeFolder(folder: string): void {
  try {
    const made = mkdirSync(folder, { recursive: true });
    if (made !== undefined) onDisk(dirname(made));
  } catch (error) {
    throw folderProblem(folder, (error as Error).message);
  }
}

/** Makes an empty bench under another name first, so that no crash leaves half of one. */
function makeDatabase(file: string, folder: string): void {
  const draft = draftOf(file);
  try {
    fillDraft(draft);
    // All of it is brought to disk at once, before it takes its name.
    onDisk(draft);
    if (!existsSync(file)) renameSync(draft, file);
    onDisk(folder);
  } finally {
    clearDrafts(folder, databaseFileName, draft);
  }
}

function fillDraft(draft: string): void {
  const database = openSqlite(draft);
  try {
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = OFF");
    migrate(database);
  } finally {
    closeDatabase(database);
  }
}

function prepare(database: Database): Database {
  holdForWriting(database);
  migrate(database);
  return database;
}

function holdForWriting(database: Database): void {
  database.exec("PRAGMA busy_timeout = 2000; PRAGMA journal_mode = WAL");
  database.exec("PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON");
  // Asks for the right to write without writing, so that a read-only file is known now and not at the first change.
  database.exec("BEGIN IMMEDIATE; ROLLBACK");
}
