import { describe, expect, it } from "vitest";
import { ask, looseParts, type TestApp, testApp } from "./server.test-kit.ts";
import { asked, clubListing, emptyListing, headListing, itemOf, model, sighting } from "./trade.test-kit.ts";

const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });
const gbp = (amountMinor: number) => ({ amountMinor, currency: "GBP" });
const sumOf = (amounts: readonly { amountMinor: number }[]) =>
  amounts.reduce((sum, { amountMinor }) => sum + amountMinor, 0);
const idsOf = (things: readonly { id: string }[]) => things.map(({ id }) => id);

async function everything(app: TestApp) {
  const urls = ["/api/bench", "/api/sightings", "/api/books", "/api/evidence"];
  return Promise.all(urls.map(async (url) => (await ask(app, "GET", url)).body));
}

async function withSighting(listing: object = clubListing): Promise<TestApp> {
  const app = await testApp();
  await ask(app, "POST", "/api/catalogue", model);
  await ask(app, "POST", "/api/sightings", { ...sighting, listing });
  return app;
}

const buy = (app: TestApp, body: object) => ask(app, "POST", "/api/sightings/s1/buy", body);
const sell = (app: TestApp, body: object) => ask(app, "POST", "/api/books/sell", body);

describe("buying what a sighting offers", () => {
  it("puts a club's parts on the bench with their joints made", async () => {
    const app = await withSighting();
    const { status, body } = await buy(app, { paid: eur(10001), on: "2026-11-25" });
    expect(status).toBe(200);
    expect(idsOf(body.parts)).toEqual(["head-1", "adapter-1", "shaft-1", "grip-1", "cover-1"]);
    expect(body.parts[0]).toMatchObject({
      maker: "Northmoor",
      hand: "right",
      socket: { type: "receiver", family: "Quillon 2" },
      acquiredOn: "2026-11-25",
    });
    expect(body.parts[2]).toMatchObject({ kind: "shaft", flex: "stiff" });
    expect(body.parts[2]).not.toHaveProperty("massG");
    expect(body.joints.map(({ type, parts }: { type: string; parts: string[] }) => [type, ...parts])).toEqual(
      [
        ["screwed", "head-1", "adapter-1"],
        ["bonded", "adapter-1", "shaft-1"],
        ["gripped", "shaft-1", "grip-1"],
      ],
    );
    expect(body.sighting).toMatchObject({
      id: "s1",
      outcome: "bought",
      outcomeOn: "2026-11-25",
      outcomePrice: eur(10001),
    });
    const bench = (await ask(app, "GET", "/api/bench")).body;
    expect(bench.parts).toEqual(body.parts);
    expect(bench.joints).toEqual(body.joints);
    expect((await ask(app, "GET", "/api/bench/resolve?skill=regrip")).body.counts.clubs).toBe(1);
  });

  it.each([1, 4, 10001, 99999])("shares %i cents over the parts with none lost", async (amount) => {
    const app = await withSighting();
    const { body } = await buy(app, { paid: eur(amount), on: "2026-11-25" });
    expect(sumOf(body.parts.map(({ paid }: { paid: { amountMinor: number } }) => paid))).toBe(amount);
  });

  it("shares by the items' own prices where each has one", async () => {
    const priced = { ...headListing, items: [] as object[] };
    priced.items = headListing.items.map((item, at) => ({ ...item, price: eur(at === 0 ? 3000 : 1000) }));
    const app = await withSighting(priced);
    const { body } = await buy(app, { paid: eur(3601), on: "2026-11-25" });
    expect(body.parts.map(({ paid }: { paid: object }) => paid)).toEqual([eur(2701), eur(900)]);
  });

  it("writes the price, the postage and the trip in the books", async () => {
    const app = await withSighting();
    const { body } = await buy(app, {
      paid: eur(9000),
      on: "2026-11-25",
      postage: eur(750),
      roundTripKm: 33,
      minutes: 55,
    });
    const parts = idsOf(body.parts);
    expect(body.entries).toEqual([
      { id: "entry-1", on: "2026-11-25", type: "buy", amount: eur(-9000), parts, sighting: "s1" },
      { id: "entry-2", on: "2026-11-25", type: "postage", amount: eur(-750), parts, sighting: "s1" },
      // 33 km at 25 cents.
      {
        id: "entry-3",
        on: "2026-11-25",
        type: "trip",
        amount: eur(-825),
        parts,
        sighting: "s1",
        km: 33,
        minutes: 55,
      },
    ]);
    const { totals } = (await ask(app, "GET", "/api/books/summary")).body;
    expect(totals).toMatchObject({ outMinor: -10575, km: 33, minutes: 55 });
  });

  it("lets a trip last as long as its distance takes where nobody says", async () => {
    const app = await withSighting();
    const { body } = await buy(app, { paid: eur(9000), on: "2026-11-25", roundTripKm: 50 });
    expect(body.entries[1]).toMatchObject({ type: "trip", km: 50, minutes: 60 });
  });

  it("takes only the items that are named", async () => {
    const app = await withSighting(headListing);
    const { body } = await buy(app, { paid: eur(500), on: "2026-11-25", items: [1] });
    expect(body.parts).toEqual([{ id: "grip-1", kind: "grip", paid: eur(500), acquiredOn: "2026-11-25" }]);
  });

  it("keeps a listing open for the rest, and refuses only what has been bought", async () => {
    const app = await withSighting(headListing);
    const first = await buy(app, { paid: eur(500), on: "2026-11-24", items: [1] });
    expect(first.body.sighting).toMatchObject({ outcome: "open", boughtItems: [1] });
    expect(first.body.sighting).not.toHaveProperty("outcomePrice");
    const again = await buy(app, { paid: eur(500), on: "2026-11-25", items: [0, 1] });
    expect(again).toMatchObject({ status: 409, body: { error: { code: "already-bought" } } });
    expect(again.body.error.refusals).toMatchObject([{ field: "items.1", got: "1, bought already" }]);
    const between = await everything(app);
    const rest = await buy(app, { paid: eur(3000), on: "2026-11-25" });
    expect(idsOf(rest.body.parts)).toEqual(["head-1"]);
    expect(rest.body.sighting).toMatchObject({
      outcome: "bought",
      outcomeOn: "2026-11-25",
      outcomePrice: eur(3500),
      boughtItems: [0, 1],
    });
    expect((await buy(app, { paid: eur(1), on: "2026-11-25" })).status).toBe(409);
    await ask(app, "POST", "/api/bench/undo");
    expect(await everything(app)).toEqual(between);
  });

  it("buys nothing twice where the outcome is set back by hand, with or without which items were bought", async () => {
    const app = await withSighting(headListing);
    await buy(app, { paid: eur(4000), on: "2026-11-24" });
    await ask(app, "PATCH", "/api/sightings/s1", { outcome: "open" });
    expect((await buy(app, { paid: eur(4000), on: "2026-11-25", items: [0] })).status).toBe(409);
    await ask(app, "PATCH", "/api/sightings/s1", { boughtItems: null });
    expect((await buy(app, { paid: eur(4000), on: "2026-11-25" })).status).toBe(409);
    expect((await ask(app, "GET", "/api/bench")).body.parts).toHaveLength(2);
  });

  it("is refused where somebody is looking for the thing", async () => {
    const app = await withSighting({ ...headListing, intent: "wanted" });
    const { status, body } = await buy(app, { paid: eur(4000), on: "2026-11-25" });
    expect(status).toBe(400);
    expect(body.error.refusals).toMatchObject([{ field: "listing.intent" }]);
    expect((await ask(app, "GET", "/api/bench")).body.parts).toEqual([]);
  });

  it("gives parts ids that the bench has free", async () => {
    const app = await withSighting(headListing);
    await ask(app, "POST", "/api/bench/parts", { ...looseParts.head, id: "head-1" });
    const { body } = await buy(app, { paid: eur(500), on: "2026-11-25" });
    expect(idsOf(body.parts)).toEqual(["head-2", "grip-1"]);
  });

  it("gives no part an id that the books name, so that old costs stay with what they were paid for", async () => {
    const app = await withSighting(headListing);
    await buy(app, { paid: eur(4000), on: "2026-11-20" });
    await ask(app, "DELETE", "/api/bench/parts/head-1");
    const added = await ask(app, "POST", "/api/bench/parts", { kind: "head", model: "Dimity" });
    expect(added.body.id).toBe("head-2");
    await ask(app, "POST", "/api/bench/import", {
      format: "json",
      text: JSON.stringify([{ kind: "head" }]),
      take: "good",
    });
    expect(idsOf((await ask(app, "GET", "/api/bench")).body.parts)).toEqual(["grip-1", "head-2", "head-3"]);
    await sell(app, {
      parts: ["head-2"],
      club: "Dimity head",
      price: eur(6000),
      on: "2026-11-25",
      fees: eur(0),
    });
    const { byClub } = (await ask(app, "GET", "/api/books/summary")).body;
    expect(byClub).toMatchObject([
      { club: "Dimity head", netMinor: 6000 },
      { club: null, netMinor: -4000 },
    ]);
  });

  it("is taken back whole by one undo, also after work on what was bought", async () => {
    const app = await withSighting();
    await ask(app, "POST", "/api/bench/parts", looseParts.head);
    const before = await everything(app);
    await buy(app, { paid: eur(9000), on: "2026-11-25", postage: eur(750), roundTripKm: 33 });
    await ask(app, "PATCH", "/api/bench/parts/head-1", { loftDeg: 9 });
    const undone = await ask(app, "POST", "/api/bench/undo");
    expect(undone.status).toBe(200);
    expect(undone.body.removed).toMatchObject({
      parts: { length: 5 },
      joints: { length: 3 },
      entries: { length: 3 },
    });
    expect(undone.body.restored.sightings).toMatchObject([{ id: "s1", outcome: "open" }]);
    expect(await everything(app)).toEqual(before);
  });

  it("takes a joint made since with a part that goes, and leaves the user's own part", async () => {
    const app = await withSighting(headListing);
    await ask(app, "POST", "/api/bench/parts", looseParts.shaft);
    await buy(app, { paid: eur(500), on: "2026-11-25" });
    await ask(app, "POST", "/api/bench/joints", { type: "gripped", parts: ["grip-1", "s1"] });
    await ask(app, "POST", "/api/bench/undo");
    const { parts, joints } = (await ask(app, "GET", "/api/bench")).body;
    expect({ parts: idsOf(parts), joints }).toEqual({ parts: ["s1"], joints: [] });
  });

  it("happens once", async () => {
    const app = await withSighting();
    await buy(app, { paid: eur(9000), on: "2026-11-25" });
    const again = await buy(app, { paid: eur(9000), on: "2026-11-25" });
    expect(again).toMatchObject({ status: 409, body: { error: { code: "already-bought" } } });
    expect((await ask(app, "GET", "/api/bench")).body.parts).toHaveLength(5);
  });

  it("of a large lot makes every one of it, and the books can still be read", async () => {
    const grips = itemOf({ kind: "grip", quantity: 999 });
    const app = await withSighting({
      ...headListing,
      items: [grips, itemOf({ kind: "shaft", quantity: 61 })],
    });
    const { status, body } = await buy(app, { paid: eur(106_001), on: "2026-11-25" });
    expect(status).toBe(200);
    expect(body.parts).toHaveLength(1060);
    expect(sumOf(body.parts.map(({ paid }: { paid: object }) => paid))).toBe(106_001);
    const books = await ask(app, "GET", "/api/books");
    expect(books).toMatchObject({ status: 200, body: { entries: [{ parts: { length: 1060 } }] } });
  });

  it("of more parts than a line of the books holds is refused before anything is written", async () => {
    // Three parts a club: 2,001.
    const app = await withSighting({ ...headListing, items: [itemOf({ kind: "club", quantity: 667 })] });
    const before = await everything(app);
    const { status, body } = await buy(app, { paid: eur(9000), on: "2026-11-25" });
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field: "items", got: "2001 parts" });
    expect(await everything(app)).toEqual(before);
  });

  it("of no sighting is not found", async () => {
    const app = await withSighting();
    const { status, body } = await ask(app, "POST", "/api/sightings/s9/buy", {
      paid: eur(1),
      on: "2026-11-25",
    });
    expect(status).toBe(404);
    expect(body.error.message).toBe('There is no sighting "s9" in the log');
  });

  it.each([
    [{ paid: eur(-5) }, "paid.amountMinor"],
    [{ paid: eur(12.5) }, "paid.amountMinor"],
    [{ paid: { amountMinor: 5 } }, "paid.currency"],
    [{ on: "25.11.2026" }, "on"],
    [{ items: [2] }, "items.0"],
    [{ items: [0, 0] }, "items.1"],
    [{ items: [] }, "items"],
    [{ paid: { amountMinor: 5, currency: "SEK" } }, "rate"],
    [{ postage: { amountMinor: 5, currency: "SEK" } }, "postage.currency"],
    [{ colour: "green" }, "colour"],
  ])("refuses %j by its field and changes nothing", async (bad, field) => {
    const app = await withSighting(headListing);
    const before = await everything(app);
    const { status, body } = await buy(app, { paid: eur(9000), on: "2026-11-25", ...bad });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe(field);
    expect(await everything(app)).toEqual(before);
  });

  it("of a listing that offers nothing is refused", async () => {
    const app = await withSighting(emptyListing);
    const { body } = await buy(app, { paid: eur(9000), on: "2026-11-25" });
    expect(body.error.refusals[0]).toMatchObject({ field: "items", got: "a listing without items" });
  });

  it("in another currency keeps what was paid, and the day's rate", async () => {
    const app = await withSighting(headListing);
    const { body } = await buy(app, { paid: gbp(3001), rate: 1.15, on: "2026-11-25" });
    expect(body.entries[0]).toMatchObject({ amount: gbp(-3001), rate: 1.15 });
    expect(body.parts.map(({ paid }: { paid: object }) => paid)).toEqual([gbp(1501), gbp(1500)]);
    // 30.01 GBP at 1.15 is 34.5115 EUR.
    expect((await ask(app, "GET", "/api/books/summary")).body.totals.netMinor).toBe(-3451);
  });
});

