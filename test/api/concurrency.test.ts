import { createHash } from "node:crypto";
import { join } from "node:path";
import { canonicalText } from "@ferrule/core";
import { describe, expect, it, onTestFinished } from "vitest";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import {
  ask,
  bondedShaft,
  looseParts,
  type TestApp,
  temporaryFolder,
  testApp,
  today,
} from "./server.test-kit.ts";
import { asked, headListing, model } from "./trade.test-kit.ts";

const { head, adapter, shaft, grip } = looseParts;
const hash = (value: unknown) => createHash("sha256").update(canonicalText(value)).digest("hex");

function held(app: TestApp, method: "PUT" | "PATCH" | "DELETE", url: string, tag: string, payload?: object) {
  return app.inject({ method, url, headers: { "if-match": tag }, ...(payload && { payload }) });
}

const sighting = {
  id: "seen1",
  seenOn: today,
  text: "Northmoor Ombrel driver head and a grip, 40 euros",
  read: headListing,
  listing: headListing,
  outcome: "open",
} as const;
const claim = { id: "c1", receiver: "Quillon 2", adapter: "Quillon 1", verdict: "fits", evidence: "tried" };
const entry = { id: "e1", type: "other", on: today, amount: { amountMinor: -500, currency: "EUR" } };
const watch = { id: "w1", kind: "head", needs: { clubType: "driver" }, text: "a driver head" };

/** Each list, a thing of it, a change of that thing, and another. */
const lists = [
  ["/api/bench/parts", "parts", grip, { massG: 51 }, { massG: 52 }],
  ["/api/bench/joints", "joints", bondedShaft, { parts: ["s1", "a1"] }, { parts: ["a1", "s2"] }],
  ["/api/bench/claims", "claims", claim, { note: "one" }, { note: "other" }],
  ["/api/catalogue", "models", model, { year: 2020 }, { year: 2019 }],
  ["/api/evidence", "evidence", asked, { note: "one" }, { note: "other" }],
  ["/api/sightings", "sightings", sighting, { note: "one" }, { note: "other" }],
  ["/api/books", "entries", entry, { note: "one" }, { note: "other" }],
] as const;

describe.each(lists)("a thing of %s", (url, list, thing, one, other) => {
  async function withThing() {
    const app = await testApp();
    for (const part of [adapter, shaft, { ...shaft, id: "s2" }])
      await ask(app, "POST", "/api/bench/parts", part);
    const made = await ask(app, "POST", url, thing);
    expect(made.status).toBe(201);
    return { app, made, at: `${url}/${thing.id}` };
  }

  it("tells its version when it is made, read, changed and listed, and all agree", async () => {
    const { app, made, at } = await withThing();
    const read = await ask(app, "GET", at);
    expect(read.headers.etag).toBe(`"${hash(read.body)}"`);
    expect(made.headers.etag).toBe(read.headers.etag);
    const { body } = await ask(app, "GET", `${url}?versions=true`);
    expect(body.versions[thing.id]).toBe(hash(read.body));
    expect(Object.keys(body.versions)).toHaveLength(body[list].length);
    expect((await ask(app, "GET", url)).body.versions).toBeUndefined();
    const changed = await ask(app, "PATCH", at, one);
    expect(changed.status).toBe(200);
    expect(changed.headers.etag).toBe(`"${hash((await ask(app, "GET", at)).body)}"`);
  });

  it("refuses a stale change with what is there, what was sent and what both came from", async () => {
    const { app, made, at } = await withThing();
    const { etag } = made.headers;
    const first = await held(app, "PATCH", at, String(etag), one);
    expect(first.statusCode).toBe(200);
    const present = first.json();
    const whole = { ...made.body, ...other };
    const cases = [
      ["PATCH", other, other],
      ["PUT", whole, whole],
      ["DELETE", undefined, null],
    ] as const;
    for (const [method, payload, given] of cases) {
      const reply = await held(app, method, at, String(etag), payload);
      expect(reply.statusCode).toBe(409);
      expect(reply.json().error).toEqual({
        code: "changed-meanwhile",
        message: expect.any(String),
        present,
        given,
        base: made.body,
      });
    }
    expect((await ask(app, "GET", at)).body).toEqual(present);
    const again = await held(app, "PATCH", at, String(first.headers.etag), other);
    expect(again.statusCode).toBe(200);
    expect((await held(app, "DELETE", at, String(again.headers.etag))).statusCode).toBe(200);
  });
});

const singles = [
  ["/api/bench/goal", { skill: "bond" }, { skill: "machine" }],
  ["/api/costs", { perKmMinor: 31 }, { perKmMinor: 32 }],
  ["/api/settings", { theme: "dark" }, { theme: "light" }],
] as const;

