import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it, onTestFinished, vi } from "vitest";
import { checkBackup } from "./backup.ts";
import { openDailyBackups } from "./daily-backups.ts";
import { openDatabase } from "./database.ts";
import { openTables } from "./tables.ts";

const hourMs = 3_600_000;

/** A bench that is open for writing, and what is made and told of its backups on a day that can be set. */
function benchOn(day: string) {
  const dataFolder = mkdtempSync(join(tmpdir(), "ferrule-daily-"));
  const database = openDatabase(dataFolder);
  const now = { day };
  const told: string[] = [];
  const open = () => {
    const opened = openDailyBackups({
      dataFolder,
      today: () => now.day,
      failed: (words) => told.push(words),
    });
    onTestFinished(() => opened.close());
    return opened;
  };
  onTestFinished(() => {
    database.close();
    rmSync(dataFolder, { recursive: true, force: true });
  });
  const folder = join(dataFolder, "backups");
  return { folder, now, told, open, database, names: () => readdirSync(folder).sort() };
}

afterEach(() => {
  vi.useRealTimers();
});

describe("daily backups", () => {
  it("make one of the bench as it is when they begin, whole and read through", () => {
    const bench = benchOn("2026-11-25");
    openTables(bench.database).parts.insert({ id: "g1", kind: "grip" });
    const file = join(bench.folder, "daily-2026-11-25.sqlite");
    expect(bench.open().look()).toEqual({ state: "made", file });
    expect(checkBackup(file)).toMatchObject({ ok: true });
    expect(bench.names()).toEqual(["daily-2026-11-25.sqlite"]);
  });

  it("make one a day, however often Ferrule is started", () => {
    const bench = benchOn("2026-11-25");
    bench.open().look();
    expect(bench.open().look()).toEqual({ state: "there" });
    bench.now.day = "2026-11-26";
    expect(bench.open().look().state).toBe("made");
    expect(bench.names()).toEqual(["daily-2026-11-25.sqlite", "daily-2026-11-26.sqlite"]);
  });

  it("make one within an hour of the next day while Ferrule runs, and none after it is closed", () => {
    vi.useFakeTimers();
    const bench = benchOn("2026-11-25");
    const opened = bench.open();
    opened.look();
    bench.now.day = "2026-11-26";
    vi.advanceTimersByTime(hourMs);
    expect(bench.names()).toContain("daily-2026-11-26.sqlite");
    opened.close();
    bench.now.day = "2026-11-27";
    vi.advanceTimersByTime(3 * hourMs);
    expect(bench.names()).not.toContain("daily-2026-11-27.sqlite");
  });

  it("take away those that the rule does not keep, and nothing that somebody else put there", () => {
    const bench = benchOn("2026-11-25");
    mkdirSync(bench.folder);
    const own = [
      "2026-11-01-before-schema-6.sqlite",
      "bench-Mon.sqlite",
      "daily-2026-11.sqlite",
      "notes.txt",
    ];
    const days = Array.from({ length: 24 }, (_, at) => `2026-11-${String(at + 1).padStart(2, "0")}`);
    for (const name of [...own, ...days.map((day) => `daily-${day}.sqlite`)])
      writeFileSync(join(bench.folder, name), "x");
    bench.open().look();
    const kept = ["08", "15", "19", "20", "21", "22", "23", "24", "25"].map(
      (day) => `daily-2026-11-${day}.sqlite`,
    );
    expect(bench.names()).toEqual([...own, ...kept].sort());
  });

  it("take away what a crash left half-written, and not what another process is writing", () => {
    const bench = benchOn("2026-11-25");
    mkdirSync(bench.folder);
    // No process has a number above the most that Linux gives (4194304, proc(5), pid_max).
    const [left, others] = [
      "daily-2026-11-24.sqlite.4194305.part",
      `daily-2026-11-24.sqlite.${process.ppid}.part`,
    ];
    for (const name of [left, others]) writeFileSync(join(bench.folder, name), "half");
    bench.open().look();
    expect(bench.names()).toEqual([others, "daily-2026-11-25.sqlite"].sort());
  });

  it("say once a day why there is none, try again every hour, and stop nothing else", () => {
    vi.useFakeTimers();
    const bench = benchOn("2026-11-25");
    // A file stands where the folder should be.
    writeFileSync(bench.folder, "in the way");
    expect(bench.open().look()).toMatchObject({ state: "failed", why: expect.stringContaining("EEXIST") });
    vi.advanceTimersByTime(2 * hourMs);
    expect(bench.told).toEqual([
      expect.stringMatching(/^Today's backup of the bench could not be made: .*EEXIST/),
    ]);
    rmSync(bench.folder);
    vi.advanceTimersByTime(hourMs);
    expect(bench.names()).toEqual(["daily-2026-11-25.sqlite"]);
  });

  it("do not take an old one away on a day when none could be made", () => {
    const bench = benchOn("2026-11-25");
    mkdirSync(bench.folder);
    const days = Array.from(
      { length: 20 },
      (_, at) => `daily-2026-11-${String(at + 1).padStart(2, "0")}.sqlite`,
    );
    for (const name of days) writeFileSync(join(bench.folder, name), "x");
    rmSync(join(bench.folder, "..", "bench.sqlite"));
    expect(bench.open().look().state).toBe("failed");
    expect(bench.names()).toEqual(days);
    expect(existsSync(join(bench.folder, "daily-2026-11-25.sqlite"))).toBe(false);
  });
});
