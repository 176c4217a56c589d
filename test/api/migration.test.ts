import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkBackup } from "../../packages/server/src/store/backup.ts";
import { closeDatabase, openDatabase } from "../../packages/server/src/store/database.ts";
import { latestSchema } from "../../packages/server/src/store/migrations.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { makeOlderBench, olderSchemas, rowsIn, rowsOf } from "../durability/older-bench.test-kit.ts";
import { ask, bondedShaft, looseParts, temporaryFolder, testApp } from "./server.test-kit.ts";
import { model } from "./trade.test-kit.ts";

/** The schema as the first release wrote it, and rows as it wrote them. */
const firstSchema = `
  CREATE TABLE parts (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
  CREATE TABLE joints (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
  CREATE TABLE claims (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, body TEXT NOT NULL) STRICT;
  CREATE TABLE goals (name TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT;
  CREATE TABLE deletions (number INTEGER PRIMARY KEY AUTOINCREMENT, body TEXT NOT NULL) STRICT;
  CREATE TABLE settings (name TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT;
  PRAGMA user_version = 1;`;

/** A bench of the first release: a head on it, an adapter and its joint deleted one after the other, its goal deleted last. */
function firstRelease(): string {
  const folder = temporaryFolder();
  const database = openSqlite(join(folder, "bench.sqlite"));
  database.exec(firstSchema);
  const { head, adapter, shaft } = looseParts;
  for (const [place, part] of [
    [1, head],
    [3, shaft],
  ] as const)
    database.prepare("INSERT INTO parts VALUES (?, ?, ?)").run(place, part.id, JSON.stringify(part));
  const deletions = [
    { parts: [{ place: 2, value: adapter }], joints: [{ place: 1, value: bondedShaft }], claims: [] },
    { parts: [], joints: [], claims: [], goal: { skill: "bond" } },
  ];
  for (const deletion of deletions)
    database.prepare("INSERT INTO deletions (body) VALUES (?)").run(JSON.stringify(deletion));
  database.prepare("INSERT INTO settings VALUES ('example', 'false')").run();
  database.prepare("INSERT INTO settings VALUES ('page', ?)").run(JSON.stringify({ theme: "dark" }));
  database.close();
  return folder;
}

it("brings a database of the first release up to date with nothing lost", async () => {
  const dataFolder = firstRelease();
  const app = await testApp({ dataFolder });
  const { head, adapter, shaft } = looseParts;
  expect((await ask(app, "GET", "/api/bench")).body).toEqual({
    example: false,
    parts: [head, shaft],
    joints: [],
    claims: [],
    goal: {},
    undo: 2,
  });
  expect((await ask(app, "GET", "/api/settings")).body.theme).toBe("dark");
  expect((await ask(app, "GET", "/api/catalogue")).body).toEqual({ models: [] });
  await ask(app, "POST", "/api/bench/undo");
  expect((await ask(app, "GET", "/api/bench/goal")).body).toEqual({ skill: "bond" });
  const undone = await ask(app, "POST", "/api/bench/undo");
  expect(undone.body).toMatchObject({ restored: { parts: [adapter], joints: [bondedShaft] }, undo: 0 });
  const { body } = await ask(app, "GET", "/api/bench");
  expect(body.parts).toEqual([head, adapter, shaft]);
});

it("brings it up to date once, and keeps what is then added", async () => {
  const dataFolder = firstRelease();
  const first = await testApp({ dataFolder });
  expect((await ask(first, "POST", "/api/catalogue", model)).status).toBe(201);
  await ask(first, "PUT", "/api/costs", { perKmMinor: 31 });
  await first.close();
  const database = openSqlite(join(dataFolder, "bench.sqlite"));
  expect(database.prepare("PRAGMA user_version").get()).toEqual({ user_version: latestSchema });
  database.close();
  const second = await testApp({ dataFolder });
  expect((await ask(second, "GET", "/api/catalogue")).body.models).toEqual([model]);
  expect((await ask(second, "GET", "/api/costs")).body.perKmMinor).toBe(31);
});

/** A bench of an older version in a folder of its own. */
function olderBench(schema: number) {
  const folder = temporaryFolder();
  makeOlderBench(folder, schema);
  return { folder, file: join(folder, "bench.sqlite"), backups: join(folder, "backups") };
}

