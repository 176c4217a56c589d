import { describe, expect, it } from "vitest";
import { ask, looseParts, testApp } from "./server.test-kit.ts";
import { asked, emptyListing, entry, model, sighting } from "./trade.test-kit.ts";

const lists = [
  {
    url: "/api/catalogue",
    list: "models",
    thing: model,
    change: { year: 2022 },
    bad: { kind: "trolley" },
    field: "kind",
    newId: "model-1",
    where: 'There is no model "none" in the catalogue',
  },
  {
    url: "/api/evidence",
    list: "evidence",
    thing: asked,
    change: { daysToSell: 9 },
    bad: { price: { amountMinor: 12.5, currency: "EUR" } },
    field: "price.amountMinor",
    newId: "price-1",
    where: 'There is no price "none" in the evidence',
  },
  {
    url: "/api/sightings",
    list: "sightings",
    thing: sighting,
    change: { outcome: "gone" },
    bad: { outcome: "lost" },
    field: "outcome",
    newId: "sighting-1",
    where: 'There is no sighting "none" in the log',
  },
  {
    url: "/api/books",
    list: "entries",
    thing: entry,
    change: { club: "the second driver" },
    bad: { on: "yesterday" },
    field: "on",
    newId: "entry-1",
    where: 'There is no entry "none" in the books',
  },
] as const;

describe.each(lists)("$url", ({ url, list, thing, change, bad, field, newId, where }) => {
  it("is added to, read, replaced, changed, deleted from, and has a delete undone", async () => {
    const app = await testApp();
    expect((await ask(app, "GET", url)).body).toEqual({ [list]: [] });
    expect(await ask(app, "POST", url, thing)).toMatchObject({ status: 201, body: thing });
    expect((await ask(app, "GET", `${url}/${thing.id}`)).body).toEqual(thing);
    expect((await ask(app, "PATCH", `${url}/${thing.id}`, change)).body).toEqual({ ...thing, ...change });
    expect((await ask(app, "PUT", `${url}/${thing.id}`, thing)).body).toEqual(thing);
    expect((await ask(app, "DELETE", `${url}/${thing.id}`)).body).toEqual({ deleted: thing, undo: 1 });
    expect((await ask(app, "GET", url)).body).toEqual({ [list]: [] });
    const undone = await ask(app, "POST", "/api/bench/undo");
    expect(undone.body).toMatchObject({ restored: { [list]: [thing], parts: [] }, undo: 0 });
    expect((await ask(app, "GET", url)).body).toEqual({ [list]: [thing] });
  });

  it("gives an id to what has none, and takes none twice", async () => {
    const app = await testApp();
    const { id: _id, ...rest } = thing;
    expect((await ask(app, "POST", url, rest)).body.id).toBe(newId);
    await ask(app, "POST", url, thing);
    const again = await ask(app, "POST", url, thing);
    expect(again).toMatchObject({ status: 409, body: { error: { code: "id-taken" } } });
    const renamed = await ask(app, "PUT", `${url}/${thing.id}`, { ...thing, id: "other" });
    expect(renamed.body.error.refusals[0].field).toBe("id");
  });

  it("refuses what is not one by its field, whether sent whole or as a change", async () => {
    const app = await testApp();
    const refused = await ask(app, "POST", url, { ...thing, ...bad });
    expect(refused.status).toBe(400);
    expect(refused.body.error.refusals[0].field).toBe(field);
    await ask(app, "POST", url, thing);
    const change = await ask(app, "PATCH", `${url}/${thing.id}`, bad);
    expect(change.body.error.refusals[0].field).toBe(field);
    expect((await ask(app, "GET", `${url}/${thing.id}`)).body).toEqual(thing);
    const odd = await ask(app, "POST", url, { ...thing, colour: "green" });
    expect(odd.body.error.refusals[0]).toMatchObject({ field: "colour", expected: "no such field here" });
  });

  it.each(["GET", "PUT", "PATCH", "DELETE"] as const)(
    "has nothing for %s under another id",
    async (method) => {
      const app = await testApp();
      const { id: _id, ...rest } = thing;
      const body = method === "PUT" ? rest : method === "PATCH" ? {} : undefined;
      const { status, body: reply } = await ask(app, method, `${url}/none`, body);
      expect(status).toBe(404);
      expect(reply.error).toMatchObject({ code: "not-found", message: where });
    },
  );
});

