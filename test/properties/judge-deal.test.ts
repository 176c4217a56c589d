import { readFileSync } from "node:fs";
import type {
  Bench,
  CatalogueModel,
  CostSettings,
  Deal,
  DealInput,
  Evidence,
  Listing,
  ListingItem,
  Part,
  Sighting,
} from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faultNames } from "../../packages/core/src/parts/fault.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { judgeDeal } from "../../packages/core/src/worth/judge-deal.ts";
import { reference } from "../reference-tables.ts";

const table = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url), "utf8"));
const bench = table("demo/bench") as Bench;
const catalogue = table("demo/catalogue") as CatalogueModel[];
const costs = table("reference/first-costs") as CostSettings;

const types = ["driver", "fairway", "hybrid", "iron", "wedge", "putter"] as const;

const prices = { head: 4500, club: 13_000, shaft: 3500, cover: 800 };

/** Prices of every kind of thing for every type of club, so that something is known of most listings. */
const evidence: Evidence[] = types.flatMap((clubType, at) =>
  (["head", "club", "shaft", "cover"] as const).flatMap((kind) =>
    [0, 1, 2, 3].map(
      (turn): Evidence => ({
        id: `${clubType}-${kind}-${turn}`,
        on: `2026-0${3 + turn}-1${at}`,
        what: turn % 2 === 0 ? "sold" : "asked",
        price: { amountMinor: prices[kind] + 300 * turn - 150 * at, currency: "EUR" },
        kind,
        clubType,
        ...(kind === "shaft" ? {} : { hand: "right" }),
        ...(turn === 1 ? { daysToSell: 12 } : {}),
      }),
    ),
  ),
);

const orNull = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null, freq: 2 });
const money = fc.record({
  amountMinor: fc.nat(40_000),
  currency: fc.constantFrom("EUR", "EUR", "USD", "JPY", "XAU"),
});
const faults: fc.Arbitrary<ListingItem["faults"]> = fc.uniqueArray(fc.constantFrom(...faultNames), {
  maxLength: 2,
});

/** Anything that a listing may say of one of its items. */
const anyItem: fc.Arbitrary<ListingItem> = fc.record({
  kind: fc.constantFrom("head", "shaft", "club", "adapter", "grip", "cover", "wrench"),
  quantity: fc.oneof({ weight: 5, arbitrary: fc.constant(1) }, fc.constantFrom(2, 3, 70)),
  maker: orNull(fc.constantFrom("Northmoor", "Haldenbach")),
  model: orNull(fc.constantFrom("Ombrel", "Skerrick")),
  modelId: orNull(fc.constantFrom("northmoor-ombrel-driver", "haldenbach-skerrick-hybrid", "unheard-of")),
  year: orNull(fc.constantFrom(2005, 2021)),
  clubType: orNull(fc.constantFrom(...types)),
  clubNumber: orNull(fc.constantFrom("3", "7", "PW", "4-PW", "8-SW", "odd")),
  loftDeg: orNull(fc.constantFrom(10.5, 34)),
  hand: orNull(fc.constantFrom("right", "left")),
  flex: orNull(fc.constantFrom("regular", "stiff")),
  shaftMaterial: orNull(fc.constantFrom("graphite", "steel")),
  shaftMassG: orNull(fc.constantFrom(55, 110)),
  length: orNull(
    fc.record({
      lengthIn: fc.constantFrom(34, 39, 44, 46),
      basis: fc.constantFrom("shaft-alone", "with-adapter", "playing", "unstated"),
    }),
  ),
  tip: orNull(
    fc.record({
      diameterIn: orNull(fc.constantFrom(0.335, 0.355, 0.37)),
      form: orNull(fc.constantFrom("parallel", "taper")),
    }),
  ),
  adapter: orNull(fc.constantFrom("fitted", "none")),
  adapterFamily: orNull(fc.constantFrom("Quillon 2", "Quillon 1", "Tarnlock", "Brackwater")),
  cover: orNull(fc.boolean()),
  wrench: orNull(fc.boolean()),
  faults: fc.oneof({ weight: 3, arbitrary: fc.constant<ListingItem["faults"]>([]) }, faults),
  deniedFaults: faults,
  price: fc.option(money, { nil: null, freq: 1 }),
});

const listingOf = (item: fc.Arbitrary<ListingItem>, maxLength: number): fc.Arbitrary<Listing> =>
  fc.record({
    intent: fc.constantFrom("sell", "sell", "wanted", "swap", null),
    asking: orNull(money),
    negotiable: orNull(fc.boolean()),
    postage: fc.oneof(fc.constantFrom("included", "extra", "collection-only", null), money),
    items: fc.array(item, { maxLength }),
    spans: fc.constant([]),
    doubts: fc.constant([]),
  });