it.each(singles)("%s is held to its version too", async (url, one, other) => {
  const app = await testApp();
  const before = await ask(app, "GET", url);
  expect(before.headers.etag).toBe(`"${hash(before.body)}"`);
  const first = await held(app, "PUT", url, String(before.headers.etag), one);
  expect(first.statusCode).toBe(200);
  const stale = await held(app, "PUT", url, String(before.headers.etag), other);
  expect(stale.statusCode).toBe(409);
  expect(stale.json().error).toMatchObject({
    code: "changed-meanwhile",
    present: first.json(),
    given: other,
    base: before.body,
  });
  expect((await ask(app, "GET", url)).body).toEqual(first.json());
  expect((await held(app, "PUT", url, String(first.headers.etag), other)).statusCode).toBe(200);
});

it("a goal is deleted only in the version that was meant", async () => {
  const app = await testApp();
  const set = await ask(app, "PUT", "/api/bench/goal", { skill: "bond" });
  await ask(app, "PUT", "/api/bench/goal", { skill: "machine" });
  const url = "/api/bench/goal";
  expect((await held(app, "DELETE", url, String(set.headers.etag))).json().error).toMatchObject({
    present: { skill: "machine" },
    given: null,
    base: { skill: "bond" },
  });
  expect((await held(app, "DELETE", url, `"${hash({ skill: "machine" })}"`)).statusCode).toBe(200);
});

it("the paper of labels and the template for descriptions are held to their versions", async () => {
  const app = await testApp();
  const { setup } = (await ask(app, "GET", "/api/labels")).body;
  const tag = `"${hash(setup)}"`;
  const roll = { ...setup, paper: "roll" };
  expect((await held(app, "PUT", "/api/labels/setup", tag, roll)).statusCode).toBe(200);
  const stale = await held(app, "PUT", "/api/labels/setup", tag, { ...setup, paper: "letter" });
  expect(stale.json().error).toMatchObject({ code: "changed-meanwhile", present: roll, base: setup });
  const url = "/api/advert/template";
  const before = await ask(app, "GET", url);
  expect(before.headers.etag).toBe(`"${hash(before.body.template)}"`);
  const first = await held(app, "PUT", url, String(before.headers.etag), { template: "{title}" });
  expect(first.statusCode).toBe(200);
  const other = await held(app, "PUT", url, String(before.headers.etag), { template: "{parts}" });
  expect(other.json().error).toMatchObject({
    code: "changed-meanwhile",
    present: "{title}",
    given: "{parts}",
  });
});

it("what is watched is held to its version, as the list tells it", async () => {
  const app = await testApp();
  expect((await ask(app, "POST", "/api/watch", watch)).status).toBe(201);
  const { versions } = (await ask(app, "GET", "/api/watch?versions=true")).body;
  const tag = `"${versions.w1}"`;
  expect((await held(app, "PATCH", "/api/watch/w1", tag, { pinned: true })).statusCode).toBe(200);
  const stale = await held(app, "PATCH", "/api/watch/w1", tag, { muted: true });
  expect(stale.json().error).toMatchObject({
    code: "changed-meanwhile",
    present: { ...watch, by: "hand", pinned: true },
    given: { muted: true },
    base: { ...watch, by: "hand" },
  });
  expect((await held(app, "DELETE", "/api/watch/w1", tag)).statusCode).toBe(409);
});

it("goes through without a version, with any, and with one of several", async () => {
  const app = await testApp();
  const { headers } = await ask(app, "POST", "/api/bench/parts", grip);
  const at = "/api/bench/parts/g1";
  expect((await ask(app, "PATCH", at, { massG: 51 })).status).toBe(200);
  expect((await held(app, "PATCH", at, "*", { massG: 50 })).statusCode).toBe(200);
  expect((await held(app, "PATCH", at, `"other", ${headers.etag}`, { massG: 52 })).statusCode).toBe(200);
  expect((await held(app, "PATCH", at, `"other", ${headers.etag}`, { massG: 53 })).statusCode).toBe(409);
  expect((await held(app, "PATCH", "/api/bench/parts/none", "*", { massG: 53 })).statusCode).toBe(404);
});

it("says of a version that nobody knows only what is there and what was sent", async () => {
  const app = await testApp();
  await ask(app, "POST", "/api/bench/parts", head);
  const reply = await held(app, "DELETE", "/api/bench/parts/h1", '"made-up"');
  expect(reply.json().error).toEqual({
    code: "changed-meanwhile",
    message: expect.any(String),
    present: head,
    given: null,
  });
});

it("is held to what another program writes meanwhile: a version that it wrote is not overwritten", async () => {
  const dataFolder = temporaryFolder();
  const app = await testApp({ dataFolder });
  const { headers } = await ask(app, "POST", "/api/bench/parts", grip);
  const database = openSqlite(join(dataFolder, "bench.sqlite"));
  onTestFinished(() => database.close());
  const tables = openTables(database);
  tables.parts.replace("g1", { ...grip, massG: 60 } as never);
  const reply = await held(app, "PATCH", "/api/bench/parts/g1", String(headers.etag), { massG: 61 });
  expect(reply.json().error).toMatchObject({ code: "changed-meanwhile", present: { massG: 60 }, base: grip });
  const { changes } = (await ask(app, "GET", "/api/history")).body;
  expect(changes.map(({ who }: { who: { means: string } }) => who.means)).toEqual(["command-line", "here"]);
});