describe("the log of sightings", () => {
  it("is told newest first, and by what became of them", async () => {
    const app = await testApp();
    for (const one of [
      { ...sighting, id: "a", seenOn: "2026-11-03" },
      { ...sighting, id: "b", seenOn: "2026-11-20", outcome: "gone" },
      { ...sighting, id: "c", seenOn: "2026-11-03", outcome: "gone" },
      { ...sighting, id: "d", seenOn: "2026-10-31" },
    ])
      await ask(app, "POST", "/api/sightings", one);
    const ids = async (query: string) =>
      (await ask(app, "GET", `/api/sightings${query}`)).body.sightings.map(({ id }: { id: string }) => id);
    expect(await ids("")).toEqual(["b", "c", "a", "d"]);
    expect(await ids("?outcome=gone")).toEqual(["b", "c"]);
    expect(await ids("?outcome=bought")).toEqual([]);
    const bad = await ask(app, "GET", "/api/sightings?outcome=lost");
    expect(bad.status).toBe(400);
    expect(bad.body.error.refusals[0].field).toBe("outcome");
  });

  it("keeps what was read beside what the user corrected", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/sightings", sighting);
    const listing = { ...emptyListing, intent: "swap" };
    const { body } = await ask(app, "PATCH", `/api/sightings/${sighting.id}`, { listing });
    expect(body.read).toEqual(sighting.read);
    expect(body.listing.intent).toBe("swap");
  });
});

describe("the books", () => {
  it("are told newest first", async () => {
    const app = await testApp();
    for (const [id, on] of [
      ["a", "2026-11-03"],
      ["b", "2026-11-20"],
      ["c", "2026-11-03"],
    ])
      await ask(app, "POST", "/api/books", { ...entry, id, on });
    const { body } = await ask(app, "GET", "/api/books");
    expect(body.entries.map(({ id }: { id: string }) => id)).toEqual(["b", "c", "a"]);
  });

  it("take another currency only with a rate, of the line or typed in", async () => {
    const app = await testApp();
    const foreign = (currency: string) => ({
      ...entry,
      id: currency,
      amount: { amountMinor: -1000, currency },
    });
    const refused = await ask(app, "POST", "/api/books", foreign("SEK"));
    expect(refused.status).toBe(400);
    expect(refused.body.error.refusals).toEqual([
      { field: "rate", got: "nothing", expected: "how much EUR one SEK was worth that day" },
    ]);
    expect((await ask(app, "POST", "/api/books", { ...foreign("SEK"), rate: 0.09 })).status).toBe(201);
    expect((await ask(app, "POST", "/api/books", foreign("GBP"))).status).toBe(201);
    const { body } = await ask(app, "GET", "/api/books/summary");
    // 10.00 SEK at 0.09 and 10.00 GBP at 1.2.
    expect(body).toMatchObject({ currency: "EUR", totals: { outMinor: -1290 }, unconverted: [] });
  });

  it("are summed up by club, month and year", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/books", entry);
    const sale = { on: "2026-12-04", type: "sale", amount: { amountMinor: 9000, currency: "EUR" } };
    await ask(app, "POST", "/api/books", { ...sale, club: entry.club, daysToSell: 12 });
    const { status, body } = await ask(app, "GET", "/api/books/summary");
    expect(status).toBe(200);
    expect(body.totals).toMatchObject({ inMinor: 9000, outMinor: -4200, netMinor: 4800, sales: 1 });
    expect(body.byClub).toMatchObject([{ club: entry.club, netMinor: 4800 }]);
    expect(body.byMonth).toMatchObject([
      { month: "2026-11", netMinor: -4200 },
      { month: "2026-12", netMinor: 9000 },
    ]);
    expect(body.byYear).toMatchObject([{ year: 2026, netMinor: 4800 }]);
  });
});

describe("the example", () => {
  const demo = {
    parts: [looseParts.grip],
    joints: [],
    claims: [],
    goal: {},
    models: [model],
    evidence: [asked],
    sightings: [sighting],
    entries: [entry],
  } as never;

  it("comes with its lists, which are emptied with the bench and come back by undo or with the example", async () => {
    const app = await testApp({ demo });
    const all = async () =>
      Promise.all(lists.map(async ({ url, list }) => (await ask(app, "GET", url)).body[list].length));
    expect(await all()).toEqual([1, 1, 1, 1]);
    await ask(app, "POST", "/api/bench/start-own");
    expect(await all()).toEqual([0, 0, 0, 0]);
    await ask(app, "POST", "/api/bench/undo");
    expect(await all()).toEqual([1, 1, 1, 1]);
    await ask(app, "POST", "/api/bench/start-own");
    expect((await ask(app, "POST", "/api/bench/example")).status).toBe(200);
    expect(await all()).toEqual([1, 1, 1, 1]);
  });

  it("does not take the place of own books without a yes, nor lose them", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/start-own");
    await ask(app, "POST", "/api/books", { ...entry, id: "mine" });
    const refused = await ask(app, "POST", "/api/bench/example");
    expect(refused.body.error.code).toBe("bench-not-empty");
    await ask(app, "POST", "/api/bench/example", { confirm: true });
    expect((await ask(app, "GET", "/api/books/mine")).status).toBe(404);
    await ask(app, "POST", "/api/bench/undo");
    expect((await ask(app, "GET", "/api/books")).body.entries).toEqual([{ ...entry, id: "mine" }]);
  });

  it("that is untouched leaves nothing to undo", async () => {
    const app = await testApp({ demo });
    await ask(app, "POST", "/api/bench/example", { confirm: true });
    expect((await ask(app, "GET", "/api/bench")).body.undo).toBe(0);
    await ask(app, "PATCH", `/api/books/${entry.id}`, { note: "looked at" });
    await ask(app, "POST", "/api/bench/example", { confirm: true });
    expect((await ask(app, "GET", "/api/bench")).body.undo).toBe(1);
  });
});