/** What the bench of the demo makes clubs of most: heads and shafts of its families, sound and of a known hand. */
const likelyItem = anyItem.map(
  (item): ListingItem => ({
    ...item,
    kind: item.kind === "grip" || item.kind === "wrench" ? "head" : item.kind,
    quantity: Math.min(item.quantity, 2),
    clubType: item.clubType ?? "driver",
    clubNumber: null,
    hand: item.hand ?? "right",
    adapter: item.kind === "shaft" ? "fitted" : item.adapter,
    adapterFamily: item.adapterFamily ?? "Quillon 2",
    faults: [],
    price: null,
  }),
);
const likelyListing = listingOf(likelyItem, 2).map((listing): Listing => ({ ...listing, intent: "sell" }));

const judge = (listing: Listing, other: Partial<DealInput> = {}): Deal =>
  judgeDeal({
    listing,
    bench,
    rules,
    reference,
    catalogue,
    evidence,
    sightings: [],
    costs,
    today: "2026-11-25",
    ...other,
  });

const euros = (amountMinor: number) => ({ amountMinor, currency: "EUR" });
const runs = (numRuns: number) => ({ numRuns, seed: 20261125 });
const wayOf = ({ alternatives }: Deal, way: string) => alternatives.find((each) => each.way === way);

// Every property is derived, no published source: it follows from what the words of a judgement mean.
describe("a judgement", () => {
  it("is given on any listing, whatever its words came to, and its sums add up", { timeout: 120_000 }, () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(
        listingOf(anyItem, 3),
        fc.option(fc.nat(300), { nil: undefined }),
        (listing, roundTripKm) => {
          const deal = judge(listing, roundTripKm === undefined ? {} : { roundTripKm });
          met.set(deal.verdict, (met.get(deal.verdict) ?? 0) + 1);
          expect(deal.alternatives.map(({ way }) => way).join(" ")).toBe(
            "build-now wait sell-as-it-is part-out leave",
          );
          expect(deal.items).toHaveLength(listing.items.length);
          for (const { net, lines, lossChance, mostToPayMinor, possible, reasons } of deal.alternatives) {
            expect(possible || reasons.length > 0).toBe(true);
            if (!net) continue;
            met.set("ways", (met.get("ways") ?? 0) + 1);
            const sum = lines.reduce((total, { amountMinor }) => total + amountMinor, 0);
            expect(Math.abs(sum - net.valueMinor)).toBeLessThanOrEqual(lines.length);
            expect(lines.every(({ amountMinor }) => Number.isInteger(amountMinor))).toBe(true);
            expect(net.lowMinor).toBeLessThanOrEqual(net.valueMinor);
            expect(net.highMinor).toBeGreaterThanOrEqual(net.valueMinor);
            expect(lossChance).toBeGreaterThanOrEqual(0);
            expect(lossChance).toBeLessThanOrEqual(1);
            expect(mostToPayMinor ?? 0).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      runs(100),
    );
    expect(met.get("ways")).toBeGreaterThan(60);
    expect(met.size).toBeGreaterThanOrEqual(3);
  });

  it("does not grow kinder as more is asked, and the most to pay stays where it is", {
    timeout: 120_000,
  }, () => {
    const kindness = { buy: 3, "offer-up-to": 2, "ask-first": 1, leave: 0 };
    fc.assert(
      fc.property(
        likelyListing,
        fc.nat(20_000),
        fc.integer({ min: 1, max: 20_000 }),
        (listing, price, more) => {
          const [less, dearer] = [price, price + more].map((each) =>
            judge({ ...listing, asking: euros(each) }),
          );
          expect(dearer?.mostToPay).toEqual(less?.mostToPay);
          // More can turn a yes into a question, and a question into a no; never a no or a question into a yes.
          const [before, after] = [kindness[less?.verdict ?? "leave"], kindness[dearer?.verdict ?? "leave"]];
          expect(after === 3 && before < 3).toBe(false);
          expect(before === 0 && after > 0).toBe(false);
        },
      ),
      runs(40),
    );
  });

  it("changes nothing of what it is given", { timeout: 60_000 }, () => {
    const frozen = deepFrozen({ bench, evidence, costs, catalogue });
    fc.assert(
      fc.property(likelyListing, (listing) => {
        const before = JSON.stringify([frozen, listing]);
        judge(deepFrozen(listing), frozen);
        expect(JSON.stringify([frozen, listing])).toBe(before);
      }),
      runs(12),
    );
  });

  it("is the same in whatever order parts, evidence and sightings come", { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(likelyListing, fc.array(likelyListing, { minLength: 2, maxLength: 6 }), (listing, seen) => {
        const sightings = seen.map(sightingOf);
        const given = judge(listing, { sightings });
        const turned = judge(listing, {
          sightings: sightings.toReversed(),
          evidence: evidence.toReversed(),
          catalogue: catalogue.toReversed(),
          bench: { ...bench, parts: bench.parts.toReversed(), joints: bench.joints?.toReversed() ?? [] },
        });
        expect(turned).toEqual(given);
      }),
      runs(20),
    );
  });

  it("never builds on a head with a crack or a caved face, nor sells it to be swung", {
    timeout: 60_000,
  }, () => {
    fc.assert(
      fc.property(likelyItem, fc.constantFrom("crack", "caved-face"), (item, fault) => {
        const head: ListingItem = { ...item, kind: "head", faults: [fault] };
        const listing = {
          intent: "sell",
          negotiable: null,
          postage: "included",
          spans: [],
          doubts: [],
        } as const;
        const deal = judge({ ...listing, asking: euros(0), items: [head], spans: [], doubts: [] });
        expect(deal.verdict).not.toBe("buy");
        for (const way of ["build-now", "wait", "sell-as-it-is"])
          expect(wayOf(deal, way)?.possible).toBe(false);
        expect(deal.cares.map(({ code }) => code)).toContain(`unsafe-${fault}`);
      }),
      runs(20),
    );
  });
});

