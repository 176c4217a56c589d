import { describe, expect, it } from "vitest";
import { ask, bondedShaft, looseParts, type TestApp, temporaryFolder, testApp } from "./server.test-kit.ts";
import { asked, clubListing, headListing, model, sighting } from "./trade.test-kit.ts";

const words = "Northmoor Ombrel driver head, 10.5 degrees, right handed, 40 euros, no cover";

const sold = (amountMinor: number, id: string) => ({
  ...asked,
  id,
  what: "sold",
  price: { amountMinor, currency: "EUR" },
});

async function withMarket(): Promise<TestApp> {
  const app = await testApp();
  await ask(app, "POST", "/api/catalogue", model);
  for (const [amount, id] of [
    [6000, "p1"],
    [6600, "p2"],
    [7200, "p3"],
  ] as const)
    await ask(app, "POST", "/api/evidence", sold(amount, id));
  return app;
}

const judge = (app: TestApp, body: object) => ask(app, "POST", "/api/judge", body);
const logOf = async (app: TestApp) => (await ask(app, "GET", "/api/sightings")).body.sightings;

describe("POST /api/read", () => {
  it("reads a listing, with the words of each fact", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/catalogue", model);
    const { status, body } = await ask(app, "POST", "/api/read", { text: words });
    expect(status).toBe(200);
    expect(body.asking).toEqual({ amountMinor: 4000, currency: "EUR" });
    expect(body.items).toMatchObject([
      { kind: "head", modelId: "m1", loftDeg: 10.5, hand: "right", cover: false },
    ]);
    for (const { start, end, words: said } of body.spans) expect(words.slice(start, end)).toBe(said);
  });

  it("adds the given models to the stored ones for this call; of two with one id the given one wins", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/catalogue", model);
    const read = async (catalogue?: object[]) =>
      (await ask(app, "POST", "/api/read", { text: words, catalogue })).body.items[0].modelId;
    expect(await read([{ ...model, id: "m2", model: "Dimity" }])).toBe("m1");
    expect(await read([{ ...model, model: "Dimity" }])).toBeNull();
    expect(await read()).toBe("m1");
    await ask(app, "DELETE", "/api/catalogue/m1");
    expect(await read()).toBeNull();
    await ask(app, "POST", "/api/bench/undo");
    expect(await read()).toBe("m1");
  });

  it.each([
    [{}, "text"],
    [{ text: 5 }, "text"],
    [{ text: "x".repeat(20_001) }, "text"],
    [{ text: words, catalogue: [{ id: "m" }] }, "catalogue.0.kind"],
    [{ text: words, language: "en" }, "language"],
  ])("refuses a body that is not one by its field", async (bad, field) => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/read", bad);
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe(field);
  });
});

describe("POST /api/read-many", () => {
  it("reads every listing of a text, each with its own words", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/read-many", {
      text: "Driver head 9 degrees, 30 euros\nGrip, new, 5 euros\n3 wood 15 degrees left handed, 60 euros",
    });
    expect(status).toBe(200);
    expect(body.listings.map(({ text }: { text: string }) => text)).toEqual([
      "Driver head 9 degrees, 30 euros",
      "Grip, new, 5 euros",
      "3 wood 15 degrees left handed, 60 euros",
    ]);
    const asking = body.listings.map(({ listing }: { listing: { asking: object } }) => listing.asking);
    expect(asking).toMatchObject([{ amountMinor: 3000 }, { amountMinor: 500 }, { amountMinor: 6000 }]);
  });

  it("takes 2,000 listings and no more", async () => {
    const app = await testApp();
    const lines = (count: number) =>
      Array.from({ length: count }, (_, at) => `Grip no. ${at}, 5 euros`).join("\n");
    const full = await ask(app, "POST", "/api/read-many", { text: lines(2000) });
    expect(full.body.listings).toHaveLength(2000);
    const { status, body } = await ask(app, "POST", "/api/read-many", { text: lines(2001) });
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field: "text", got: "2001 listings" });
    const large = await ask(app, "POST", "/api/read-many", { text: "x".repeat(2_000_001) });
    expect(large.body.error.refusals[0]).toMatchObject({ field: "text" });
  });
});

describe("POST /api/resale", () => {
  const subject = { kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "driver" };

  it("estimates from the stored prices, and asks where there are none", async () => {
    const app = await withMarket();
    const { status, body } = await ask(app, "POST", "/api/resale", { subject });
    expect(status).toBe(200);
    expect(body).toMatchObject({ known: true, currency: "EUR" });
    expect(body.lowMinor).toBeLessThan(6000);
    expect(body.highMinor).toBeGreaterThan(7200);
    const none = await ask(await testApp(), "POST", "/api/resale", { subject });
    expect(none.body).toEqual({ known: false, question: expect.stringContaining("?") });
  });

  it("refuses what is no subject by its field", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", "/api/resale", { subject: { kind: "trolley" } });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe("subject.kind");
  });
});

