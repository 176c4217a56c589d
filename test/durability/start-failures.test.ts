import {
  appendFileSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { backupTo } from "../../packages/server/src/store/backup.ts";
import { closeDatabase, openDatabase } from "../../packages/server/src/store/database.ts";
import { restoreFrom } from "../../packages/server/src/store/restore.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import { temporaryFolder } from "../api/server.test-kit.ts";
import { canMount, hashOf, smallDisk } from "./disk.test-kit.ts";

const pageBytes = 4096;
const count = 300;
const noteOf = (at: number) => `note ${at} ${"x".repeat(200)}`;

/**
 * A bench with some hundred parts that nobody has open: a copy of the one that was written, since statements hold that one open until they
 * are collected. With it a backup of it.
 */
function closedBench(folder = temporaryFolder()) {
  const database = openDatabase(temporaryFolder());
  const { parts, together } = openTables(database);
  together(() => {
    for (let at = 1; at <= count; at += 1) parts.insert({ id: `g${at}`, kind: "grip", note: noteOf(at) });
  });
  const file = join(folder, "bench.sqlite");
  backupTo(database, file);
  closeDatabase(database);
  const backup = join(temporaryFolder(), "backup.sqlite");
  copyFileSync(file, backup);
  return { folder, file, backup };
}

function partsIn(folder: string): string[] {
  const database = openDatabase(folder);
  try {
    return openTables(database)
      .parts.all()
      .map(({ value }) => value.id);
  } finally {
    closeDatabase(database);
  }
}

function overwrite(file: string, change: (bytes: Buffer) => void): void {
  const bytes = readFileSync(file);
  change(bytes);
  writeFileSync(file, bytes);
}

describe("a database that is no longer whole", () => {
  it.each<[string, (file: string) => void]>([
    ["empty", (file) => truncateSync(file, 0)],
    ["cut off within its header", (file) => truncateSync(file, 50)],
    ["cut off after its first page", (file) => truncateSync(file, pageBytes)],
    ["cut off in the middle, at the end of a page", (file) => truncateSync(file, 8 * pageBytes)],
    ["cut off in the middle of a page", (file) => truncateSync(file, 8 * pageBytes + 100)],
    ["without its last byte", (file) => truncateSync(file, readFileSync(file).length - 1)],
    ["longer than it was by a piece of something else", (file) => appendFileSync(file, "something else")],
    [
      "overwritten in the middle, its header as it was",
      (file) => overwrite(file, (bytes) => bytes.fill(0xa5, 3 * pageBytes, 6 * pageBytes)),
    ],
    [
      "overwritten in the middle with nothing",
      (file) => overwrite(file, (bytes) => bytes.fill(0, 3 * pageBytes, 6 * pageBytes)),
    ],
    [
      "overwritten with nothing within a text, its pages as they were",
      (file) =>
        overwrite(file, (bytes) => bytes.fill(0, bytes.indexOf("note 17 "), bytes.indexOf("note 17 ") + 20)),
    ],
    ["no database at all", (file) => writeFileSync(file, "rust ".repeat(3000))],
  ])("%s, is refused with a way back, left as it is, and replaced by a backup", (_words, damage) => {
    const { folder, file, backup } = closedBench();
    damage(file);
    const before = hashOf(file);
    expect(() => openDatabase(folder)).toThrow(
      /^The bench's database .*bench\.sqlite is damaged \(.+\)\. It has been left as it is\. .*ferrule restore.*FERRULE_DATA/,
    );
    expect(hashOf(file)).toBe(before);
    expect(restoreFrom(backup, folder)).toMatchObject({ ok: true });
    expect(hashOf(join(folder, "bench-before-restore-1.sqlite"))).toBe(before);
    expect(partsIn(folder)).toHaveLength(count);
  });

  it("is refused naming the latest of the backups that Ferrule has made itself", () => {
    const { folder, file, backup } = closedBench();
    const backups = join(folder, "backups");
    mkdirSync(backups);
    for (const name of ["daily-2026-11-23.sqlite", "2026-11-24-before-schema-6.sqlite", "my-own.sqlite"])
      copyFileSync(backup, join(backups, name));
    truncateSync(file, 0);
    expect(() => openDatabase(folder)).toThrow(
      `ferrule restore ${join(backups, "2026-11-24-before-schema-6.sqlite")}`,
    );
  });

  it("can be moved away to start afresh", () => {
    const { folder, file } = closedBench();
    truncateSync(file, 0);
    expect(() => openDatabase(folder)).toThrow(/move it away to start afresh/);
    renameSync(file, `${file}.damaged`);
    expect(partsIn(folder)).toEqual([]);
  });
});

describe("a database in whose place something else is", () => {
  it("a folder: is refused and left as it is", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "bench.sqlite"));
    writeFileSync(join(folder, "bench.sqlite", "inside"), "kept");
    expect(() => openDatabase(folder)).toThrow(/bench\.sqlite is a folder.*Move the folder away/);
    expect(readdirSync(join(folder, "bench.sqlite"))).toEqual(["inside"]);
  });
});