describe("building", () => {
  it("uses no part twice, no part that is sold, and none that is not there", { timeout: 120_000 }, () => {
    let built = 0;
    fc.assert(
      fc.property(likelyListing, fc.subarray([...bench.parts], { maxLength: 20 }), (listing, sold) => {
        const gone = new Set(sold.map(({ id }) => id));
        const parts = bench.parts.map((part) =>
          gone.has(part.id) ? ({ ...part, soldFor: euros(1000), soldOn: "2026-10-01" } as Part) : part,
        );
        const deal = judge(listing, { bench: { ...bench, parts } });
        const building = wayOf(deal, "build-now");
        built += building?.clubs.length ?? 0;
        const used = building?.clubs.flatMap((club) => club.split("+")).filter((id) => id !== "-") ?? [];
        expect(new Set(used).size).toBe(used.length);
        const here = new Set([
          ...bench.parts.map(({ id }) => id),
          ...deal.items.flatMap((item) => item.parts),
        ]);
        expect(used.filter((id) => gone.has(id) || !here.has(id))).toEqual([]);
      }),
      runs(80),
    );
    expect(built).toBeGreaterThan(10);
  });

  // Of building alone: a head that a new shaft completes waits for nothing any more, so that waiting, which may have been worth more, is closed.
  it("bears no less when the bench is given a shaft that a head of the listing needs", {
    timeout: 120_000,
  }, () => {
    const spare: Part[] = [
      {
        id: "Z-shaft",
        kind: "shaft",
        suits: "wood",
        flex: "regular",
        length: { lengthIn: 44.5, basis: "with-adapter" },
      },
      { id: "Z-adapter", kind: "adapter", family: "Quillon 2", hand: "right" },
      { id: "Z-grip", kind: "grip" },
    ];
    const given: Bench = {
      ...bench,
      parts: [...bench.parts, ...spare],
      joints: [
        ...(bench.joints ?? []),
        { type: "bonded", parts: ["Z-adapter", "Z-shaft"] },
        { type: "gripped", parts: ["Z-shaft", "Z-grip"] },
      ],
    };
    let compared = 0;
    fc.assert(
      fc.property(likelyItem, (item) => {
        const head: ListingItem = {
          ...item,
          kind: "head",
          quantity: 1,
          clubType: "driver",
          adapterFamily: "Quillon 2",
        };
        const listing: Listing = {
          ...{ intent: "sell", asking: null, negotiable: null, postage: "included" },
          ...{ items: [head], spans: [], doubts: [] },
        };
        const [without, withIt] = [bench, given].map((each) =>
          wayOf(judge(listing, { bench: each }), "build-now"),
        );
        if (without?.mostToPayMinor === null || without?.mostToPayMinor === undefined) return;
        compared += 1;
        expect(withIt?.mostToPayMinor ?? 0).toBeGreaterThanOrEqual(without.mostToPayMinor - 1);
      }),
      runs(30),
    );
    expect(compared).toBeGreaterThan(3);
  });
});

function sightingOf(listing: Listing, at: number): Sighting {
  const seenOn = `2026-10-${10 + at}`;
  return { id: `seen-${at}`, seenOn, text: "", read: listing, listing, outcome: "open" };
}

function deepFrozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    for (const each of Object.values(value)) deepFrozen(each);
    Object.freeze(value);
  }
  return value;
}
