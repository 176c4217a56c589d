import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { backupTo, checkBackup } from "./backup.ts";
import { closeDatabase, databaseFileName, inTransaction, openDatabase, openToRead } from "./database.ts";
import { latestSchema } from "./migrations.ts";
import { openTables } from "./tables.ts";

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "ferrule-backup-"));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

/** A bench on disk with so many grips, open for writing. */
function openBench(grips: number, at = folder()) {
  const database = openDatabase(at);
  const tables = openTables(database);
  for (let count = 1; count <= grips; count += 1) tables.parts.insert({ id: `g${count}`, kind: "grip" });
  onTestFinished(() => database.close());
  return { at, database, tables };
}

/** The ids of the parts in a backup, put in the place of a bench's database. */
function partsIn(backup: string): string[] {
  const at = folder();
  writeFileSync(join(at, databaseFileName), readFileSync(backup));
  const database = openDatabase(at);
  const ids = openTables(database)
    .parts.all()
    .map(({ value }) => value.id);
  closeDatabase(database);
  return ids;
}

describe("a backup", () => {
  it("holds the bench as it was, and opens as a bench", () => {
    const { at, database, tables } = openBench(3);
    const file = join(at, "copy.sqlite");
    const made = backupTo(database, file);
    tables.parts.insert({ id: "later", kind: "grip" });
    expect(made).toMatchObject({ ok: true, value: { file, schema: latestSchema } });
    expect(partsIn(file)).toEqual(["g1", "g2", "g3"]);
  });

  it("is made by somebody who only reads, in the midst of another's change, and without that change", () => {
    const { at, database, tables } = openBench(2);
    const reader = openToRead(at);
    const file = join(at, "copy.sqlite");
    inTransaction(database, () => {
      tables.parts.insert({ id: "half-done", kind: "grip" });
      expect(reader && backupTo(reader, file).ok).toBe(true);
    });
    reader?.close();
    expect(partsIn(file)).toEqual(["g1", "g2"]);
    expect(tables.parts.all()).toHaveLength(3);
  });

  it("keeps the numbers that ids of log and undo go on from", () => {
    const { at, database, tables } = openBench(2);
    tables.parts.remove("g2");
    const file = join(at, "copy.sqlite");
    backupTo(database, file);
    const restored = folder();
    writeFileSync(join(restored, databaseFileName), readFileSync(file));
    const second = openBench(0, restored);
    second.tables.parts.insert({ id: "g3", kind: "grip" });
    expect(second.tables.parts.get("g3")?.place).toBe(3);
  });

  it("leaves a file alone that is there already, unless it is told to replace it", () => {
    const { at, database } = openBench(1);
    const file = join(at, "copy.sqlite");
    writeFileSync(file, "mine");
    const refused = backupTo(database, file);
    expect(refused).toMatchObject({
      ok: false,
      problem: { refusals: [{ field: file, got: "a file that is there already" }] },
    });
    expect(readFileSync(file, "utf8")).toBe("mine");
    expect(backupTo(database, file, { force: true }).ok).toBe(true);
    expect(partsIn(file)).toEqual(["g1"]);
  });

  it("never replaces the database itself", () => {
    const { at, database } = openBench(1);
    const refused = backupTo(database, join(at, databaseFileName), { force: true });
    expect(refused).toMatchObject({
      ok: false,
      problem: { refusals: [{ got: "the bench's own database" }] },
    });
  });

  it("leaves nothing behind where it cannot be written", () => {
    const { at, database } = openBench(1);
    mkdirSync(join(at, "a-folder"));
    const before = readdirSync(at);
    expect(backupTo(database, join(at, "no", "such", "folder.sqlite")).ok).toBe(false);
    expect(backupTo(database, join(at, "a-folder"), { force: true }).ok).toBe(false);
    expect(readdirSync(at)).toEqual(before);
  });
});

describe("a backup that is looked at", () => {
  it.each<[string, (file: string) => void, string]>([
    ["is not there", () => {}, "no such file"],
    ["is no database", (file) => writeFileSync(file, "rust ".repeat(2000)), "not a database"],
    ["is somebody else's database", otherDatabase, "without parts and joints"],
  ])("and %s is refused", (_words, make, got) => {
    const file = join(folder(), "copy.sqlite");
    make(file);
    const refused = checkBackup(file);
    expect(refused.ok ? "" : refused.problem.refusals?.[0]?.got).toContain(got);
  });

  it("and has been damaged in the middle is refused, and stays as it is", () => {
    const { at, database, tables } = openBench(0);
    inTransaction(database, () => {
      for (let count = 0; count < 200; count += 1)
        tables.parts.insert({ id: `g${count}`, kind: "grip", note: "x".repeat(200) });
    });
    const file = join(at, "copy.sqlite");
    backupTo(database, file);
    const bytes = readFileSync(file);
    bytes.fill(0xa5, 4096 * 3, 4096 * 8);
    writeFileSync(file, bytes);
    expect(checkBackup(file).ok).toBe(false);
    expect(readFileSync(file)).toEqual(bytes);
  });
});

function otherDatabase(file: string): void {
  const { at, database } = openBench(0);
  database.exec("DROP TABLE joints");
  database.prepare("VACUUM INTO ?").run(file);
  rmSync(at, { recursive: true, force: true });
}
