import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const root = new URL("../../", import.meta.url).pathname;
const store = "packages/server/src/store/";

const sources = ["core", "server", "ui"].flatMap((name) => {
  const folder = `packages/${name}/src/`;
  return readdirSync(root + folder, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !/\.test(-kit)?\.ts$/.test(path))
    .map((path) => folder + path);
});

/** A file without its comments, in which SQL may be spoken of. */
const codeOf = (path: string) =>
  readFileSync(root + path, "utf8")
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/(^|\s)\/\/.*$/gm, "$1");

const sql =
  /["'`\s](SELECT\s[^"'`]*\sFROM|INSERT\s+(OR\s+\w+\s+)?INTO|UPDATE\s+\S+\s+SET|DELETE\s+FROM|CREATE\s+(TABLE|INDEX)|ALTER\s+TABLE|DROP\s+TABLE|PRAGMA\s|VACUUM|BEGIN\b|COMMIT\b|ROLLBACK\b)/;

/**
 * What SQLite has and PostgreSQL 15 has not (sqlite.org/lang.html; postgresql.org/docs/15/sql-commands.html), or means otherwise:
 * its pragmas and own tables, row numbers, typing by STRICT, REPLACE, functions for JSON and dates under its own names.
 */
const onlySqlite =
  /PRAGMA|AUTOINCREMENT|\bSTRICT\b|WITHOUT ROWID|VACUUM INTO|\bIMMEDIATE\b|INSERT OR|REPLACE INTO|\bGLOB\b|IFNULL|sqlite_|pragma_|json_\w+\(|json_valid|strftime|datetime\(|julianday|\browid\b|lastInsertRowid/i;

/** The files that belong to SQLite itself: how it is opened, checked, backed up, brought up to date, and told apart. */
const ofSqlite = [
  ...["sqlite", "database", "migrations", "backup", "restore", "check-sound"],
  // How a change by another program is noticed, and the number that no hit has had before.
  ...["tables", "hits"],
].map((name) => `${store}${name}.ts`);

it("finds SQL where there is some, and none in words alike", () => {
  expect("`SELECT place, body FROM parts`").toMatch(sql);
  expect('"DELETE FROM parts"').toMatch(sql);
  expect('database.exec("BEGIN")').toMatch(sql);
  expect('"Select a head from the list"').not.toMatch(sql);
  expect('"BEGINNING"').not.toMatch(sql);
});

it("has every statement of SQL in the store", () => {
  const outside = sources.filter((path) => !path.startsWith(store) && sql.test(codeOf(path)));
  expect(outside).toEqual([]);
  expect(sources.filter((path) => path.startsWith(store) && sql.test(codeOf(path))).length).toBeGreaterThan(
    15,
  );
});

it("says nothing that SQLite alone understands, but in the files that belong to it", () => {
  const found = sources.filter((path) => path.startsWith(store) && onlySqlite.test(codeOf(path)));
  expect(found.filter((path) => !ofSqlite.includes(path))).toEqual([]);
});

it("names no file as SQLite's that has nothing of it any more", () => {
  const idle = ofSqlite.filter((path) => !onlySqlite.test(codeOf(path)) && !/sqlite/i.test(codeOf(path)));
  expect(idle).toEqual([]);
});

it("opens databases in the store alone", () => {
  const openers = sources.filter((path) =>
    /node:sqlite|@photostructure\/sqlite|openSqlite\(/.test(codeOf(path)),
  );
  expect(openers.filter((path) => !path.startsWith(store))).toEqual([]);
});
