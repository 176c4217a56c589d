import { describe, expect, it } from "vitest";

/** The simulation is plain JavaScript: what is used of it here. */
interface Thing {
  readonly head?: { readonly id: string };
  readonly shaft?: { readonly id: string };
  readonly adapter?: { readonly id: string };
}
interface Ledger {
  readonly things: ReadonlySet<Thing>;
  readonly sold: readonly { readonly thing: Thing; readonly result: { readonly leftMinor: number } }[];
  readonly underWay: readonly { readonly thing: Thing }[];
  readonly state: {
    readonly cashMinor: number;
    readonly boughtMinor: number;
    readonly materialMinor: number;
    readonly weekMinutes: number;
  };
  readonly buy: (listing: Listing, priceMinor: number) => Thing;
}
interface Listing {
  readonly id: string;
  readonly day: number;
  readonly goods: Thing;
  readonly askingMinor: number;
  readonly leastMinor: number;
  readonly postageMinor: number;
}
interface Evening {
  readonly day: number;
  readonly ledger: Ledger;
  readonly open: readonly Listing[];
}
type Policy = (evening: Evening) => void | Promise<void>;
interface Year {
  readonly listings: readonly Listing[];
  readonly start: { readonly cashMinor: number; readonly minutesPerWeek: number };
}
interface Lived {
  readonly cashMinor: number;
  readonly revenueMinor: number;
  readonly boughtMinor: number;
  readonly materialMinor: number;
}

const load = async (name: string) => import(new URL(`../../bench/market/${name}.mjs`, import.meta.url).href);
const { yearOf } = (await load("world")) as { yearOf: (seed: number, days: number) => Year };
const { livedYear } = (await load("year")) as { livedYear: (policy: Policy, year: Year) => Promise<Lived> };
const { openLedger } = (await load("ledger")) as { openLedger: (start: object) => Ledger };
const { costs, reference } = (await load("world")) as { costs: object; reference: { work: object } };
const { simplePolicy } = (await load("tune")) as {
  simplePolicy: (name: string, settings: object) => Policy;
};

const days = 31;
const seeds = [1, 2, 3, 4, 5, 6];
const policies = {
  "a fixed price by model": () =>
    simplePolicy("fixed price by model", { by: "model", headShare: 0.3, shaftShare: 0.4, patienceDays: 14 }),
  "a fixed price for all": () =>
    simplePolicy("fixed price", { by: "all", headShare: 0.4, shaftShare: 0.5, patienceDays: 7 }),
  "what completes a club today": () => simplePolicy("completes today", { share: 0.9 }),
};

const idsIn = ({ head, shaft, adapter }: Thing) => [head, shaft, adapter].flatMap((part) => part?.id ?? []);

describe.each(Object.entries(policies))("a month by %s", (_name, make) => {
  it.each(seeds)("keeps every part in one place, and every cent accounted for (seed %i)", async (seed) => {
    const year = yearOf(seed, days);
    const policy = make();
    const bought = new Set<string>();
    const scrapped = new Set<string>();
    let last: Ledger | undefined;
    const lived = await livedYear(async (evening) => {
      const { ledger } = evening;
      const buy = (listing: Listing, priceMinor: number) => {
        for (const id of idsIn(listing.goods)) bought.add(id);
        return ledger.buy(listing, priceMinor);
      };
      const scrap = (thing: Thing) => {
        for (const id of idsIn(thing)) scrapped.add(id);
        (ledger as unknown as { scrap: (thing: Thing) => void }).scrap(thing);
      };
      await policy({ ...evening, ledger: { ...ledger, buy, scrap } as Ledger });
      const places = [
        ...[...ledger.things].flatMap(idsIn),
        ...[...ledger.underWay, ...ledger.sold].flatMap(({ thing }) => idsIn(thing)),
        ...scrapped,
      ];
      expect(places.toSorted()).toEqual([...bought].sort());
      const earned = ledger.sold.reduce((sum, { result }) => sum + result.leftMinor, 0);
      const { cashMinor, boughtMinor, materialMinor, weekMinutes } = ledger.state;
      expect(cashMinor).toBe(year.start.cashMinor + earned - boughtMinor - materialMinor);
      expect(cashMinor).toBeGreaterThanOrEqual(0);
      expect(weekMinutes).toBeLessThanOrEqual(year.start.minutesPerWeek);
      last = ledger;
    }, year);
    expect(last).toBeDefined();
    expect(lived.cashMinor).toBe(
      year.start.cashMinor + lived.revenueMinor - lived.boughtMinor - lived.materialMinor,
    );
  });
});

describe("the market", () => {
  it("is the same from the same seed, and another from another", () => {
    expect(yearOf(5, days)).toEqual(yearOf(5, days));
    expect(yearOf(5, days).listings).not.toEqual(yearOf(6, days).listings);
  });

  it("sells nothing to somebody who has not the money, nor under what the seller takes", () => {
    const [listing] = yearOf(1, days).listings;
    if (!listing) throw new Error("nothing was offered");
    const poor = openLedger({ cashMinor: 100, minutesPerWeek: 60, costs, work: reference.work });
    expect(() => poor.buy(listing, listing.askingMinor)).toThrow("no money");
    const rich = openLedger({ cashMinor: 100_000, minutesPerWeek: 60, costs, work: reference.work });
    expect(() => rich.buy(listing, listing.leastMinor - 1)).toThrow("does not take so little");
    expect(rich.state.cashMinor).toBe(100_000);
  });
});
