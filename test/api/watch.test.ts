import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import {
  ask,
  bondedShaft,
  looseParts,
  openTestApp,
  type TestApp,
  temporaryFolder,
  testApp,
} from "./server.test-kit.ts";
import { asked, headListing, model } from "./trade.test-kit.ts";

const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });
const words = "Northmoor Ombrel driver head, 10.5 degrees, right handed, 40 euros, post included";

const evidence = [
  ...[5000, 5200, 5400].map((amount) => ({ kind: "head", amount })),
  ...[3000, 3100, 3300].map((amount) => ({ kind: "shaft", amount })),
  ...[16_000, 16_500, 17_000].map((amount) => ({ kind: "club", amount })),
].map(({ kind, amount }, at) => ({
  ...asked,
  id: `p${at}`,
  what: "sold",
  kind,
  adapterFamily: "Quillon 2",
  price: eur(amount),
}));

/** A shaft with its adapter and grip, which lacks a head. */
async function putShaft(app: TestApp): Promise<void> {
  const { adapter, shaft, grip } = looseParts;
  for (const row of evidence) await ask(app, "POST", "/api/evidence", row);
  await ask(app, "POST", "/api/catalogue", model);
  for (const part of [adapter, shaft, grip]) await ask(app, "POST", "/api/bench/parts", part);
  await ask(app, "POST", "/api/bench/joints", bondedShaft);
  await ask(app, "POST", "/api/bench/joints", { type: "gripped", parts: ["g1", "s1"] });
}

async function withShaft(options: Parameters<typeof testApp>[0] = {}): Promise<TestApp> {
  const app = await testApp(options);
  await putShaft(app);
  return app;
}

const read = async (app: TestApp) => (await ask(app, "GET", "/api/watch")).body;
const hitsOf = async (app: TestApp, query = "") => (await ask(app, "GET", `/api/hits${query}`)).body.hits;
const judge = async (app: TestApp, body: object) => (await ask(app, "POST", "/api/judge", body)).body;
const byHand = { kind: "adapter", needs: { family: "Quillon 2" }, text: "a Quillon 2 adapter" } as const;

const valued = (app: TestApp) =>
  vi.waitFor(
    async () => {
      const body = await read(app);
      expect(body.upToDate).toBe(true);
      return body;
    },
    { timeout: 25_000, interval: 100 },
  );

describe("GET /api/watch", () => {
  let app: TestApp;
  beforeAll(async () => {
    app = await openTestApp();
    await putShaft(app);
  });
  afterAll(() => app.close());

  it("has the wants of the bench at once, and their values when they have been worked out", async () => {
    const first = await read(app);
    expect(first.upToDate).toBe(false);
    expect(first.entries).toMatchObject([
      { watch: { kind: "head", by: "bench" }, worthMinor: null, capMinor: null, waiting: null, hits: 0 },
    ]);
    const { entries } = await valued(app);
    const [want] = entries;
    expect(want.watch).toEqual(first.entries[0].watch);
    expect(want.worthMinor).toBeGreaterThan(0);
    expect(want.capMinor).toBe(want.worthMinor);
    expect(want.clubs.length).toBeGreaterThan(0);
    expect(want.search.any).toEqual(
      expect.arrayContaining(["Quillon 2 driver head", "NM Ombrel driver head"]),
    );
    expect(want.waiting).toMatchObject({ priorOnly: true, sightings: 0 });
    expect(want.waiting.takeAtOrUnderMinor).toBeLessThan(want.worthMinor);
  });

  it("is stale while what it rests on has changed, and still says what was known", async () => {
    const { entries } = await valued(app);
    await ask(app, "PUT", "/api/costs", { hourValueMinor: 3000 });
    const stale = await read(app);
    expect(stale).toEqual({ entries, upToDate: false });
    const [want] = (await valued(app)).entries;
    expect(want.worthMinor).toBeLessThan(entries[0].worthMinor);
  });

  it("values what is watched by hand like a want of the bench", async () => {
    const { text } = (await read(app)).entries[0].watch;
    const { body } = await ask(app, "POST", "/api/watch", {
      kind: "head",
      needs: { "socket.family": "Quillon 2", hand: "right", clubType: "driver" },
      text: "a driver head",
    });
    const { entries } = await valued(app);
    const worth = (says: string) =>
      entries.find(({ watch }: { watch: { text: string } }) => watch.text === says).worthMinor;
    expect(worth("a driver head")).toBe(worth(text));
    await ask(app, "DELETE", `/api/watch/${body.id}`);
  });
});