describe("POST /api/judge for the stored bench", () => {
  it("judges words, and has the sighting in the log when it replies", async () => {
    const app = await withMarket();
    const { status, body } = await judge(app, { text: words, place: "the next town", roundTripKm: 30 });
    expect(status).toBe(200);
    expect(body.listing.items).toMatchObject([{ modelId: "m1" }]);
    expect(body.deal.asking).toEqual({ amountMinor: 4000, currency: "EUR" });
    expect(body.deal.alternatives.map(({ way }: { way: string }) => way).sort()).toEqual([
      "build-now",
      "leave",
      "part-out",
      "sell-as-it-is",
      "wait",
    ]);
    expect(body.sighting).toMatchObject({
      seenOn: "2026-11-25",
      text: words,
      outcome: "open",
      verdict: body.deal.verdict,
      place: "the next town",
      roundTripKm: 30,
    });
    expect(body.sighting.read).toEqual(body.listing);
    expect(await logOf(app)).toEqual([body.sighting]);
  });

  it("keeps what it read beside what the user made of it", async () => {
    const app = await withMarket();
    const { body } = await judge(app, { text: words, listing: headListing });
    expect(body.listing).toEqual(headListing);
    expect(body.sighting.listing).toEqual(headListing);
    expect(body.sighting.read.items).toMatchObject([{ cover: false }]);
  });

  it("judges a listing without words, and a sighting of the log again", async () => {
    const app = await withMarket();
    const listing = { ...headListing, postage: "collection-only" };
    expect((await judge(app, { listing })).body.sighting).toBeNull();
    const first = await judge(app, { listing, log: true });
    expect(first.body.sighting).toMatchObject({ text: "", read: listing });
    await ask(app, "PATCH", `/api/sightings/${first.body.sighting.id}`, {
      note: "asked twice",
      roundTripKm: 20,
    });
    const again = await judge(app, { sighting: first.body.sighting.id });
    expect(again.status).toBe(200);
    expect(again.body.sighting).toMatchObject({
      id: first.body.sighting.id,
      note: "asked twice",
      roundTripKm: 20,
    });
    expect(again.body.deal.gettingHereMinor).toBeGreaterThan(first.body.deal.gettingHereMinor);
    expect(await logOf(app)).toHaveLength(1);
  });

  it("takes a listing with a sighting for the user's correction of it", async () => {
    const app = await withMarket();
    const first = (await judge(app, { text: words, place: "the next town" })).body;
    const corrected = { ...first.listing, asking: { amountMinor: 3500, currency: "EUR" } };
    const { status, body } = await judge(app, { sighting: first.sighting.id, listing: corrected });
    expect(status).toBe(200);
    expect(body.deal.asking).toEqual(corrected.asking);
    expect(body.listing).toEqual(corrected);
    expect(body.sighting).toMatchObject({
      id: first.sighting.id,
      text: words,
      place: "the next town",
      listing: corrected,
      read: first.sighting.read,
      verdict: body.deal.verdict,
    });
    expect(await logOf(app)).toEqual([body.sighting]);
  });

  it("keeps a sighting as it is where a correction is only tried", async () => {
    const app = await withMarket();
    const { sighting: first } = (await judge(app, { text: words })).body;
    const { body } = await judge(app, { sighting: first.id, listing: headListing, log: false });
    expect(body.listing).toEqual(headListing);
    expect(body.sighting).toBeNull();
    expect(await logOf(app)).toEqual([first]);
  });

  it("tells the twenty prices that weigh most, and how many there are", async () => {
    const app = await withMarket();
    for (let number = 4; number <= 25; number += 1)
      await ask(app, "POST", "/api/evidence", {
        ...sold(6000 + number, `p${number}`),
        on: number === 4 ? "2024-01-01" : "2026-11-01",
      });
    const [item] = (await judge(app, { text: words, log: false })).body.deal.items;
    const { basis, basisCount } = item.resale;
    expect([basis.length, basisCount]).toEqual([20, 25]);
    const shares = basis.map(({ share }: { share: number }) => share);
    expect(shares).toEqual(shares.toSorted((one: number, other: number) => other - one));
    expect(basis.map(({ evidence }: { evidence: string }) => evidence)).not.toContain("p4");
  });

  it("takes the same words for the same listing, first seen when it was first seen", async () => {
    const app = await withMarket();
    const first = (await judge(app, { text: words })).body.sighting;
    const second = (await judge(app, { text: words, listing: headListing })).body.sighting;
    expect(second).toMatchObject({ id: first.id, listing: headListing });
    const pastedAgain = (await judge(app, { text: words })).body;
    expect(pastedAgain.listing).toEqual(headListing);
    expect((await judge(app, { text: words, log: false })).body.listing).toEqual(second.read);
    const dayAfter = (await judge(app, { text: words, today: "2026-11-26" })).body.sighting;
    expect(dayAfter).toMatchObject({ id: first.id, seenOn: "2026-11-25" });
    await judge(app, { text: `${words}!` });
    expect(await logOf(app)).toHaveLength(2);
    await ask(app, "PATCH", `/api/sightings/${first.id}`, { outcome: "gone" });
    const anew = (await judge(app, { text: words, today: "2026-12-20" })).body.sighting;
    expect(anew).toMatchObject({ seenOn: "2026-12-20", outcome: "open" });
    expect(anew.id).not.toBe(first.id);
  });

  it("logs nothing where that is not wanted", async () => {
    const app = await withMarket();
    expect((await judge(app, { text: words, log: false })).body.sighting).toBeNull();
    expect(await logOf(app)).toEqual([]);
  });

  it("counts what stands on the bench, and no part that has been sold", async () => {
    const app = await withMarket();
    const { adapter, shaft, grip } = looseParts;
    for (const part of [adapter, shaft, grip]) await ask(app, "POST", "/api/bench/parts", part);
    await ask(app, "POST", "/api/bench/joints", bondedShaft);
    await ask(app, "PUT", "/api/bench/goal", { skill: "regrip" });
    const usable = async () => {
      const { deal } = (await judge(app, { listing: headListing, log: false })).body;
      return deal.items[0].clubs.length;
    };
    expect(await usable()).toBeGreaterThan(0);
    await ask(app, "POST", "/api/books/sell", {
      parts: ["s1", "a1"],
      price: { amountMinor: 3000, currency: "EUR" },
      on: "2026-11-24",
    });
    expect(await usable()).toBe(0);
  });

  it("is on disk when it replies, whatever becomes of the server", async () => {
    const dataFolder = temporaryFolder();
    const first = await testApp({ dataFolder });
    const { body } = await judge(first, { text: words });
    const second = await testApp({ dataFolder });
    expect(await logOf(second)).toEqual([body.sighting]);
  });
});

