import { join } from "node:path";
import { expect, it } from "vitest";
import { latestSchema } from "../../packages/server/src/store/migrations.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
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
