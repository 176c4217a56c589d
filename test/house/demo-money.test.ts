import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { catalogueModelSchema } from "../../packages/core/src/listing/catalogue.ts";
import { entrySchema } from "../../packages/core/src/worth/entry.ts";
import { evidenceSchema } from "../../packages/core/src/worth/evidence.ts";
import { sightingSchema } from "../../packages/core/src/worth/sighting.ts";

const textOf = (name: string) => readFileSync(new URL(`../../data/demo/${name}`, import.meta.url), "utf8");
const rowsOf = <Row>(name: string, row: z.ZodType<Row>) => z.array(row).parse(JSON.parse(textOf(name)));

const catalogue = rowsOf("catalogue.json", catalogueModelSchema);
const evidence = rowsOf("evidence.json", evidenceSchema);
const sightings = rowsOf("sightings.json", sightingSchema);
const books = rowsOf("books.json", entrySchema);
const listings = textOf("listings.txt").trim().split(/\n\n+/);

interface WrittenPart {
  readonly id: string;
  readonly kind: string;
  readonly maker?: string;
  readonly model?: string;
  readonly paid?: { readonly amountMinor: number };
  readonly acquiredOn?: string;
}
const { parts }: { parts: readonly WrittenPart[] } = JSON.parse(textOf("bench.json"));

/** The demo's today, and eighteen months before it. */
const [firstDay, today] = ["2025-05-25", "2026-11-25"];

function expectOnceEach(ids: readonly string[]): void {
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
}

describe("the demo's catalogue", () => {
  it("names each model once", () => expectOnceEach(catalogue.map(({ id }) => id)));

  it("knows every head, shaft, adapter, cover and wrench of the bench, and every grip that has a name", () => {
    const known = new Set(catalogue.map(({ kind, maker, model }) => `${kind} ${maker} ${model}`));
    const named = parts.filter(({ model }) => model !== "unmarked");
    const unknown = named.filter(({ kind, maker, model }) => !known.has(`${kind} ${maker} ${model}`));
    expect(unknown.map(({ id }) => id)).toEqual([]);
  });
});

describe("the demo's evidence", () => {
  it("names each price once, in euros, within the eighteen months before the demo's today", () => {
    expectOnceEach(evidence.map(({ id }) => id));
    expect(evidence.length).toBeGreaterThanOrEqual(60);
    for (const { id, on, price } of evidence) {
      expect(on >= firstDay && on < today, id).toBe(true);
      expect(price.currency, id).toBe("EUR");
    }
  });

  it("spells models as the catalogue does", () => {
    for (const { id, kind, modelId, maker, model } of evidence) {
      const known = catalogue.find((each) => each.id === modelId);
      expect({ maker, model }, id).toEqual({ maker: known?.maker, model: known?.model });
      expect(known?.kind, id).toBe(kind === "club" ? "head" : kind);
    }
  });

  it("has every own sale in the books, at the same price, day and days to sell", () => {
    const sales = books.filter(({ type }) => type === "sale");
    const keyOf = (on: string, minor: number, days?: number) => `${on} ${minor} ${days}`;
    expect(
      evidence
        .filter(({ own }) => own)
        .map(({ on, price, daysToSell }) => keyOf(on, price.amountMinor, daysToSell))
        .sort(),
    ).toEqual(sales.map(({ on, amount, daysToSell }) => keyOf(on, amount.amountMinor, daysToSell)).sort());
  });
});

describe("the demo's books", () => {
  it("names each line once, in order of days, with money in above and money out below nothing", () => {
    expectOnceEach(books.map(({ id }) => id));
    const dates = books.map(({ on }) => on);
    expect(dates).toEqual(dates.toSorted());
    for (const { id, type, amount } of books)
      expect(amount.amountMinor > 0, id).toBe(type === "sale" || type === "refund");
  });

  it("holds what the bench says was paid, each part once", () => {
    const known = new Map(parts.map((part) => [part.id, part]));
    const buys = books.filter(({ type, parts: bought = [] }) => type === "buy" && known.has(bought[0] ?? ""));
    for (const { id, on, amount, parts: bought = [] } of buys) {
      const paid = bought.map((part) => known.get(part)?.paid?.amountMinor ?? 0);
      expect(amount.amountMinor, id).toBe(-paid.reduce((sum, each) => sum + each, 0));
      expect(new Set(bought.map((part) => known.get(part)?.acquiredOn)), id).toEqual(new Set([on]));
    }
    const bought = buys.flatMap(({ parts: ids = [] }) => ids);
    expectOnceEach(bought);
    expect(bought.toSorted()).toEqual(parts.map(({ id }) => id).sort());
  });

  it("says of every sale of a thing no longer on the bench what was expected of it", () => {
    const onBench = new Set(parts.map(({ id }) => id));
    const sales = books.filter(({ type }) => type === "sale");
    expect(sales.length).toBeGreaterThanOrEqual(5);
    for (const { id, parts: sold = [], expected } of sales) {
      expect(
        sold.filter((part) => onBench.has(part)),
        id,
      ).toEqual([]);
      expect(expected && expected.lowMinor < expected.priceMinor, id).toBe(true);
    }
  });
});

describe("the demo's sightings", () => {
  it("names each once, seen before the demo's today, with what became of it later", () => {
    expectOnceEach(sightings.map(({ id }) => id));
    expect(sightings.length).toBeGreaterThanOrEqual(40);
    for (const { id, seenOn, outcome, outcomeOn } of sightings) {
      expect(seenOn < today, id).toBe(true);
      expect(outcomeOn === undefined, id).toBe(outcome === "open");
      expect((outcomeOn ?? today) >= seenOn, id).toBe(true);
    }
  });

  it("has every outcome, and spans that are the words of the text", () => {
    expect(new Set(sightings.map(({ outcome }) => outcome)).size).toBe(5);
    for (const { id, text, listing } of sightings) {
      expect(listing.items.length, id).toBeGreaterThan(0);
      for (const { start, end, words } of listing.spans) expect(text.slice(start, end), id).toBe(words);
    }
  });
});

describe("the demo's listings to try", () => {
  it("are 25, each another", () => {
    expect(listings).toHaveLength(25);
    expectOnceEach(listings);
  });
});