describe("watching by hand", () => {
  it("is added, changed and taken off the list, and survives the server", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    const added = await ask(first, "POST", "/api/watch", {
      ...byHand,
      capMinor: 1500,
      place: "the next town",
    });
    expect(added.status).toBe(201);
    const watch = { id: "watch-1", ...byHand, by: "hand", capMinor: 1500, place: "the next town" };
    expect(added.body).toEqual(watch);
    const change = { capMinor: null, pinned: true };
    const changed = await ask(first, "PATCH", "/api/watch/watch-1", change);
    const { capMinor: _none, ...uncapped } = watch;
    expect(changed.body).toEqual({ ...uncapped, pinned: true });
    await first.close();
    const second = await testApp({ dataFolder });
    expect((await read(second)).entries).toMatchObject([{ watch: changed.body }]);
    const { body } = await ask(second, "DELETE", "/api/watch/watch-1");
    expect(body).toEqual({ deleted: changed.body });
    expect((await read(second)).entries).toEqual([]);
  });

  it.each([
    [{ needs: { __proto__: null, "__proto__.polluted": true } }, "needs.__proto__.polluted"],
    [{ needs: { "constructor.name": "x" } }, "needs.constructor.name"],
    [{ needs: { colour: "red" } }, "needs.colour"],
    [{ needs: { hand: "upper" } }, "needs.hand"],
    [{ needs: { "bore.diameterIn": "wide" } }, "needs.bore.diameterIn"],
    [{ needs: { family: [] } }, "needs.family"],
    [{ kind: "trolley" }, "kind"],
    [{ capMinor: -1 }, "capMinor"],
    [{ text: "" }, "text"],
  ])("refuses %j by its field", async (bad, field) => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/watch", { ...byHand, ...bad });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe(field);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it("takes an id once, and none that a want of the bench could have", async () => {
    const app = await testApp();
    expect((await ask(app, "POST", "/api/watch", { ...byHand, id: "mine" })).status).toBe(201);
    expect((await ask(app, "POST", "/api/watch", { ...byHand, id: "mine" })).status).toBe(409);
    expect((await ask(app, "POST", "/api/watch", { ...byHand, id: "want-0123456789abcdef" })).status).toBe(
      409,
    );
  });
});

describe("a want of the bench", () => {
  it("is pinned, muted, capped and noted, and forgets that when it is taken back", async () => {
    const app = await withShaft();
    await ask(app, "POST", "/api/watch", byHand);
    const want = (await read(app)).entries.find(
      ({ watch }: { watch: { by: string } }) => watch.by === "bench",
    ).watch;
    const url = `/api/watch/${want.id}`;
    const { body } = await ask(app, "PATCH", url, { muted: true, capMinor: 3000, note: "not before spring" });
    expect(body).toEqual({ ...want, muted: true, capMinor: 3000, note: "not before spring" });
    const { entries } = await read(app);
    expect(entries.map(({ watch }: { watch: { id: string } }) => watch.id)).toEqual(["watch-1", want.id]);
    expect(entries[1]).toMatchObject({ watch: body, capMinor: 3000 });
    await ask(app, "PATCH", url, { muted: null, pinned: true, capMinor: null, note: null });
    const [first] = (await read(app)).entries;
    expect(first.watch).toEqual({ ...want, pinned: true });
    expect((await ask(app, "DELETE", url)).status).toBe(404);
    expect((await ask(app, "PATCH", "/api/watch/want-9", { pinned: true })).status).toBe(404);
  });
});

