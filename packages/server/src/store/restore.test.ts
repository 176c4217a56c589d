import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { backupTo } from "./backup.ts";
import { closeDatabase, databaseFileName, openDatabase } from "./database.ts";
import { restoreFrom } from "./restore.ts";
import { openTables } from "./tables.ts";

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "ferrule-restore-"));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

/**
 * A bench with these grips that nobody has open, and a backup of it. Statements hold a database open until they are collected, so
 * the bench is a copy of the one that they were prepared for.
 */
function backedUp(...ids: readonly string[]) {
  const database = openDatabase(folder());
  for (const id of ids) openTables(database).parts.insert({ id, kind: "grip" });
  const backup = join(folder(), "copy.sqlite");
  backupTo(database, backup);
  closeDatabase(database);
  const at = folder();
  writeFileSync(join(at, databaseFileName), readFileSync(backup));
  return { at, backup };
}

/** The parts of a bench, looked up in a copy of it. */
function partsIn(at: string, name = databaseFileName): string[] {
  const copy = folder();
  for (const end of ["", "-wal"])
    if (existsSync(join(at, name + end)))
      writeFileSync(join(copy, databaseFileName + end), readFileSync(join(at, name + end)));
  const database = openDatabase(copy);
  const ids = openTables(database)
    .parts.all()
    .map(({ value }) => value.id);
  closeDatabase(database);
  return ids;
}

it("puts a backup in the place of the bench, and keeps what was there, each time under a name of its own", () => {
  const { backup } = backedUp("old-1", "old-2");
  const { at } = backedUp("new");
  const kept = join(at, "bench-before-restore-1.sqlite");
  expect(restoreFrom(backup, at)).toMatchObject({ ok: true, value: { kept } });
  expect(partsIn(at)).toEqual(["old-1", "old-2"]);
  expect(restoreFrom(kept, at)).toMatchObject({
    ok: true,
    value: { kept: join(at, "bench-before-restore-2.sqlite") },
  });
  expect(partsIn(at)).toEqual(["new"]);
});

it("makes the folder where there is none", () => {
  const { backup } = backedUp("a");
  const at = join(folder(), "not", "there");
  expect(restoreFrom(backup, at)).toMatchObject({ ok: true, value: { kept: null } });
  expect(partsIn(at)).toEqual(["a"]);
});

it("changes nothing while somebody has the bench open", () => {
  const { backup } = backedUp("old");
  const { at } = backedUp("new");
  const database = openDatabase(at);
  const refused = restoreFrom(backup, at);
  expect(refused.ok ? "" : refused.problem.message).toMatch(/in use\. Stop Ferrule/);
  openTables(database).parts.insert({ id: "written since", kind: "grip" });
  expect(partsIn(at)).toEqual(["new", "written since"]);
  expect(readdirSync(at).filter((name) => !name.startsWith(databaseFileName))).toEqual([]);
  closeDatabase(database);
});

it("takes the place of a damaged bench, whose bytes are kept", () => {
  const { backup } = backedUp("old");
  const at = folder();
  writeFileSync(join(at, databaseFileName), "rust ".repeat(2000));
  expect(restoreFrom(backup, at).ok).toBe(true);
  expect(partsIn(at)).toEqual(["old"]);
  expect(readFileSync(join(at, "bench-before-restore-1.sqlite"), "utf8")).toBe("rust ".repeat(2000));
});

it("does not read the log of what was there into what comes in its place", () => {
  const { backup } = backedUp("old");
  const { at } = backedUp("new");
  // A power cut leaves a log beside the database.
  const crashed = folder();
  const database = openDatabase(at);
  openTables(database).parts.insert({ id: "in the log", kind: "grip" });
  for (const end of ["", "-wal"])
    writeFileSync(join(crashed, databaseFileName + end), readFileSync(join(at, databaseFileName + end)));
  database.close();
  expect(restoreFrom(backup, crashed)).toMatchObject({ ok: true });
  expect(partsIn(crashed)).toEqual(["old"]);
  expect(partsIn(crashed, "bench-before-restore-1.sqlite")).toEqual(["new", "in the log"]);
});

it("refuses a backup that is damaged or of a newer version, and leaves the bench as it is", () => {
  const { backup, at } = backedUp("here");
  const { backup: newer } = backedUp("newer");
  const database = openDatabase(folder());
  database.exec(`ATTACH '${newer}' AS newer; PRAGMA newer.user_version = 99; DETACH newer`);
  database.close();
  writeFileSync(backup, "rust ".repeat(2000));
  expect(restoreFrom(backup, at).ok).toBe(false);
  const refused = restoreFrom(newer, at);
  expect(refused.ok ? [] : refused.problem.refusals).toMatchObject([{ got: "schema 99" }]);
  expect(partsIn(at)).toEqual(["here"]);
  expect(readdirSync(at)).toEqual([databaseFileName]);
});