describe("costs", () => {
  it("are as first given, and changed by what is named at the top", async () => {
    const app = await testApp();
    const first = (await ask(app, "GET", "/api/costs")).body;
    expect(first).toMatchObject({ currency: "EUR", sellsBy: "auction" });
    const { status, body } = await ask(app, "PUT", "/api/costs", { sellsBy: "in-person", perKmMinor: 30 });
    expect(status).toBe(200);
    expect(body).toEqual({ ...first, sellsBy: "in-person", perKmMinor: 30 });
    expect((await ask(app, "GET", "/api/costs")).body).toEqual(body);
  });

  it.each([
    [{ sellsBy: "the moon" }, "sellsBy", '"the moon"'],
    [{ hourValueMinor: 12.5 }, "hourValueMinor", "12.5"],
    [{ currency: "euro" }, "currency", '"euro"'],
    [{ colour: "green" }, "colour", "a field we do not know"],
  ])("refuse %j by its field", async (change, field, got) => {
    const app = await testApp();
    const { status, body } = await ask(app, "PUT", "/api/costs", change);
    expect(status).toBe(400);
    expect(body.error.refusals[0]).toMatchObject({ field, got });
    expect((await ask(app, "GET", "/api/costs")).body.sellsBy).toBe("auction");
  });

  it("refuse to drop the fee table that the user sells by, and two of one id", async () => {
    const app = await testApp();
    const [auction, inPerson] = (await ask(app, "GET", "/api/costs")).body.feeTables;
    const dropped = await ask(app, "PUT", "/api/costs", { feeTables: [inPerson] });
    expect(dropped.body.error.refusals[0]).toMatchObject({
      field: "sellsBy",
      expected: expect.stringContaining("in-person"),
    });
    const twice = await ask(app, "PUT", "/api/costs", { feeTables: [auction, auction] });
    expect(twice.body.error.refusals[0]).toMatchObject({ field: "feeTables.1.id", got: '"auction"' });
  });

  it("take another currency with what the old one is worth in it, and convert what is left of the old", async () => {
    const app = await testApp();
    const first = (await ask(app, "GET", "/api/costs")).body;
    const refused = await ask(app, "PUT", "/api/costs", { currency: "GBP", perKmMinor: 30 });
    expect(refused).toMatchObject({
      status: 400,
      body: { error: { refusals: [{ field: "currency", expected: expect.stringContaining("rates.EUR") }] } },
    });
    expect((await ask(app, "GET", "/api/costs")).body).toEqual(first);
    const change = { currency: "GBP", rates: { EUR: 0.8 }, perKmMinor: 30 };
    const { body } = await ask(app, "PUT", "/api/costs", change);
    const inPounds = (minor: number) => Math.round(minor * 0.8);
    expect(body).toMatchObject({ ...change, hourValueMinor: inPounds(first.hourValueMinor) });
    expect(body.feeTables[0].fixedMinor).toBe(inPounds(first.feeTables[0].fixedMinor));
    expect(body.services.map(({ priceMinor }: { priceMinor: number }) => priceMinor)).toEqual(
      first.services.map(({ priceMinor }: { priceMinor: number }) => inPounds(priceMinor)),
    );
    expect(body.parcels).toEqual(first.parcels);
  });

  it("keep the currency that the books are in, unless a rate is typed in", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/books", entry);
    const refused = await ask(app, "PUT", "/api/costs", { currency: "GBP" });
    expect(refused.body.error.refusals[0]).toMatchObject({ field: "currency", got: '"GBP"' });
    const taken = await ask(app, "PUT", "/api/costs", { currency: "GBP", rates: { EUR: 0.8 } });
    expect(taken.status).toBe(200);
    expect((await ask(app, "GET", "/api/books/summary")).body.totals.netMinor).toBe(-3360);
  });
});
