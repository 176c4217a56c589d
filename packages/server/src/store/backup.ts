import { existsSync, realpathSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { done, type Outcome, problem } from "../errors.ts";
import { draftOf } from "./drafts.ts";
import { schemaOf } from "./migrations.ts";
import { onDisk } from "./on-disk.ts";
import { type Database, openSqlite } from "./sqlite.ts";

/** A backup that has been written and read through. */
export interface Backup {
  /** Where it is: the whole path. */
  readonly file: string;
  readonly bytes: number;
  /** The schema of the database that it holds. */
  readonly schema: number;
}

export interface BackupOptions {
  /** Puts it in the place of a file that is there already. */
  readonly force?: boolean;
}

/**
 * Writes the database as it is at this moment into one file of its own, also while others read and write it. The file is there
 * only once it is whole, has been read through by SQLite and is on disk; until then what was in its place stays. Refused where
 * something is in its place already, unless `force` says otherwise, and where it would be the database itself.
 */
export function backupTo(
  database: Database,
  file: string,
  { force = false }: BackupOptions = {},
): Outcome<Backup> {
  const target = resolve(file);
  const refused = placeProblem(database, target, force);
  if (refused) return refused;
  const draft = draftOf(target);
  try {
    rmSync(draft, { force: true });
    database.prepare("VACUUM INTO ?").run(draft);
    const sound = checkBackup(draft);
    if (!sound.ok) return sound;
    onDisk(draft);
    renameSync(draft, target);
    onDisk(dirname(target));
    return done({ ...sound.value, file: target });
  } catch (error) {
    return problem("bad-request", "The backup was not written", [
      {
        field: target,
        got: (error as Error).message,
        expected: "a folder that can be written, with room in it",
      },
    ]);
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Whether a file is a whole database of ours, and of which schema: it is read through, and not changed. */
export function checkBackup(file: string): Outcome<Backup> {
  const refused = (got: string) =>
    problem("bad-request", "This is no sound backup", [
      { field: file, got, expected: "a backup that Ferrule wrote, undamaged" },
    ]);
  if (!existsSync(file)) return refused("no such file");
  let database: Database | undefined;
  try {
    database = openSqlite(file, { readOnly: true });
    const answers = database.prepare("PRAGMA integrity_check(1)").all() as { integrity_check: string }[];
    const [answer] = answers;
    if (answer?.integrity_check !== "ok") return refused(answer?.integrity_check ?? "no answer");
    const tables = database
      .prepare(
        "SELECT count(*) AS count FROM sqlite_schema WHERE type = 'table' AND name IN ('parts', 'joints')",
      )
      .get() as { count: number };
    if (tables.count < 2) return refused("a database without parts and joints");
    return done({ file, bytes: statSync(file).size, schema: schemaOf(database) });
  } catch (error) {
    return refused((error as Error).message);
  } finally {
    database?.close();
  }
}

function placeProblem(
  database: Database,
  target: string,
  force: boolean,
): ReturnType<typeof problem> | undefined {
  const refused = (got: string, expected: string) =>
    problem("bad-request", "The backup was not written", [{ field: target, got, expected }]);
  const found = statSync(target, { throwIfNoEntry: false });
  if (found === undefined) return undefined;
  if (!found.isFile()) return refused("something that is no file", "the name of a file");
  if (realpathSync(target) === ownFile(database)) return refused("the bench's own database", "another file");
  return force
    ? undefined
    : refused("a file that is there already", "a name that is free, or --force to replace it");
}

/** The file that the database is in; nothing where it is in memory. */
function ownFile(database: Database): string | undefined {
  const rows = database.prepare("PRAGMA database_list").all() as { name: string; file: string }[];
  const file = rows.find(({ name }) => name === "main")?.file;
  return file ? realpathSync(file) : undefined;
}
