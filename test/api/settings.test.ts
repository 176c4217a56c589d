import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { costSettingsSchema, itemKinds, postageFor } from "../../packages/core/src/index.ts";
import { readReference } from "../../packages/server/src/reference-files.ts";
import { ask, looseParts, openTestApp, type TestApp, temporaryFolder, testApp } from "./server.test-kit.ts";

const reference = readReference(fileURLToPath(new URL("../../data", import.meta.url)));
const regions = reference.regions ?? [];
const inEurope = () => testApp({ reference });
const put = (app: TestApp, region: string, body: object = {}) =>
  ask(app, "POST", `/api/settings/regions/${region}`, body);
const fileOf = async (app: TestApp) => (await ask(app, "GET", "/api/settings/file")).body;
const paths = (changes: readonly { path: string }[]) => changes.map(({ path }) => path);

describe("first values of a region", () => {
  it.each(regions.map((region) => [region.id, region] as const))(
    "of %s are whole",
    (_id, { settings, rows }) => {
      const costs = { ...reference.firstCosts, ...settings.costs };
      expect(costSettingsSchema.safeParse(costs).error?.issues ?? []).toEqual([]);
      expect(costs.feeTables.map(({ id }) => id)).toContain(costs.sellsBy);
      for (const kind of itemKinds) {
        const parcel = costs.parcels[kind];
        expect(parcel && postageFor(parcel, costs.services).service?.id, kind).toBeDefined();
      }
      expect(settings.goal?.localRule46).toBe(false);
      const told = new Set(rows.map(({ of }) => of));
      const given = Object.entries(settings).flatMap(([part, of]) =>
        Object.keys(of ?? {}).map((key) => `${part}.${key}`),
      );
      const untold = ["display.currency", "costs.sellsBy", "costs.buyerPaysPostage"];
      expect(given.filter((path) => !told.has(path) && !untold.includes(path))).toEqual([]);
    },
  );

  it("of Europe are what a new bench starts from", () =>
    expect(reference.firstCosts).toMatchObject(
      regions.find(({ id }) => id === "europe")?.settings.costs ?? { no: 1 },
    ));

  it("are shown before they are put in, put in when asked, and taken back once", async () => {
    const app = await inEurope();
    const before = await fileOf(app);
    const shown = await put(app, "britain", { dryRun: true });
    expect(shown.body.done).toBe(false);
    expect(shown.body.changes).toContainEqual({ path: "costs.currency", before: "EUR", after: "GBP" });
    expect(shown.body.changes).toContainEqual({
      path: "goal.targets",
      before: null,
      after: expect.anything(),
    });
    expect(await fileOf(app)).toEqual(before);
    const done = await put(app, "britain");
    expect(done.body).toEqual({ ...shown.body, done: true });
    expect(await fileOf(app)).toMatchObject({
      display: { currency: "GBP", theme: "auto" },
      goal: { skill: "screw", targets: { driver: { playingLengthIn: 45.25 } } },
      costs: { currency: "GBP", hourValueMinor: 1100, saleMinutes: before.costs.saleMinutes },
    });
    expect((await ask(app, "GET", "/api/settings/regions")).body.canTakeBack).toBe(true);
    expect((await ask(app, "POST", "/api/settings/undo")).status).toBe(200);
    expect(await fileOf(app)).toEqual(before);
    expect((await ask(app, "POST", "/api/settings/undo")).status).toBe(409);
  });

  it("leave what was changed by hand since when they are taken back", async () => {
    const app = await inEurope();
    await put(app, "europe");
    await ask(app, "PUT", "/api/costs", { hourValueMinor: 1800 });
    await ask(app, "PUT", "/api/settings", { theme: "dark" });
    await ask(app, "POST", "/api/settings/undo");
    expect(await fileOf(app)).toMatchObject({
      display: { lengthUnit: "in", theme: "dark" },
      costs: { hourValueMinor: 1800 },
    });
    expect((await fileOf(app)).goal).toEqual({});
  });

  it("leave the rest of a target that they say something of", async () => {
    const app = await inEurope();
    await ask(app, "PUT", "/api/bench/goal", { targets: { iron: { playingLengthIn: 37 } }, hand: "left" });
    await put(app, "europe");
    expect((await fileOf(app)).goal).toMatchObject({
      hand: "left",
      targets: { iron: { playingLengthIn: 37, swingWeightPoints: 31 }, putter: { playingLengthIn: 34 } },
    });
  });

  it("want a rate where amounts of the old currency stay, and turn them by it", async () => {
    const app = await inEurope();
    await ask(app, "PUT", "/api/costs", { work: { "grip-on": { minutes: 6, costMinor: 200 } } });
    const refused = await put(app, "britain");
    expect(refused.status).toBe(400);
    expect(refused.body.error.refusals[0]).toMatchObject({ field: "costs.currency", got: '"GBP"' });
    expect((await put(app, "britain", { rate: 0.85 })).status).toBe(200);
    const { costs } = await fileOf(app);
    expect(costs.work).toEqual({ "grip-on": { minutes: 6, costMinor: 170 } });
    expect(costs.rates).toEqual({ EUR: 0.85 });
    expect(costs.perKmMinor).toBe(28);
  });

  it("want a rate for lines of the books in the old currency", async () => {
    const app = await inEurope();
    const line = {
      type: "material",
      on: "2026-11-20",
      amount: { amountMinor: -500, currency: "EUR" },
      parts: [],
    };
    expect((await ask(app, "POST", "/api/books", line)).status).toBeLessThan(300);
    const refused = await put(app, "australia", { dryRun: true });
    expect(refused.body.error?.refusals[0]?.expected).toMatch(/rates\.EUR/);
    expect((await put(app, "australia", { rate: 1.65 })).status).toBe(200);
  });

  it("are of places that are known", async () =>
    expect((await put(await inEurope(), "atlantis")).status).toBe(404));
});

