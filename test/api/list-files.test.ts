import { describe, expect, it } from "vitest";
import { ask, type TestApp, testApp } from "./server.test-kit.ts";
import { asked, entry, model, sighting } from "./trade.test-kit.ts";

const importText = (app: TestApp, url: string, text: string, more: object = {}) =>
  ask(app, "POST", `${url}/import`, { format: "csv", text, take: "good", ...more });

const evidence = {
  ...asked,
  what: "sold",
  own: true,
  daysToSell: 11,
  modelId: "0042",
  clubNumber: "1e3",
  cover: false,
  note: '=SUM(A1:A9) "quoted", and\nin two lines',
};

const books = {
  ...entry,
  amount: { amountMinor: -4200, currency: "GBP" },
  rate: 1.15,
  km: 12.5,
  minutes: 40,
  sighting: "s1",
  expected: { priceMinor: 9000, lowMinor: 7000, highMinor: 11500, netMinor: -20, daysToSell: 14 },
  note: "+ a wrench",
};

describe.each([
  { url: "/api/catalogue", list: "models", thing: model },
  { url: "/api/evidence", list: "evidence", thing: evidence },
  { url: "/api/books", list: "entries", thing: books },
])("$url/export.csv", ({ url, list, thing }) => {
  it("is brought back by the import as it was", async () => {
    const first = await testApp();
    await ask(first, "POST", url, thing);
    await ask(first, "POST", url, { ...thing, id: "second, of two" });
    const { status, body: csv, headers } = await ask(first, "GET", `${url}/export.csv`);
    expect(status).toBe(200);
    expect(headers["content-type"]).toBe("text/csv; charset=utf-8");
    expect(headers["content-disposition"]).toBe(`attachment; filename="ferrule-${url.split("/")[2]}.csv"`);
    const second = await testApp();
    expect((await importText(second, url, csv)).body).toEqual({ taken: 2, dryRun: false, refused: [] });
    expect((await ask(second, "GET", url)).body).toEqual((await ask(first, "GET", url)).body);
  });

  it("is refused as it is where it is there already, and taken in its place when asked", async () => {
    const app = await testApp();
    await ask(app, "POST", url, thing);
    const { body: csv } = await ask(app, "GET", `${url}/export.csv`);
    const { body } = await importText(app, url, csv);
    expect(body).toMatchObject({ taken: 0, refused: [{ line: 2, column: "id", got: `"${thing.id}"` }] });
    await ask(app, "PATCH", `${url}/${thing.id}`, { note: null, year: null });
    expect((await importText(app, url, csv, { existing: "replace" })).body.taken).toBe(1);
    expect((await ask(app, "GET", `${url}/${thing.id}`)).body).toEqual(thing);
  });

  it("has its columns also where there is nothing to write", async () => {
    const { body: csv } = await ask(await testApp(), "GET", `${url}/export.csv`);
    expect(csv).toMatch(/^id,[\w.,]+\r\n$/);
    expect((await importText(await testApp(), url, csv)).body.refused).toEqual([]);
  });

  it("is taken as JSON as well, as an object or as a list", async () => {
    const app = await testApp();
    const text = JSON.stringify({ [list]: [thing] });
    expect((await importText(app, url, text, { format: "json", dryRun: true })).body).toEqual({
      taken: 1,
      dryRun: true,
      refused: [],
    });
    expect((await ask(app, "GET", url)).body[list]).toEqual([]);
    const bare = JSON.stringify([thing], null, 2).replace(`"${thing.id}"`, "5");
    const refused = await importText(app, url, bare, { format: "json" });
    expect(refused.body).toMatchObject({ taken: 0, refused: [{ line: 3, column: "id", got: "5" }] });
    const odd = await importText(app, url, JSON.stringify({ parts: [] }), { format: "json" });
    expect(odd.body.refused[0]).toMatchObject({ line: 1, column: "parts" });
  });
});

describe("an export", () => {
  it("writes no cell that a spreadsheet would calculate", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/evidence", evidence);
    const { body } = await ask(app, "GET", "/api/evidence/export.csv");
    expect(body).toContain(`"'=SUM(A1:A9) ""quoted"", and\nin two lines"`);
  });

  it("of sightings has the words and what holds of them, a row each", async () => {
    const app = await testApp();
    await ask(app, "POST", "/api/sightings", {
      ...sighting,
      text: "=1+1",
      outcome: "sold",
      outcomePrice: { amountMinor: 3800, currency: "EUR" },
    });
    const { status, body } = await ask(app, "GET", "/api/sightings/export.csv");
    expect(status).toBe(200);
    const [header, row] = body
      .trimEnd()
      .split("\r\n")
      .map((line: string) => line.split(","));
    const cell = (name: string) => row[header.indexOf(name)];
    expect(cell("text")).toBe("'=1+1");
    expect(cell("outcome")).toBe("sold");
    expect(cell("outcomePrice.amountMinor")).toBe("3800");
    expect(cell("listing.asking.amountMinor")).toBe("4000");
    expect(cell("listing.items.0.model")).toBe("Ombrel");
    expect(cell("listing.items.1.kind")).toBe("grip");
    expect(header.filter((name: string) => /span|doubt|read/.test(name))).toEqual([]);
    expect(row).not.toContain("null");
  });
});