describe("a bench of an older version", () => {
  it("is there for every version that there has been", () => {
    expect(olderSchemas).toEqual(Array.from({ length: latestSchema - 1 }, (_, at) => at + 1));
  });

  it.each(olderSchemas)("of schema %i is brought up to date with every row as it was", (schema) => {
    const { folder, file } = olderBench(schema);
    closeDatabase(openDatabase(folder));
    expect(rowsIn(file, schema)).toEqual(rowsOf(schema));
    expect(checkBackup(file)).toMatchObject({ ok: true, value: { schema: latestSchema } });
  });

  it.each(olderSchemas)(
    "of schema %i is told by the server as it was, and can be changed and undone",
    async (schema) => {
      const { folder } = olderBench(schema);
      const app = await testApp({ dataFolder: folder });
      const rows = rowsOf(schema);
      const bodies = (table: string) => (rows[table] ?? []).map(({ body }) => JSON.parse(body as string));
      const get = async (url: string) => (await ask(app, "GET", url)).body;
      const { parts, joints, claims, goal } = await get("/api/bench");
      expect({ parts, joints, claims, goal }).toEqual({
        parts: bodies("parts"),
        joints: bodies("joints"),
        claims: bodies("claims"),
        goal: { skill: "bond" },
      });
      expect((await get("/api/catalogue")).models).toEqual(bodies("catalogue"));
      expect((await get("/api/evidence")).evidence).toEqual(bodies("evidence"));
      expect((await get("/api/sightings")).sightings).toEqual(bodies("sightings"));
      expect((await get("/api/books")).entries).toEqual(bodies("books"));
      expect((await get("/api/measurements")).measurements).toEqual(bodies("measurements"));
      expect((await ask(app, "POST", "/api/bench/undo")).body.restored.parts).toEqual([looseParts.grip]);
      expect((await ask(app, "DELETE", "/api/bench/parts/h1")).status).toBe(200);
      expect((await ask(app, "POST", "/api/bench/undo")).body.restored.parts).toEqual([looseParts.head]);
    },
  );

  it.each(olderSchemas)("of schema %i is kept in a backup first, and whoever starts is told", (schema) => {
    const { folder, backups } = olderBench(schema);
    const told: string[] = [];
    closeDatabase(openDatabase(folder, { note: (words) => told.push(words) }));
    const names = readdirSync(backups);
    expect(names).toEqual([expect.stringMatching(/^\d{4}-\d\d-\d\d-before-schema-\d+\.sqlite$/)]);
    const backup = join(backups, names[0] as string);
    expect(checkBackup(backup)).toMatchObject({ ok: true, value: { schema } });
    expect(rowsIn(backup, schema)).toEqual(rowsOf(schema));
    expect(told).toEqual([expect.stringContaining(`schema ${schema} to ${latestSchema}`)]);
    expect(told[0]).toContain(backup);
  });

  it("is kept once: the next start makes no other backup and says nothing", () => {
    const { folder, backups } = olderBench(1);
    closeDatabase(openDatabase(folder));
    const told: string[] = [];
    closeDatabase(openDatabase(folder, { note: (words) => told.push(words) }));
    expect(readdirSync(backups)).toHaveLength(1);
    expect(told).toEqual([]);
  });

  it("is kept under another name where a backup of that day is there already", () => {
    const { folder, backups } = olderBench(2);
    closeDatabase(openDatabase(folder));
    for (const end of ["", "-wal", "-shm"]) rmSync(join(folder, `bench.sqlite${end}`), { force: true });
    makeOlderBench(folder, 3);
    closeDatabase(openDatabase(folder));
    const schemas = readdirSync(backups).map((name) => checkBackup(join(backups, name)));
    expect(schemas).toMatchObject([{ value: { schema: 3 } }, { value: { schema: 2 } }]);
  });

  it("is left as it is where no backup can be made, and the start says so", () => {
    const { folder, file, backups } = olderBench(3);
    writeFileSync(backups, "a file in the way");
    const before = readFileSync(file);
    expect(() => openDatabase(folder)).toThrow(
      /schema 3, this one writes \d+\), and no backup of it could be made in .*backups.*left as it is.*Make room/,
    );
    expect(readFileSync(file)).toEqual(before);
    expect(rowsIn(file, 3)).toEqual(rowsOf(3));
    rmSync(backups);
    mkdirSync(backups);
    closeDatabase(openDatabase(folder));
    expect(readdirSync(backups)).toHaveLength(1);
  });
});