describe("a file of settings", () => {
  it("brings everything to another bench, and nothing else", async () => {
    const [one, other] = [await inEurope(), await inEurope()];
    await put(one, "north-america");
    await ask(one, "PUT", "/api/settings", { theme: "dark" });
    const setup = { ...(await ask(one, "GET", "/api/labels")).body.setup, paper: "letter", widthMm: 66.7 };
    await ask(one, "PUT", "/api/labels/setup", setup);
    await ask(one, "PUT", "/api/advert/template", { template: "For sale: {title}" });
    await ask(other, "POST", "/api/bench/parts", looseParts.head);
    const text = JSON.stringify(await fileOf(one));
    const reply = await ask(other, "POST", "/api/settings/file", { text });
    expect(reply.body.done, JSON.stringify(reply.body)).toBe(true);
    expect(await fileOf(other)).toEqual(await fileOf(one));
    expect((await ask(other, "GET", "/api/bench")).body.parts).toHaveLength(1);
    expect((await ask(other, "POST", "/api/settings/file", { text })).body).toEqual({
      changes: [],
      done: false,
    });
  });

  it("may hold some settings alone, and leaves the rest", async () => {
    const app = await inEurope();
    const text = JSON.stringify({ format: "ferrule-settings", version: 1, costs: { hourValueMinor: 900 } });
    const { body } = await ask(app, "POST", "/api/settings/file", { text });
    expect(paths(body.changes)).toEqual(["costs.hourValueMinor"]);
  });

  it.each<[string, string, RegExp, string]>([
    ["that is no JSON", '{"format": ', /^line 1, character /, "JSON"],
    ["of something else", '{"parts": []}', /^line 1, /, ""],
    ["of a later version", '{"format": "ferrule-settings",\n "version": 2}', /^line 2, version$/, ""],
    [
      "with a figure that cannot be",
      '{"format": "ferrule-settings", "version": 1,\n"costs": {\n"hourValueMinor": -5}}',
      /^line 3, costs\.hourValueMinor$/,
      "",
    ],
    [
      "with a setting that nobody knows",
      '{"format": "ferrule-settings", "version": 1, "display": {"font": "large"}}',
      /^line 1, display\.font$/,
      "no such field here",
    ],
    [
      "with a template that asks for what there is not",
      '{"format": "ferrule-settings", "version": 1, "saleTemplate": "For {nobody}"}',
      /^line 1, saleTemplate$/,
      "",
    ],
    [
      "that sells where there is no place to sell",
      '{"format": "ferrule-settings", "version": 1, "costs": {"sellsBy": "the-moon"}}',
      /^costs\.sellsBy$/,
      "",
    ],
  ])("%s is refused by name", async (_what, text, field, expected) => {
    const app = await inEurope();
    const before = await fileOf(app);
    const { status, body } = await ask(app, "POST", "/api/settings/file", { text });
    expect(status).toBe(400);
    expect(body.error.refusals[0].field).toMatch(field);
    expect(body.error.refusals[0].expected).toContain(expected);
    expect(await fileOf(app)).toEqual(before);
  });
});

it("gives a bench of an earlier version first values for settings that came later", async () => {
  const dataFolder = temporaryFolder();
  const first = await openTestApp({ dataFolder, reference });
  await ask(first, "PUT", "/api/costs", { hourValueMinor: 1700 });
  await first.close();
  const { openSqlite } = await import("../../packages/server/src/store/sqlite.ts");
  const database = openSqlite(`${dataFolder}/bench.sqlite`);
  const row = database.prepare("SELECT body FROM costs WHERE name = 'bench'").get() as { body: string };
  const { leastOfferPercent: _new, unseenPartWeeks: _newer, ...earlier } = JSON.parse(row.body);
  database.prepare("UPDATE costs SET body = ? WHERE name = 'bench'").run(JSON.stringify(earlier));
  database.close();
  const costs = (await ask(await testApp({ dataFolder, reference }), "GET", "/api/costs")).body;
  expect(costs).toMatchObject({ hourValueMinor: 1700, leastOfferPercent: 60, unseenPartWeeks: 8 });
});
