import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { StartupProblem } from "../startup-problem.ts";
import { migrate } from "./migrations.ts";
import { type Database, openSqlite } from "./sqlite.ts";

/** SQLite's primary result codes for a file that is not a sound database: SQLITE_CORRUPT and SQLITE_NOTADB. */
const corruptCode = 11;
const damagedCodes: ReadonlySet<unknown> = new Set([corruptCode, 26]);

export const databaseFileName = "bench.sqlite";

/**
 * Opens the bench's database in a folder, which is made when it is not there; without a folder the database is in memory.
 * Once a write returns it is on disk: write-ahead log, synchronised in full at every commit.
 */
export function openDatabase(folder: string | undefined): Database {
  if (folder === undefined) return prepare(openSqlite(":memory:"));
  makeFolder(folder);
  const file = join(folder, databaseFileName);
  let database: Database | undefined;
  try {
    checkSound(file);
    database = openSqlite(file);
    return prepare(database);
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

/** Closes the database with everything in its one file, so that the file alone is a backup. */
export function closeDatabase(database: Database): void {
  database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
  database.close();
}

/** Runs a piece of work whole or not at all. */
export function inTransaction<T>(database: Database, work: () => T): T {
  database.exec("BEGIN IMMEDIATE");
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
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw folderProblem(folder, (error as Error).message);
  }
}

/** Reads a database through without the right to write, so that a damaged one stays as it was found. */
function checkSound(file: string): void {
  if (!existsSync(file)) return;
  const database = openSqlite(file, { readOnly: true });
  try {
    const answer = database.prepare("PRAGMA quick_check(1)").get() as { quick_check?: string } | undefined;
    if (answer?.quick_check === "ok") return;
    throw Object.assign(new Error(answer?.quick_check ?? "no answer"), { errcode: corruptCode });
  } finally {
    database.close();
  }
}

function prepare(database: Database): Database {
  database.exec(
    "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA busy_timeout = 2000",
  );
  // Asks for the right to write without writing, so that a read-only file is known now and not at the first change.
  database.exec("BEGIN IMMEDIATE; ROLLBACK");
  migrate(database);
  return database;
}

function openProblem(error: unknown, file: string, folder: string): unknown {
  if (error instanceof StartupProblem) return error;
  const { errcode, message } = error as { errcode?: number; message: string };
  const primary = errcode === undefined ? undefined : errcode & 0xff;
  if (damagedCodes.has(primary)) {
    return new StartupProblem(
      `The bench's database ${file} is damaged (${message}). It has been left as it is. ` +
        `Put a backup in its place, or move it away to start afresh, or set FERRULE_DATA to another folder`,
    );
  }
  if (primary === 5 || primary === 6) {
    return new StartupProblem(
      `The bench's database ${file} is in use by another program. Stop that program, or set FERRULE_DATA to another folder`,
    );
  }
  // Read-only (8), disk errors (10), full (13) and a file that cannot be opened (14) are all the folder's.
  return folderProblem(folder, message);
}

function folderProblem(folder: string, message: string): StartupProblem {
  return new StartupProblem(
    `The folder ${folder} for the bench's database cannot be written (${message}). ` +
      `Make it writable for this account, or set FERRULE_DATA to another folder`,
  );
}