describe("POST /api/judge for a bench that is sent", () => {
  const given = {
    text: words,
    parts: [looseParts.adapter, looseParts.shaft, looseParts.grip],
    joints: [bondedShaft],
    goal: { skill: "regrip" },
    catalogue: [model],
    evidence: [sold(6000, "p1"), sold(6600, "p2"), sold(7200, "p3")],
  };

  it("uses what came with it, logs nothing, and leaves the stored bench as it is", async () => {
    const app = await testApp();
    const { status, body } = await judge(app, given);
    expect(status).toBe(200);
    expect(body.sighting).toBeNull();
    expect(body.deal.items[0].resale.known).toBe(true);
    expect(body.deal.items[0].clubs.length).toBeGreaterThan(0);
    expect(await logOf(app)).toEqual([]);
    expect((await ask(app, "GET", "/api/bench")).body.parts).toEqual([]);
  });

  it("uses given prices, models and sightings in the place of the stored ones", async () => {
    const app = await withMarket();
    const resale = async (more: object) =>
      (await judge(app, { text: words, log: false, ...more })).body.deal.items[0].resale.known;
    expect(await resale({})).toBe(true);
    expect(await resale({ evidence: [] })).toBe(false);
    const { listing } = (await judge(app, { text: words, log: false, catalogue: [] })).body;
    expect(listing.items[0].modelId).toBeNull();
    expect((await judge(app, { ...given, sightings: [sighting] })).status).toBe(200);
  });

  it("says on another day what holds on that day, and at other costs what holds at those", async () => {
    const app = await testApp();
    const most = async (more: object) =>
      (await judge(app, { ...given, ...more })).body.deal.mostToPay?.amountMinor;
    const now = await most({});
    expect(now).toBeGreaterThan(0);
    expect(await most({ costs: { sellsBy: "in-person" } })).toBeGreaterThan(now);
  });

  it.each([
    [{ text: undefined }, "(the body)"],
    [{ sighting: "s1" }, "(the body)"],
    [{ sighting: "s1", listing: clubListing }, "(the body)"],
    [{ costs: { sellsBy: "the moon" } }, "costs.sellsBy"],
    [{ costs: { perKmMinor: -1 } }, "costs.perKmMinor"],
    [{ today: "soon" }, "today"],
    [{ roundTripKm: -1 }, "roundTripKm"],
    [{ parts: [looseParts.grip, looseParts.grip] }, "parts.1.id"],
    [{ joints: [{ type: "gripped", parts: ["g1", "s9"] }] }, "joints.0.parts.1"],
    [{ evidence: [{ id: "p" }] }, "evidence.0.on"],
    [{ listing: { ...clubListing, intent: "lend" } }, "listing.intent"],
    [{ colour: "green" }, "colour"],
  ])("refuses %j by its field", async (bad, field) => {
    const app = await testApp();
    const { status, body } = await judge(app, { ...given, ...bad });
    expect(status).toBe(400);
    expect(body.error.refusals.map((refusal: { field: string }) => refusal.field)).toContain(field);
  });

  it("of a sighting that is not in the log is not found", async () => {
    const app = await testApp();
    const { status, body } = await judge(app, { sighting: "s9" });
    expect(status).toBe(404);
    expect(body.error.message).toBe('There is no sighting "s9" in the log');
  });
});