describe("an import of prices", () => {
  const url = "/api/evidence";
  const rows = (...lines: string[]) => ["on,what,kind,model,price,currency", ...lines].join("\n");
  const prices = async (app: TestApp) =>
    (await ask(app, "GET", url)).body.evidence.map(({ price }: { price: object }) => price);

  it("takes a price as a decimal with its currency, exactly", async () => {
    const app = await testApp();
    const text = rows(
      "2026-10-01,sold,head,Ombrel,28.10,EUR",
      "2026-10-02,sold,head,Ombrel,1.005e2,EUR",
      "2026-10-02,asked,head,Ombrel,35,GBP",
      "2026-10-03,sold,head,Ombrel,1150,JPY",
      "2026-10-03,sold,head,Ombrel,0.5,EUR",
    );
    const { body } = await importText(app, url, text);
    expect(body).toMatchObject({ taken: 4, refused: [{ line: 3, column: "price", got: '"1.005e2"' }] });
    expect(await prices(app)).toEqual([
      { amountMinor: 2810, currency: "EUR" },
      { amountMinor: 3500, currency: "GBP" },
      { amountMinor: 1150, currency: "JPY" },
      { amountMinor: 50, currency: "EUR" },
    ]);
    expect((await ask(app, "GET", url)).body.evidence[0].id).toBe("price-1");
  });

  it.each([
    ["28.105,EUR", "price", '"28.105"', "an amount with at most 2 decimals, such as 28.50"],
    ["1150.5,JPY", "price", '"1150.5"', "a whole number of JPY"],
    ['"28,50",EUR', "price", '"28,50"', "an amount with at most 2 decimals, such as 28.50"],
    ["28.50,", "currency", "nothing", "an ISO 4217 code such as EUR"],
    ["28.50,euros", "currency", '"euros"', "an ISO 4217 code such as EUR"],
  ])("refuses %s by its column", async (cells, column, got, expected) => {
    const app = await testApp();
    const text = rows(`2026-10-01,sold,head,Ombrel,${cells}`);
    expect((await importText(app, url, text)).body).toEqual({
      taken: 0,
      dryRun: false,
      refused: [{ line: 2, column, got, expected }],
    });
  });

  it("takes all or none when asked, and names columns that lack or that nobody knows", async () => {
    const app = await testApp();
    const text = rows("2026-10-01,sold,head,Ombrel,28.10,EUR", "soon,sold,head,Ombrel,28.10,EUR");
    const { body } = await importText(app, url, text, { take: "all-or-none" });
    expect(body).toMatchObject({ taken: 0, refused: [{ line: 3, column: "on", got: '"soon"' }] });
    expect(await prices(app)).toEqual([]);
    const lacking = await importText(app, url, "on,what\n2026-10-01,sold");
    expect(lacking.body.refused).toMatchObject([
      { line: 1, column: "kind", expected: "a column named kind" },
    ]);
    const odd = await importText(
      app,
      url,
      "on,what,kind,price,currency,colour\n2026-10-01,sold,head,5,EUR,green",
    );
    expect(odd.body.refused).toMatchObject([{ line: 2, column: "colour", expected: "no such field here" }]);
  });

  it("has text stay text, whatever number it looks like", async () => {
    const app = await testApp();
    await importText(app, url, "on,what,kind,modelId,price,currency\n2026-10-01,sold,head,0042,5,EUR");
    expect((await ask(app, "GET", url)).body.evidence[0].modelId).toBe("0042");
  });

  it("refuses a request that is not one", async () => {
    const app = await testApp();
    const { status, body } = await ask(app, "POST", `${url}/import`, {
      format: "pdf",
      text: "",
      take: "good",
    });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toBe("format");
  });
});

describe("an import into the books", () => {
  it("takes amounts as decimals with their sign, names with semicolons between, and asks for a rate", async () => {
    const app = await testApp();
    const text = [
      "on;type;amount;currency;parts;rate",
      '2026-10-01;buy;-28.10;EUR;"head-1; grip-2"',
      "2026-10-02;sale;90;SEK;head-1",
      "2026-10-02;sale;90;SEK;head-1;0.09",
    ].join("\n");
    const { body } = await importText(app, "/api/books", text);
    expect(body).toMatchObject({ taken: 2, refused: [{ line: 3, column: "rate", got: "nothing" }] });
    const { entries } = (await ask(app, "GET", "/api/books")).body;
    expect(entries[1]).toMatchObject({
      id: "entry-1",
      amount: { amountMinor: -2810, currency: "EUR" },
      parts: ["head-1", "grip-2"],
    });
  });
});

describe("an import into the catalogue", () => {
  it("takes aliases in one cell, and is read with at once", async () => {
    const app = await testApp();
    const text = "id,kind,maker,model,aliases,clubType\nx1,head,Orvane,Tansy,OV Tansy; Tansie,driver";
    expect((await importText(app, "/api/catalogue", text)).body.taken).toBe(1);
    expect((await ask(app, "GET", "/api/catalogue/x1")).body.aliases).toEqual(["OV Tansy", "Tansie"]);
    const { body } = await ask(app, "POST", "/api/read", { text: "Tansie driver head, 30 euros" });
    expect(body.items[0].modelId).toBe("x1");
  });
});