describe("selling", () => {
  async function withClub(): Promise<TestApp> {
    const app = await withSighting();
    await buy(app, { paid: eur(8003), on: "2026-11-10" });
    return app;
  }
  const club = ["head-1", "adapter-1", "shaft-1", "grip-1", "cover-1"];
  const sale = { parts: club, club: "driver no. 1", price: eur(12000), on: "2026-11-25" };

  it("marks the parts as sold, and writes the books and the evidence", async () => {
    const app = await withClub();
    const { status, body } = await sell(app, {
      ...sale,
      daysToSell: 15,
      postage: eur(900),
      condition: "good",
    });
    expect(status).toBe(200);
    expect(sumOf(body.parts.map(({ soldFor }: { soldFor: { amountMinor: number } }) => soldFor))).toBe(12000);
    expect(body.parts.every(({ soldOn }: { soldOn: string }) => soldOn === "2026-11-25")).toBe(true);
    const line = { on: "2026-11-25", parts: club, club: "driver no. 1" };
    expect(body.entries).toEqual([
      { id: "entry-2", type: "sale", amount: eur(12000), daysToSell: 15, ...line },
      // A tenth and 35 cents.
      { id: "entry-3", type: "fee", amount: eur(-1235), ...line },
      { id: "entry-4", type: "postage", amount: eur(-900), ...line },
    ]);
    expect(body.evidence).toEqual({
      id: "price-1",
      on: "2026-11-25",
      what: "sold",
      own: true,
      price: eur(12000),
      daysToSell: 15,
      kind: "club",
      modelId: "m1",
      maker: "Northmoor",
      model: "Ombrel",
      year: 2021,
      clubType: "driver",
      hand: "right",
      flex: "stiff",
      adapterFamily: "Quillon 2",
      condition: "good",
      cover: true,
      wrench: false,
    });
    expect((await ask(app, "GET", "/api/evidence")).body.evidence).toEqual([body.evidence]);
    expect((await ask(app, "GET", "/api/bench")).body.parts).toEqual(body.parts);
  });

  it("shares the price by what was paid for each part", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/bench/parts", { ...looseParts.head, paid: eur(6000) });
    await ask(app, "POST", "/api/bench/parts", { ...looseParts.shaft, paid: eur(3000) });
    const { body } = await sell(app, { parts: ["h1", "s1"], price: eur(10000), on: "2026-11-25" });
    expect(body.parts.map(({ soldFor }: { soldFor: object }) => soldFor)).toEqual([eur(6667), eur(3333)]);
  });

  it("puts what the club cost under its name, so that its profit is all of it", async () => {
    const app = await withClub();
    await sell(app, sale);
    const { byClub, totals } = (await ask(app, "GET", "/api/books/summary")).body;
    expect(byClub).toMatchObject([{ club: "driver no. 1", netMinor: 12000 - 1235 - 8003 }]);
    expect(totals.netMinor).toBe(12000 - 1235 - 8003);
  });

  it("divides a purchase of which only a part is sold, with no cent lost", async () => {
    const app = await withClub();
    const before = await everything(app);
    await sell(app, { ...sale, parts: ["head-1", "adapter-1"], club: "a head" });
    const { byClub, totals } = (await ask(app, "GET", "/api/books/summary")).body;
    // 80.03 over five parts: the first three cost 16.01.
    expect(byClub).toMatchObject([
      { club: "a head", netMinor: 12000 - 1235 - 3202 },
      { club: null, netMinor: -4801 },
    ]);
    expect(totals.netMinor).toBe(12000 - 1235 - 8003);
    await ask(app, "POST", "/api/bench/undo");
    expect(await everything(app)).toEqual(before);
  });

  it("is taken back whole by one undo", async () => {
    const app = await withClub();
    const before = await everything(app);
    await sell(app, { ...sale, postage: eur(900) });
    const undone = await ask(app, "POST", "/api/bench/undo");
    expect(undone.body.removed).toMatchObject({ entries: { length: 3 }, evidence: { length: 1 } });
    expect(await everything(app)).toEqual(before);
  });

  it("keeps by an undo what has been corrected in the books since, and loses no cent of it", async () => {
    const app = await withClub();
    await sell(app, { ...sale, parts: ["head-1", "adapter-1"], club: "a head", fees: eur(0) });
    await ask(app, "PATCH", "/api/books/entry-1", { amount: eur(-5000) });
    await ask(app, "POST", "/api/bench/undo");
    const { entries } = (await ask(app, "GET", "/api/books")).body;
    expect(entries).toMatchObject([
      { amount: eur(-3202), parts: ["head-1", "adapter-1"], club: "a head" },
      { id: "entry-1", amount: eur(-5000), parts: ["shaft-1", "grip-1", "cover-1"] },
    ]);
  });

  it("keeps by an undo the name of a club that has been changed since, and words on a divided line", async () => {
    const app = await withClub();
    await sell(app, sale);
    await ask(app, "PATCH", "/api/books/entry-1", { club: "the long driver" });
    await ask(app, "POST", "/api/bench/undo");
    const [bought] = (await ask(app, "GET", "/api/books")).body.entries;
    expect(bought).toMatchObject({ id: "entry-1", club: "the long driver", amount: eur(-8003) });
    await ask(app, "PATCH", "/api/books/entry-1", { club: null });
    await sell(app, { ...sale, parts: ["head-1"], club: "a head" });
    await ask(app, "PATCH", "/api/books/entry-1", { note: "with a bag" });
    await ask(app, "POST", "/api/bench/undo");
    const { entries } = (await ask(app, "GET", "/api/books")).body;
    expect(entries).toMatchObject([{ id: "entry-1", amount: eur(-8003), note: "with a bag" }]);
  });

  it("takes the parts out of what the bench comes to", async () => {
    const app = await withClub();
    const clubs = async () => (await ask(app, "GET", "/api/bench/resolve?skill=regrip")).body.counts.clubs;
    expect(await clubs()).toBe(1);
    await sell(app, sale);
    expect(await clubs()).toBe(0);
    const goesWith = await ask(app, "GET", "/api/bench/parts/head-1/goes-with?skill=regrip");
    expect(goesWith.status).toBe(200);
    expect(goesWith.body).toMatchObject({
      part: { id: "head-1" },
      counts: { clubs: 0, nearMisses: 0, wants: 0 },
    });
    await ask(app, "POST", "/api/bench/undo");
    expect(await clubs()).toBe(1);
  });

  it("leaves a sold part in a bench that is sent to be resolved", async () => {
    const app = await testApp();
    const parts = Object.values(looseParts).map((part) => ({ ...part, soldOn: "2026-11-25" }));
    const joints = [{ type: "bonded", parts: ["a1", "s1"] }];
    const { body } = await ask(app, "POST", "/api/resolve", { parts, joints, goal: { skill: "regrip" } });
    expect(body.counts.clubs).toBe(1);
  });

  it("takes fees as they were where they are stated, also none", async () => {
    const app = await withClub();
    const { body } = await sell(app, { ...sale, fees: eur(0) });
    expect(body.entries).toHaveLength(1);
  });

  it("counts the fees on the postage where the buyer pays it", async () => {
    const app = await withClub();
    await ask(app, "PUT", "/api/costs", { buyerPaysPostage: true });
    const { body } = await sell(app, { ...sale, postage: eur(1000) });
    expect(body.entries[1]).toMatchObject({ type: "fee", amount: eur(-1335) });
  });

  it("comes to the price less its fees where the buyer pays the postage", async () => {
    const app = await withClub();
    await ask(app, "PUT", "/api/costs", { buyerPaysPostage: true });
    await sell(app, { ...sale, postage: eur(1000) });
    const { byClub } = (await ask(app, "GET", "/api/books/summary")).body;
    expect(byClub).toMatchObject([{ netMinor: 12000 - 1335 - 8003, postageMinor: 0 }]);
  });

  it("in another currency counts the fees in the bench's own", async () => {
    const app = await withClub();
    const { body } = await sell(app, { ...sale, price: gbp(10000), rate: 1.1 });
    expect(body.entries).toMatchObject([
      { type: "sale", amount: gbp(10000), rate: 1.1 },
      // A tenth of 110.00 and 35 cents.
      { type: "fee", amount: eur(-1135) },
    ]);
  });

  it("notes no price for a lot, which says what none of its things is worth", async () => {
    const app = await testApp();
    for (const id of ["g1", "g2"]) await ask(app, "POST", "/api/bench/parts", { ...looseParts.grip, id });
    const { status, body } = await sell(app, { parts: ["g1", "g2"], price: eur(900), on: "2026-11-25" });
    expect(status).toBe(200);
    expect(body.evidence).toBeNull();
    expect(body.parts.map(({ soldFor }: { soldFor: object }) => soldFor)).toEqual([eur(450), eur(450)]);
  });

  it("is set against what was expected when the same parts were bought", async () => {
    const app = await withSighting(headListing);
    for (const [id, amount] of [
      ["p1", 6000],
      ["p2", 7000],
      ["p3", 8000],
    ] as const)
      await ask(app, "POST", "/api/evidence", { ...asked, id, what: "sold", price: eur(amount) });
    const bought = await buy(app, { paid: eur(3000), on: "2026-11-10", items: [0] });
    const { expected } = bought.body.entries[0];
    expect(expected.lowMinor).toBeLessThan(expected.priceMinor);
    await ask(app, "DELETE", "/api/evidence/p1");
    const sold = await sell(app, { parts: ["head-1"], price: eur(7500), on: "2026-11-25" });
    expect(sold.body.entries[0].expected).toEqual(expected);
    const { trust } = (await ask(app, "GET", "/api/books/summary")).body;
    expect(trust).toMatchObject({
      count: 1,
      rows: [{ expectedMinor: expected.priceMinor, outcomeMinor: 7500 }],
    });
  });

  it("happens once to each part", async () => {
    const app = await withClub();
    await sell(app, sale);
    const again = await sell(app, { ...sale, parts: ["shaft-1"] });
    expect(again).toMatchObject({ status: 409, body: { error: { code: "already-sold" } } });
    expect(again.body.error.refusals[0]).toMatchObject({
      field: "parts.0",
      got: '"shaft-1", sold on 2026-11-25 already',
    });
  });

  it.each([
    [{ parts: ["head-9"] }, "parts.0"],
    [{ parts: ["head-1", "head-1"] }, "parts.1"],
    [{ parts: [] }, "parts"],
    [{ price: eur(-1) }, "price.amountMinor"],
    [{ price: { amountMinor: 5, currency: "SEK" } }, "rate"],
    [{ fees: { amountMinor: 5, currency: "SEK" } }, "fees.currency"],
    [{ on: "soon" }, "on"],
    [{ condition: "mint" }, "condition"],
    [{ daysToSell: -1 }, "daysToSell"],
  ])("refuses %j by its field and changes nothing", async (bad, field) => {
    const app = await withClub();
    const before = await everything(app);
    const { status, body } = await sell(app, { ...sale, ...bad });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe(field);
    expect(await everything(app)).toEqual(before);
  });

  it("keeps a set's clubs apart when several alike are bought", async () => {
    const app = await withSighting({ ...headListing, items: [itemOf({ kind: "grip", quantity: 3 })] });
    const { body } = await buy(app, { paid: eur(1000), on: "2026-11-25" });
    expect(idsOf(body.parts)).toEqual(["grip-1", "grip-2", "grip-3"]);
    expect(body.parts.map(({ paid }: { paid: object }) => paid)).toEqual([eur(334), eur(333), eur(333)]);
  });
});
