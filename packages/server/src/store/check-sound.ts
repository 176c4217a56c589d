import { closeSync, openSync, readSync, statSync } from "node:fs";
import { StartupProblem } from "../startup-problem.ts";
import { refuseNewer, schemaOf } from "./migrations.ts";
import { Damaged } from "./open-problem.ts";
import { type Database, openSqlite } from "./sqlite.ts";

/**
 * Reads a database through without the right to write, so that one that is damaged, cut off or of a newer version stays as it was
 * found; returns whether there is one. Throws `Damaged`, a `StartupProblem` or what SQLite says.
 */
export function checkSound(file: string): boolean {
  const found = statSync(file, { throwIfNoEntry: false });
  if (found === undefined) return false;
  if (found.isDirectory())
    throw new StartupProblem(
      `${file} is a folder, and the bench's database has to be a file there. ` +
        "Move the folder away, or set FERRULE_DATA to another one",
    );
  // Ferrule never leaves an empty file, and SQLite would begin an empty bench in one without a word.
  if (found.size === 0) throw new Damaged("it is empty");
  checkWholePages(file, found.size);
  const database = openSqlite(file, { readOnly: true });
  try {
    checkPages(database);
    refuseNewer(schemaOf(database));
    checkBodies(database);
    return true;
  } finally {
    database.close();
  }
}

/** SQLite takes a last page that is cut short for a whole one. With a log beside it that page may be written again from there. */
function checkWholePages(file: string, bytes: number): void {
  const log = statSync(`${file}-wal`, { throwIfNoEntry: false });
  if (log !== undefined && log.size > 0) return;
  const page = pageBytes(file);
  if (page !== undefined && bytes % page !== 0) throw new Damaged("it is cut off in the middle of a page");
}

/** The size of a page, from the header (https://sqlite.org/fileformat.html, 1.3.2); nothing where it is none. */
function pageBytes(file: string): number | undefined {
  const header = Buffer.alloc(18);
  const handle = openSync(file, "r");
  try {
    if (readSync(handle, header, 0, 18, 0) < 18) return undefined;
  } finally {
    closeSync(handle);
  }
  const stated = header.readUInt16BE(16);
  if (stated === 1) return 65_536;
  return stated >= 512 && (stated & (stated - 1)) === 0 ? stated : undefined;
}

function checkPages(database: Database): void {
  const answer = database.prepare("PRAGMA quick_check(1)").get() as { quick_check?: string } | undefined;
  if (answer?.quick_check !== "ok") throw new Damaged(answer?.quick_check ?? "no answer");
}

/** SQLite knows pages and not what is written in them: an overwritten text shows where it is no JSON any more. */
function checkBodies(database: Database): void {
  const tables = database
    .prepare(
      "SELECT t.name AS name FROM sqlite_schema t JOIN pragma_table_info(t.name) c " +
        "WHERE t.type = 'table' AND c.name = 'body' AND t.name <> 'kept_answers'",
    )
    .all() as { name: string }[];
  for (const { name } of tables) {
    const bad = database.prepare(`SELECT count(*) AS count FROM ${name} WHERE NOT json_valid(body)`).get();
    const { count } = bad as { count: number };
    if (count > 0) throw new Damaged(`${count} of the texts in ${name} cannot be read`);
  }
}
