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
import { asked, model } from "./trade.test-kit.ts";

const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });
const headFor = (price: number) =>
  `Northmoor Ombrel driver head, 10.5 degrees, right handed, ${price} euros, post included`;

/** A shaft with its adapter and grip, which lacks a head, and what heads, shafts and clubs went for. */
async function putShaft(app: TestApp): Promise<void> {
  const { adapter, shaft, grip } = looseParts;
  const sold = [
    ...[5000, 5200, 5400].map((amount) => ({ kind: "head", amount })),
    ...[3000, 3100, 3300].map((amount) => ({ kind: "shaft", amount })),
    ...[16_000, 16_500, 17_000].map((amount) => ({ kind: "club", amount })),
  ];
  for (const [at, { kind, amount }] of sold.entries())
    await ask(app, "POST", "/api/evidence", {
      ...asked,
      id: `p${at}`,
      what: "sold",
      kind,
      adapterFamily: "Quillon 2",
      price: eur(amount),
    });
  await ask(app, "POST", "/api/catalogue", model);
  for (const part of [adapter, shaft, grip]) await ask(app, "POST", "/api/bench/parts", part);
  await ask(app, "POST", "/api/bench/joints", bondedShaft);
  await ask(app, "POST", "/api/bench/joints", { type: "gripped", parts: ["g1", "s1"] });
}

const start = (app: TestApp, body: object) => ask(app, "POST", "/api/batches", body);
const read = async (app: TestApp, id: string, query = "") =>
  (await ask(app, "GET", `/api/batches/${id}${query}`)).body;
const logOf = async (app: TestApp) => (await ask(app, "GET", "/api/sightings")).body.sightings;

const ended = (app: TestApp, id: string) =>
  vi.waitFor(
    async () => {
      const body = await read(app, id);
      expect(body.state).not.toBe("running");
      return body;
    },
    { timeout: 28_000, interval: 100 },
  );

async function judged(app: TestApp, body: object) {
  return ended(app, (await start(app, body)).body.batch);
}

