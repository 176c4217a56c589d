import { StartupProblem } from "../startup-problem.ts";
import type { Database } from "./sqlite.ts";

/**
 * The steps from an empty database to the present one, in order. A step that has been released is never changed; a new one
 * is added. `place` keeps the order in which things were put on the bench, also after one is deleted and brought back.
 */
const migrations: readonly string[] = [
  `CREATE TABLE parts (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE joints (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE claims (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE goals (name TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT;
   CREATE TABLE deletions (number INTEGER PRIMARY KEY AUTOINCREMENT, body TEXT NOT NULL) STRICT;
   CREATE TABLE settings (name TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT;`,
  `CREATE TABLE catalogue (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE evidence (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE sightings (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE books (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE costs (name TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT;`,
  `CREATE TABLE watches (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE hits (
     place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, sighting TEXT NOT NULL, body TEXT NOT NULL
   ) STRICT;
   CREATE INDEX hits_by_sighting ON hits (sighting);
   CREATE TABLE batches (
     place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, name TEXT NOT NULL, state TEXT NOT NULL,
     total INTEGER NOT NULL, done INTEGER NOT NULL, startedOn TEXT NOT NULL
   ) STRICT;
   CREATE TABLE batch_rows (
     batch TEXT NOT NULL, row INTEGER NOT NULL, given TEXT NOT NULL, result TEXT, netMinor INTEGER,
     PRIMARY KEY (batch, row)
   ) STRICT, WITHOUT ROWID;`,
  `CREATE TABLE measurements (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE inspections (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
   CREATE TABLE clearances (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;`,
  `CREATE TABLE devices (
     place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, name TEXT NOT NULL, pairedOn TEXT NOT NULL,
     seenOn TEXT NOT NULL, tokenHash TEXT NOT NULL UNIQUE
   ) STRICT;
   CREATE TABLE kept_answers (
     key TEXT PRIMARY KEY, status INTEGER NOT NULL, body TEXT NOT NULL, answeredOn TEXT NOT NULL
   ) STRICT, WITHOUT ROWID;`,
  // `listed` is the table of a thing; `before` and `after` are null where it was not, or is no more, there.
  `CREATE TABLE changes (
     number INTEGER PRIMARY KEY AUTOINCREMENT, at TEXT NOT NULL, means TEXT NOT NULL, device TEXT, who TEXT NOT NULL,
     what TEXT NOT NULL, things INTEGER NOT NULL, undoes INTEGER, undoneBy INTEGER
   ) STRICT;
   CREATE TABLE change_entries (
     change INTEGER NOT NULL, entry INTEGER NOT NULL, listed TEXT NOT NULL, id TEXT NOT NULL, place INTEGER,
     before TEXT, after TEXT, PRIMARY KEY (change, entry)
   ) STRICT, WITHOUT ROWID;
   CREATE INDEX change_entries_by_thing ON change_entries (listed, id, change);
   ALTER TABLE deletions ADD COLUMN change INTEGER;`,
];

/** The schema that this version of Ferrule writes. */
export const latestSchema = migrations.length;

/** The schema of a database; 0 where it is empty. */
export function schemaOf(database: Database): number {
  const row = database.prepare("PRAGMA user_version").get() as { user_version: number };
  return row.user_version;
}

/** Throws a `StartupProblem` where a newer version of Ferrule wrote the database. */
export function refuseNewer(schema: number): void {
  if (schema <= latestSchema) return;
  throw new StartupProblem(
    `The bench's database was written by a newer version of Ferrule (schema ${schema}, this one knows ${latestSchema}). ` +
      `It has been left as it is. Update Ferrule, or set FERRULE_DATA to another folder`,
  );
}

/** Brings the database up to date, or as far as the schema `to`, each step whole or not at all. */
export function migrate(database: Database, to = latestSchema): void {
  refuseNewer(schemaOf(database));
  for (let step = schemaOf(database); step < to; step += 1) {
    database.exec("BEGIN IMMEDIATE");
    // Another program may have taken the same step while this one waited for its turn.
    const isTaken = schemaOf(database) > step;
    database.exec(isTaken ? "ROLLBACK" : `${migrations[step]} PRAGMA user_version = ${step + 1}; COMMIT`);
  }
}
