import { closeSync, copyFileSync, fstatSync, openSync, writeSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { checkBackup } from "../../packages/server/src/store/backup.ts";
import { databaseFileName, openDatabase } from "../../packages/server/src/store/database.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import {
  ask,
  looseParts,
  openTestApp,
  type TestApp,
  temporaryFolder,
  testApp,
} from "../api/server.test-kit.ts";
import { clubListing, model, sighting } from "../api/trade.test-kit.ts";
import { canMount, smallDisk } from "./disk.test-kit.ts";

const grip = (id: string) => ({ id, kind: "grip", note: `${id} ${"x".repeat(1900)}` });
const everything = ["/api/bench", "/api/books", "/api/sightings", "/api/evidence", "/api/bench/goal"];
const told = (app: TestApp) => Promise.all(everything.map(async (url) => (await ask(app, "GET", url)).body));

const noRoom = {
  error: {
    code: "disk",
    message: expect.stringMatching(/^The disk is full\. Nothing was changed; make room/),
  },
};
const isHeld = {
  error: {
    code: "disk",
    message: expect.stringMatching(/^Another program holds the database .*Nothing was changed; try again$/),
  },
};

/** Adds parts until the disk takes no more; returns the ids of those that were taken, and the refusal. */
async function addUntilRefused(app: TestApp) {
  const taken: string[] = [];
  for (let at = 0; at < 3000; at += 1) {
    const id = `more-${at}`;
    const reply = await ask(app, "POST", "/api/bench/parts", grip(id));
    if (reply.status !== 201) return { taken, refused: reply };
    taken.push(id);
  }
  throw new Error("the disk was never full");
}

/** An import, a purchase and a sale: each changes many rows at once. */
const wholeChanges: readonly (readonly [string, object])[] = [
  [
    "/api/bench/import",
    {
      format: "json",
      take: "good",
      text: JSON.stringify({ parts: Array.from({ length: 200 }, (_, at) => grip(`import-${at}`)) }),
    },
  ],
  ["/api/sightings/s1/buy", { paid: { amountMinor: 9000, currency: "EUR" }, on: "2026-11-25" }],
  ["/api/books/sell", { parts: ["h1"], price: { amountMinor: 5000, currency: "EUR" }, on: "2026-11-25" }],
];

async function readyBench(dataFolder: string): Promise<TestApp> {
  const app = await testApp({ dataFolder });
  await ask(app, "POST", "/api/catalogue", model);
  await ask(app, "POST", "/api/sightings", { ...sighting, listing: clubListing });
  await ask(app, "POST", "/api/bench/parts", looseParts.head);
  return app;
}

// Needs the right to mount a disk; on a build machine it runs in any case.
describe.skipIf(!canMount())("a disk that becomes full while Ferrule runs", () => {
  it("refuses changes in words and keeps no half of one; reading goes on, and so do changes once there is room", async () => {
    const disk = smallDisk(3 * 1024 * 1024);
    const app = await readyBench(disk.folder);
    disk.fill();
    const { taken, refused } = await addUntilRefused(app);
    expect(refused).toMatchObject({ status: 503, body: noRoom });
    const before = await told(app);
    for (const [url, body] of wholeChanges)
      expect(await ask(app, "POST", url, body)).toMatchObject({ status: 503, body: noRoom });
    expect(await told(app)).toEqual(before);
    expect(before[0].parts.map(({ id }: { id: string }) => id)).toEqual(["h1", ...taken]);

    disk.makeRoom();
    for (const [url, body] of wholeChanges.slice(1))
      expect(await ask(app, "POST", url, body)).toMatchObject({ status: 200 });
    expect((await ask(app, "POST", "/api/bench/parts", grip("after"))).status).toBe(201);
    const after = await told(app);
    await app.close();
    expect(checkBackup(join(disk.folder, databaseFileName))).toMatchObject({ ok: true });
    expect(await told(await testApp({ dataFolder: disk.folder }))).toEqual(after);
  });

  it("does not keep Ferrule from ending, and the next start has everything that was acknowledged", async () => {
    const disk = smallDisk(3 * 1024 * 1024);
    const app = await openTestApp({ dataFolder: disk.folder });
    disk.fill();
    const { taken } = await addUntilRefused(app);
    await app.close();
    disk.makeRoom();
    const again = await testApp({ dataFolder: disk.folder });
    const { parts } = (await ask(again, "GET", "/api/bench")).body;
    expect(parts.map(({ id }: { id: string }) => id)).toEqual(taken);
  });
});

describe("a database that another program holds while Ferrule runs", () => {
  it("refuses changes in words and keeps no half of one; reading goes on, and so do changes once it is let go", async () => {
    const dataFolder = temporaryFolder();
    const app = await readyBench(dataFolder);
    const other = openSqlite(join(dataFolder, databaseFileName));
    onTestFinished(() => other.close());
    other.exec("BEGIN IMMEDIATE");
    const before = await told(app);
    for (const [url, body] of wholeChanges.slice(1))
      expect(await ask(app, "POST", url, body)).toMatchObject({ status: 503, body: isHeld });
    expect(await told(app)).toEqual(before);
    other.exec("ROLLBACK");
    for (const [url, body] of wholeChanges)
      expect(await ask(app, "POST", url, body)).toMatchObject({ status: 200 });
  });
});

describe("a database that is overwritten while Ferrule runs", () => {
  it("is told as damaged where its pages make no sense any more, and refused at the next start", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    const parts = Array.from({ length: 200 }, (_, at) => grip(`g${at}`));
    const text = JSON.stringify({ parts });
    await ask(first, "POST", "/api/bench/import", { format: "json", take: "good", text });
    await first.close();
    // Opened anew, so that nothing of it is in memory.
    const app = await openTestApp({ dataFolder });
    const handle = openSync(join(dataFolder, databaseFileName), "r+");
    const { size } = fstatSync(handle);
    // All but the first page, which has the header.
    writeSync(handle, Buffer.alloc(size - 4096, 0xa5), 0, size - 4096, 4096);
    closeSync(handle);
    const damaged = { status: 503, body: { error: { code: "disk" } } };
    expect(await ask(app, "GET", "/api/bench")).toMatchObject(damaged);
    expect(await ask(app, "DELETE", "/api/bench/parts/g100")).toMatchObject(damaged);
    await app.close();
    await expect(openTestApp({ dataFolder })).rejects.toThrow(/is damaged/);
  });
});

describe("what a start promises of every change", () => {
  it("is asked of SQLite: a log that is synchronised in full before a change is acknowledged", () => {
    const database = openDatabase(temporaryFolder());
    onTestFinished(() => database.close());
    // https://sqlite.org/pragma.html#pragma_synchronous: 2 is FULL, which syncs the log at every commit.
    expect(database.prepare("PRAGMA synchronous").get()).toEqual({ synchronous: 2 });
    expect(database.prepare("PRAGMA journal_mode").get()).toEqual({ journal_mode: "wal" });
  });

  it("holds for a file that is copied while Ferrule runs, with its log: everything acknowledged is in the copy", async () => {
    const dataFolder = temporaryFolder();
    const app = await readyBench(dataFolder);
    const expected = await told(app);
    const copies = temporaryFolder();
    // Afterwards this process has no lock on it any more, and writes nothing more either.
    for (const end of ["", "-wal"])
      copyFileSync(join(dataFolder, databaseFileName + end), join(copies, databaseFileName + end));
    expect(await told(await testApp({ dataFolder: copies }))).toEqual(expected);
  });
});