describe("POST /api/batches", () => {
  let app: TestApp;
  beforeAll(async () => {
    app = await openTestApp();
    await putShaft(app);
  });
  afterAll(() => app.close());

  it("judges every listing, what brings most first, each in the log and matched to the watchlist", async () => {
    const text = [headFor(90), "Wanted: a bag stand, any condition, up to 5 euros", headFor(30)].join("\n\n");
    const { status, body } = await start(app, { text, name: "Saturday's adverts" });
    expect(status).toBe(202);
    expect(body).toEqual({ batch: expect.any(String), total: 3 });
    const batch = await ended(app, body.batch);
    expect(batch).toMatchObject({ name: "Saturday's adverts", total: 3, done: 3, state: "done" });
    expect(batch.rows.map(({ row }: { row: number }) => row)).toEqual([2, 0, 1]);
    const [cheap, dear, wanted] = batch.rows;
    expect(cheap).toMatchObject({ text: headFor(30), asking: eur(3000), problem: null });
    // Sixty euros dearer brings sixty euros less.
    expect(cheap.netMinor - dear.netMinor).toBe(6000);
    expect(wanted).toMatchObject({ verdict: "leave", netMinor: null, hits: [] });
    const watched = (await ask(app, "GET", "/api/watch")).body.entries[0].watch.id;
    expect([cheap.hits, dear.hits]).toEqual([[watched], [watched]]);
    const sighting = (await ask(app, "GET", `/api/sightings/${cheap.sighting}`)).body;
    expect(sighting).toMatchObject({ text: headFor(30), verdict: cheap.verdict, seenOn: "2026-11-25" });
    expect(sighting.mostToPay.amountMinor).toBe(cheap.mostToPayMinor);
    const alone = (await ask(app, "POST", "/api/judge", { text: headFor(30), log: false })).body;
    expect(alone.deal.verdict).toBe(cheap.verdict);
    expect(alone.deal.mostToPay.amountMinor).toBe(cheap.mostToPayMinor);
    const { hits } = (await ask(app, "GET", "/api/hits")).body;
    expect(hits.map((hit: { sighting: string }) => hit.sighting).toSorted()).toEqual(
      [cheap.sighting, dear.sighting].toSorted(),
    );
    expect((await read(app, body.batch, "?limit=1")).rows).toEqual([cheap]);
    const { batches } = (await ask(app, "GET", "/api/batches")).body;
    expect(batches[0]).toEqual({
      id: body.batch,
      name: "Saturday's adverts",
      total: 3,
      done: 3,
      state: "done",
      startedOn: "2026-11-25",
    });
  });

  it("takes the same words of the same day for one listing, with the user's correction of it", async () => {
    const first = (await ask(app, "POST", "/api/judge", { text: headFor(41) })).body;
    const listing = { ...first.listing, asking: eur(3900) };
    await ask(app, "POST", "/api/judge", { sighting: first.sighting.id, listing });
    const { rows } = await judged(app, { text: `${headFor(41)}\n${headFor(41)}`, format: "lines" });
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(row).toMatchObject({ sighting: first.sighting.id, asking: eur(3900) });
  });

  it.each([
    ["text", `${headFor(31)}\n\n${headFor(32)}`, undefined],
    ["one per line", `${headFor(31)}\n${headFor(32)}`, "lines"],
    ["CSV", `text,place\n"${headFor(31)}",the next town\n"${headFor(32)}",`, undefined],
    ["CSV in columns", `title;price\n"${headFor(31)}";\n"${headFor(32)}";32 euros`, undefined],
    [
      "one JSON per line",
      `${JSON.stringify({ text: headFor(31) })}\n${JSON.stringify(headFor(32))}`,
      undefined,
    ],
  ])("reads %s", async (_name, text, format) => {
    const { rows } = await judged(app, { text, format });
    const words = rows.map((row: { text: string }) => row.text.slice(0, headFor(31).length));
    expect(words.toSorted()).toEqual([headFor(31), headFor(32)]);
  });

  it("keeps where a listing is and how far that is", async () => {
    const text = JSON.stringify({ text: headFor(33), place: "the harbour", roundTripKm: 24 });
    const { rows } = await judged(app, { text });
    const sighting = (await ask(app, "GET", `/api/sightings/${rows[0].sighting}`)).body;
    expect(sighting).toMatchObject({ place: "the harbour", roundTripKm: 24 });
  });

  it.each([
    [{}, "text"],
    [{ text: " \n " }, "text"],
    [{ text: "x", format: "xml" }, "format"],
    [{ text: "x".repeat(20_001) }, "text"],
    [{ text: Array.from({ length: 5001 }, () => "grip 5 euros").join("\n"), format: "lines" }, "text"],
    [{ text: '{"text":"grip"}\n{"words":"grip"}', format: "jsonl" }, "line 2"],
    [{ text: '{"text":"grip","roundTripKm":-1}', format: "jsonl" }, "line 1"],
    [{ text: 'text,place\n"grip', format: "csv" }, "column 1"],
    [{ text: "colour\nred", format: "csv" }, "line 2"],
  ])("refuses what it cannot take by its field", async (bad, field) => {
    const before = (await ask(app, "GET", "/api/batches")).body.batches.length;
    const { status, body } = await start(app, bad);
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe(field);
    expect((await ask(app, "GET", "/api/batches")).body.batches).toHaveLength(before);
  });

  it("is not there under another name", async () => {
    expect((await ask(app, "GET", "/api/batches/batch-900")).status).toBe(404);
    expect((await ask(app, "DELETE", "/api/batches/batch-900")).status).toBe(404);
    expect((await ask(app, "POST", "/api/batches/batch-900/resume")).status).toBe(404);
  });
});

const many = (count: number) => Array.from({ length: count }, (_, at) => headFor(at + 10)).join("\n");

describe("a batch under way", () => {
  it("is stopped with what is done, and resumed with the rest, each listing once", async () => {
    const app = await testApp();
    await putShaft(app);
    const { batch } = (await start(app, { text: many(150), format: "lines" })).body;
    await vi.waitFor(async () => expect((await read(app, batch)).done).toBeGreaterThan(0), {
      timeout: 20_000,
    });
    const stopped = (await ask(app, "DELETE", `/api/batches/${batch}`)).body;
    expect(stopped.state).toBe("stopped");
    expect(stopped.done).toBeLessThan(150);
    expect(await logOf(app)).toHaveLength(stopped.done);
    expect((await read(app, batch, "?limit=5000")).rows).toHaveLength(stopped.done);
    const resumed = await ask(app, "POST", `/api/batches/${batch}/resume`);
    expect(resumed.body.state).toBe("running");
    expect(await ended(app, batch)).toMatchObject({ state: "done", done: 150 });
    expect(await logOf(app)).toHaveLength(150);
  }, 60_000);

  it("goes on after the server was stopped, and waits for the one before it", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    await putShaft(first);
    const { batch } = (await start(first, { text: many(120), format: "lines" })).body;
    const after = (await start(first, { text: headFor(5), format: "lines" })).body.batch;
    await vi.waitFor(async () => expect((await read(first, batch)).done).toBeGreaterThan(0), {
      timeout: 20_000,
    });
    await first.close();
    const second = await testApp({ dataFolder });
    const before = await read(second, batch);
    expect(before.state).toBe("running");
    expect(before.done).toBeLessThan(120);
    expect((await read(second, after)).done).toBe(0);
    expect(await ended(second, batch)).toMatchObject({ state: "done", done: 120 });
    expect(await ended(second, after)).toMatchObject({ state: "done", done: 1 });
    expect(await logOf(second)).toHaveLength(121);
  }, 60_000);
});
