import { readListing, readyCatalogue } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { enterOffline } from "../../packages/ui/src/offline/enter-offline.ts";
import type { Kept, KeptSnapshot } from "../../packages/ui/src/offline/kept.ts";
import { sendWaiting } from "../../packages/ui/src/offline/send-waiting.ts";
import { settle } from "../../packages/ui/src/offline/settle.ts";
import type { WaitingChange } from "../../packages/ui/src/offline/waiting-change.ts";
import { withChanges } from "../../packages/ui/src/offline/with-changes.ts";
import { ask, looseParts, type TestApp, testApp } from "./server.test-kit.ts";

/** What the browser would keep, in memory. */
function memory(): Kept {
  let snapshot: KeptSnapshot | undefined;
  const changes = new Map<number, WaitingChange>();
  let places = 0;
  return {
    snapshot: async () => snapshot,
    keepSnapshot: async (next) => {
      snapshot = next;
    },
    stillHolds: async (asOf) => {
      if (snapshot) snapshot = { ...snapshot, asOf };
    },
    changes: async () => [...changes.values()].sort((a, b) => a.place - b.place),
    add: async (change, join) => {
      const last = [...changes.values()].findLast(({ list, id }) => list === change.list && id === change.id);
      const joined = last && join(last);
      if (joined) changes.set(joined.place, joined);
      else changes.set(++places, { ...change, place: places });
    },
    put: async (change) => void changes.set(change.place, change),
    drop: async (place) => void changes.delete(place),
  };
}

/** A page without a signal in front of this server, as it is now. */
async function pageOf(app: TestApp) {
  const kept = memory();
  const { stamp, snapshot } = (await ask(app, "GET", "/api/snapshot")).body;
  await kept.keepSnapshot({ stamp, snapshot, asOf: "2026-11-25T08:00:00Z" });
  let keys = 0;
  return {
    kept,
    enter: async (method: string, path: string, body?: object) => {
      const world = withChanges(snapshot, await kept.changes());
      keys += 1;
      const key = `offline-key-${keys}`;
      return (await enterOffline(kept, world, { method, path, body, key, seen: null }, new Date(0))) as {
        id: string;
      };
    },
    /** With the signal back; `lost` says which answers get lost on the way. */
    send: (lost: (path: string) => boolean = () => false) =>
      sendWaiting(kept, async (path, init) => {
        const reply = await app.inject({
          method: (init?.method ?? "GET") as "GET",
          url: path,
          headers: init?.headers as Record<string, string>,
          ...(init?.body ? { payload: String(init.body) } : {}),
        });
        if (lost(path)) throw new TypeError("Failed to fetch");
        return new Response(reply.body, { status: reply.statusCode });
      }),
    states: async () => (await kept.changes()).map(({ id, state }) => `${id} ${state}`),
  };
}

const parts = async (app: TestApp) => (await ask(app, "GET", "/api/bench")).body.parts;
const gripPath = "/api/bench/parts/g1";

async function benchWithGrip() {
  const app = await testApp();
  await ask(app, "POST", "/api/bench/parts", { ...looseParts.grip, note: "old" });
  return app;
}