describe("/api/hits", () => {
  it("tells of a judged listing which want it answers, for which club, and how far it is over the cap", async () => {
    const app = await withShaft();
    const [{ watch }] = (await valued(app)).entries;
    await ask(app, "PATCH", `/api/watch/${watch.id}`, { capMinor: 3500 });
    const { sighting } = await judge(app, { text: words });
    const hits = await hitsOf(app);
    expect(hits).toEqual([
      {
        id: "hit-1",
        watch: watch.id,
        wanted: watch.text,
        sighting: sighting.id,
        item: 0,
        on: "2026-11-25",
        overMinor: 500,
        // The club that the plan would build with it, then what else it would complete.
        clubs: ["driver with regular shaft", "shaft"],
        isDealtWith: false,
        text: words,
        asking: eur(4000),
        verdict: sighting.verdict,
      },
    ]);
    expect((await read(app)).entries[0].hits).toBe(1);
    await ask(app, "PATCH", `/api/watch/${watch.id}`, { capMinor: 5000 });
    expect(await hitsOf(app)).toMatchObject([{ overMinor: -1000 }]);
  });

  it("follow the correction of a listing, and come once however often it is judged", async () => {
    const app = await withShaft();
    const { sighting, listing } = await judge(app, { text: words });
    await judge(app, { sighting: sighting.id });
    expect(await hitsOf(app)).toHaveLength(1);
    const left = { ...listing, items: [{ ...listing.items[0], hand: "left" }] };
    await judge(app, { sighting: sighting.id, listing: left });
    expect(await hitsOf(app)).toEqual([]);
    await judge(app, { sighting: sighting.id, listing });
    expect(await hitsOf(app)).toHaveLength(1);
  });

  it("are kept until they are dealt with, by the user or by what becomes of the listing", async () => {
    const app = await withShaft();
    const { sighting } = await judge(app, { text: words });
    await judge(app, { text: `${words}!` });
    const [newest, oldest] = await hitsOf(app);
    expect(oldest.sighting).toBe(sighting.id);
    const { body } = await ask(app, "PATCH", `/api/hits/${newest.id}`, { isDealtWith: true });
    expect(body).toEqual({ ...newest, isDealtWith: true });
    expect(await hitsOf(app)).toEqual([oldest]);
    expect(await hitsOf(app, "?all=true")).toEqual([oldest, body]);
    await ask(app, "PATCH", `/api/sightings/${sighting.id}`, { outcome: "gone" });
    expect(await hitsOf(app)).toEqual([]);
    await ask(app, "PATCH", `/api/sightings/${sighting.id}`, { outcome: "open" });
    expect(await hitsOf(app)).toEqual([oldest]);
    expect((await ask(app, "PATCH", "/api/hits/hit-9", { isDealtWith: true })).status).toBe(404);
  });

  it("come of what is put in the log, not of what is only tried, nor where it is muted or elsewhere", async () => {
    const app = await withShaft();
    await judge(app, { text: words, log: false });
    expect(await hitsOf(app)).toEqual([]);
    const seen = {
      seenOn: "2026-11-20",
      text: words,
      read: headListing,
      listing: headListing,
      outcome: "open",
    };
    await ask(app, "POST", "/api/sightings", seen);
    expect(await hitsOf(app)).toHaveLength(1);
    await ask(app, "POST", "/api/sightings", { ...seen, outcome: "gone" });
    expect(await hitsOf(app)).toHaveLength(1);
    const [{ watch }] = (await read(app)).entries;
    await ask(app, "PATCH", `/api/watch/${watch.id}`, { place: "the next town" });
    await judge(app, { text: `${words}!` });
    expect(await hitsOf(app)).toHaveLength(1);
    await judge(app, { text: `${words}!!`, place: "The next town" });
    expect(await hitsOf(app)).toHaveLength(2);
    await ask(app, "PATCH", `/api/watch/${watch.id}`, { muted: true });
    await judge(app, { text: `${words}!!!`, place: "The next town" });
    expect(await hitsOf(app)).toHaveLength(2);
  });

  it("come of what the log has already, for what is put on the list, unmuted or looked for elsewhere", async () => {
    const app = await withShaft();
    const { sighting } = await judge(app, { text: words, place: "the next town" });
    const [hit] = await hitsOf(app);
    await ask(app, "PATCH", `/api/hits/${hit.id}`, { isDealtWith: true });
    const wanted = { kind: "head", needs: { "socket.family": "Quillon 2" }, text: "a head for the shed" };
    const { body: watch } = await ask(app, "POST", "/api/watch", { ...wanted, capMinor: 3000, muted: true });
    expect(await hitsOf(app)).toEqual([]);
    const change = async (body: object) => ask(app, "PATCH", `/api/watch/${watch.id}`, body);
    await change({ muted: null, place: "the harbour" });
    expect(await hitsOf(app)).toEqual([]);
    await change({ place: "The next town" });
    const came = { watch: watch.id, wanted: wanted.text, sighting: sighting.id, overMinor: 1000 };
    expect(await hitsOf(app)).toMatchObject([came]);
    expect(await hitsOf(app, "?all=true")).toMatchObject([came, { id: hit.id, isDealtWith: true }]);
  });

  it("come back with what is watched by hand, when that is put back as it was taken off", async () => {
    const app = await withShaft();
    await judge(app, { text: words });
    const wanted = { kind: "head", needs: { "socket.family": "Quillon 2" }, text: "a head", note: "any" };
    const { body: watch } = await ask(app, "POST", "/api/watch", wanted);
    const before = await hitsOf(app);
    expect(before).toHaveLength(2);
    const { deleted } = (await ask(app, "DELETE", `/api/watch/${watch.id}`)).body;
    expect((await ask(app, "POST", "/api/watch", deleted)).body).toEqual(watch);
    expect(await hitsOf(app)).toEqual(before);
  });

  it("are none of an item that has been bought", async () => {
    const app = await withShaft();
    const two = { ...headListing, items: [headListing.items[0], headListing.items[0]] };
    const seen = { seenOn: "2026-11-20", text: words, read: two, listing: two, outcome: "open" };
    await ask(app, "POST", "/api/sightings", { ...seen, boughtItems: [1] });
    expect(await hitsOf(app)).toMatchObject([{ item: 0 }]);
  });
});