/** The files of a bench as a crash leaves them: the database, and a log with a change in it that has not been folded in. */
function crashedBench(change: (bench: ReturnType<typeof openSqlite>) => void) {
  const { folder: written } = closedBench();
  const database = openDatabase(written);
  onTestFinished(() => database.close());
  change(database);
  const folder = temporaryFolder();
  for (const end of ["", "-wal"])
    copyFileSync(join(written, `bench.sqlite${end}`), join(folder, `bench.sqlite${end}`));
  return { folder, file: join(folder, "bench.sqlite"), log: join(folder, "bench.sqlite-wal") };
}

const addTwo = (database: ReturnType<typeof openSqlite>) => {
  const { parts } = openTables(database);
  parts.insert({ id: "first", kind: "grip" });
  parts.insert({ id: "second", kind: "grip" });
};

describe("a log that a crash has left beside the database", () => {
  it("is read at the next start: everything in it is there", () => {
    const { folder } = crashedBench(addTwo);
    expect(partsIn(folder).slice(-2)).toEqual(["first", "second"]);
  });

  it("and that was cut off in its last change gives all before it, and no half of that one", () => {
    const { folder, log } = crashedBench(addTwo);
    truncateSync(log, readFileSync(log).length - 100);
    expect(partsIn(folder).slice(-2)).toEqual([`g${count}`, "first"]);
  });

  it("stays as it is where the database is of a newer version", () => {
    const { folder, file, log } = crashedBench((database) => {
      addTwo(database);
      database.exec("PRAGMA user_version = 99");
    });
    const before = [hashOf(file), hashOf(log)];
    expect(() => openDatabase(folder)).toThrow(
      /newer version of Ferrule \(schema 99, .*left as it is\. Update Ferrule, or set FERRULE_DATA/,
    );
    expect([hashOf(file), hashOf(log)]).toEqual(before);
  });

  it("stays as it is where the database is damaged", () => {
    const { folder, file, log } = crashedBench(addTwo);
    overwrite(file, (bytes) => bytes.fill(0xa5, 5 * pageBytes, 8 * pageBytes));
    const before = [hashOf(file), hashOf(log)];
    expect(() => openDatabase(folder)).toThrow(/damaged/);
    expect([hashOf(file), hashOf(log)]).toEqual(before);
  });
});

describe("a first start that was cut off", () => {
  it("leaves no half of a bench: what it had begun is taken away, and the next start makes it anew", () => {
    const folder = temporaryFolder();
    // No process has a number above the most that Linux gives (4194304, proc(5), pid_max).
    const draft = join(folder, "bench.sqlite.4194305.part");
    for (const end of ["", "-wal", "-shm"]) writeFileSync(draft + end, "");
    expect(partsIn(folder)).toEqual([]);
    expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
  });
});

describe("a database that somebody else holds", () => {
  it.each([
    ["to write into it", "BEGIN IMMEDIATE"],
    ["for itself alone", "PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE"],
  ])("%s, is refused with a way out and opens once it is let go", (_words, hold) => {
    const { folder } = closedBench();
    const other = openSqlite(join(folder, "bench.sqlite"));
    onTestFinished(() => other.close());
    other.exec(`PRAGMA journal_mode = WAL; ${hold}`);
    expect(() => openDatabase(folder)).toThrow(
      /in use by another program\. Stop that program, or set FERRULE_DATA/,
    );
    other.exec("ROLLBACK");
    expect(partsIn(folder)).toHaveLength(count);
  });
});

// Needs the right to mount a disk; on a build machine it runs in any case.
describe.skipIf(!canMount())("a disk", () => {
  it("that may not be written is told at the start; the bench stays as it is and opens once it may", () => {
    const disk = smallDisk(4 * 1024 * 1024);
    const { folder, file } = closedBench(disk.folder);
    const before = hashOf(file);
    disk.makeReadOnly();
    expect(() => openDatabase(folder)).toThrow(
      /folder .* cannot be written \(.+\)\. Make it writable for this account, or set FERRULE_DATA/,
    );
    expect(hashOf(file)).toBe(before);
    disk.makeWritable();
    expect(partsIn(folder)).toHaveLength(count);
  });

  it("that may not be written is told where there is no bench yet", () => {
    const disk = smallDisk(1024 * 1024);
    disk.makeReadOnly();
    expect(() => openDatabase(disk.folder)).toThrow(/cannot be written/);
    expect(() => openDatabase(join(disk.folder, "new"))).toThrow(/cannot be written/);
  });

  it("that is full is told at the start; the bench stays as it is and opens once there is room", () => {
    const disk = smallDisk(4 * 1024 * 1024);
    const { folder, file } = closedBench(disk.folder);
    disk.fill();
    const before = hashOf(file);
    expect(() => openDatabase(folder)).toThrow(
      /The disk of the folder .* is full \(.+\)\. Nothing has been changed\. Make room on it .*FERRULE_DATA/,
    );
    expect(hashOf(file)).toBe(before);
    disk.makeRoom();
    expect(partsIn(folder)).toHaveLength(count);
  });

  it("that is full is told where there is no bench yet, and leaves no half of one", () => {
    const disk = smallDisk(1024 * 1024);
    disk.fill();
    expect(() => openDatabase(disk.folder)).toThrow(/is full/);
    expect(existsSync(join(disk.folder, "bench.sqlite"))).toBe(false);
    disk.makeRoom();
    expect(partsIn(disk.folder)).toEqual([]);
    rmSync(join(disk.folder, "bench.sqlite"));
  });
});