describe("what is entered without a signal", () => {
  it("arrives once, also where the answer is lost on the way", async () => {
    const app = await testApp();
    const page = await pageOf(app);
    await page.enter("POST", "/api/bench/parts", { kind: "grip", massG: 50 });
    expect(await page.send(() => true)).toMatchObject({ count: 0, stopped: "no-signal" });
    expect(await parts(app)).toHaveLength(1);
    expect(await page.send()).toMatchObject({ count: 1, renamed: [] });
    expect(await parts(app)).toHaveLength(1);
    expect(await page.kept.changes()).toEqual([]);
  });

  it("arrives in its order: parts, then the joint between them, then what is changed of them", async () => {
    const app = await testApp();
    const page = await pageOf(app);
    const { id: _a, ...adapter } = looseParts.adapter;
    const { id: _s, ...shaft } = looseParts.shaft;
    const a = await page.enter("POST", "/api/bench/parts", adapter);
    const s = await page.enter("POST", "/api/bench/parts", shaft);
    await page.enter("POST", "/api/bench/joints", { type: "bonded", parts: [a.id, s.id] });
    await page.enter("PATCH", `/api/bench/parts/${a.id}`, { note: "tight" });
    expect(await page.send()).toMatchObject({ count: 3, stopped: undefined });
    const { body } = await ask(app, "GET", "/api/bench");
    expect(body.joints).toMatchObject([{ parts: [a.id, s.id] }]);
    expect(body.parts).toMatchObject([{ id: a.id, note: "tight" }, { id: s.id }]);
  });

  it("follows the bench where it has given a thing another id", async () => {
    const app = await testApp();
    const page = await pageOf(app);
    const made = await page.enter("POST", "/api/bench/parts", { kind: "grip", massG: 50 });
    const [change] = await page.kept.changes();
    // The first try got as far as the bench before the page gave up on it, without an id of the page's making.
    await app.inject({
      method: "POST",
      url: "/api/bench/parts",
      payload: { kind: "grip", massG: 50 },
      headers: { "idempotency-key": change!.key },
    });
    await page.kept.put({ ...change!, tries: 1 });
    await page.enter("PATCH", `/api/bench/parts/${made.id}`, { note: "new" });
    expect((await page.send()).renamed).toEqual([{ from: made.id, to: "grip-1" }]);
    expect(await parts(app)).toMatchObject([{ id: "grip-1", note: "new" }]);
  });

  it("buys a listing that was read at the door, once", async () => {
    const app = await testApp();
    const page = await pageOf(app);
    const text = "Northmoor driver head only, right handed, 10.5 degrees, 20 euros";
    const listing = readListing(text, readyCatalogue([]));
    const seen = { seenOn: "2026-11-25", text, read: listing, listing, outcome: "open" };
    const kept = await page.enter("POST", "/api/sightings", seen);
    const paid = { amountMinor: 2000, currency: "EUR" };
    await page.enter("POST", `/api/sightings/${kept.id}/buy`, { paid, on: "2026-11-25" });
    expect(await page.send((path) => path.endsWith("/buy"))).toMatchObject({
      count: 1,
      stopped: "no-signal",
    });
    expect(await page.send()).toMatchObject({ count: 1 });
    expect(await parts(app)).toMatchObject([{ kind: "head", loftDeg: 10.5 }]);
    expect((await ask(app, "GET", "/api/books")).body.entries).toHaveLength(1);
    expect((await ask(app, "GET", "/api/sightings")).body.sightings).toMatchObject([
      { id: kept.id, outcome: "bought" },
    ]);
  });

  it("is put together with what others changed meanwhile, where they changed other fields", async () => {
    const app = await benchWithGrip();
    const page = await pageOf(app);
    await page.enter("PATCH", gripPath, { massG: 51 });
    await ask(app, "PATCH", gripPath, { note: "theirs" });
    expect(await page.send()).toMatchObject({ count: 1 });
    expect(await parts(app)).toMatchObject([{ massG: 51, note: "theirs" }]);
  });

  it.each([
    ["mine", { massG: 51, note: "mine", year: 2011 }],
    ["theirs", { massG: 51, note: "theirs", year: 2011 }],
  ] as const)(
    "leaves the bench as it is where both changed a field, until a person chooses: %s",
    async (how, then) => {
      const app = await benchWithGrip();
      const page = await pageOf(app);
      await page.enter("PATCH", gripPath, { massG: 51, note: "mine" });
      await ask(app, "PATCH", gripPath, { note: "theirs", year: 2011 });
      expect(await page.send()).toMatchObject({ count: 0, stopped: undefined });
      expect(await page.states()).toEqual(["g1 conflict"]);
      expect(await parts(app)).toMatchObject([{ massG: 50, note: "theirs" }]);
      await settle(page.kept, 1, how);
      expect(await page.send()).toMatchObject({ count: 1 });
      expect(await parts(app)).toMatchObject([then]);
    },
  );

  it.each([
    ["mine", 0],
    ["theirs", 1],
  ] as const)("deletes nothing that was changed meanwhile, until a person chooses: %s", async (how, left) => {
    const app = await benchWithGrip();
    const page = await pageOf(app);
    await page.enter("DELETE", gripPath);
    await ask(app, "PATCH", gripPath, { note: "theirs" });
    await page.send();
    expect([await page.states(), (await parts(app)).length]).toEqual([["g1 conflict"], 1]);
    await settle(page.kept, 1, how);
    await page.send();
    expect([await page.states(), (await parts(app)).length]).toEqual([[], left]);
  });

  it("can be put back as it was meant where it was deleted meanwhile", async () => {
    const app = await benchWithGrip();
    const page = await pageOf(app);
    await page.enter("PATCH", gripPath, { note: "mine" });
    await ask(app, "DELETE", gripPath);
    await page.send();
    expect(await page.states()).toEqual(["g1 conflict"]);
    await settle(page.kept, 1, "mine");
    await page.send();
    expect(await parts(app)).toMatchObject([{ id: "g1", note: "mine" }]);
  });

  it("stays with its reason where the bench refuses it, with what rests on it, and lets the rest through", async () => {
    const app = await testApp();
    const page = await pageOf(app);
    const first = await page.enter("POST", "/api/bench/parts", { ...looseParts.adapter, id: "a1" });
    await page.enter("POST", "/api/bench/parts", looseParts.shaft);
    await page.enter("POST", "/api/bench/joints", { id: "j1", type: "bonded", parts: [first.id, "s1"] });
    await ask(app, "POST", "/api/bench/parts", { ...looseParts.grip, id: "a1" });
    expect(await page.send()).toMatchObject({ count: 1 });
    expect(await page.states()).toEqual(["a1 refused", "j1 waiting"]);
    expect((await page.kept.changes())[0]?.problem).toMatch(/"a1"/);
    expect((await parts(app)).map(({ id }: { id: string }) => id)).toEqual(["a1", "s1"]);
  });

  it("is refused at once, with the field, where it could not be taken", async () => {
    const page = await pageOf(await testApp());
    const refused = page.enter("POST", "/api/bench/parts", { kind: "grip", massG: "heavy" });
    await expect(refused).rejects.toMatchObject({ code: "bad-request", refusals: [{ field: "massG" }] });
    expect(await page.kept.changes()).toEqual([]);
  });
});
