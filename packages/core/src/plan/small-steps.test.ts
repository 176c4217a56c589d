import { describe, expect, it } from "vitest";
import { aListing, anItem, euros } from "../worth/deal.test-kit.ts";
import type { Sighting } from "../worth/sighting.ts";
import { dearerHours } from "./dearer-hours.ts";
import { grouped } from "./grouped.ts";
import { leftOfListing } from "./left-of-listing.ts";
import { rolesOf, sharesOf } from "./meaningful-use.ts";
import type { PlanModel } from "./plan-model.ts";
import { isAgain, seenAgain, weeksCountedOn } from "./seen-again.ts";
import type { StockType } from "./stock.ts";
import { isWhole, rounded } from "./whole-counts.ts";

const listing = aListing([anItem(), anItem({ kind: "shaft" }), anItem({ kind: "grip" })], {
  asking: euros(9000),
});
const seen = (given: Partial<Sighting>) => ({ id: "s1", listing, ...given }) as Sighting;

describe("a listing of which something was bought", () => {
  it("offers the rest at no price for the whole", () => {
    const left = leftOfListing(seen({ boughtItems: [1] }));
    expect(left.items.map(({ kind }) => kind)).toEqual(["head", "grip"]);
    expect(left.asking).toBeNull();
  });

  it("is the listing itself where nothing was", () => {
    expect(leftOfListing(seen({ boughtItems: [] }))).toBe(listing);
    expect(leftOfListing(seen({}))).toBe(listing);
  });
});

describe("listings seen again", () => {
  const on = (seenOn: string) => seenAgain([seen({ seenOn, outcome: "gone" })], "2026-11-25");

  it("are on offer under names of their own", () => {
    const [again] = on("2026-11-20");
    expect(again).toMatchObject({ outcome: "open", seenOn: "2026-11-20", listing });
    expect([isAgain(again?.id ?? ""), isAgain("s1")]).toEqual([true, false]);
    expect(again?.id).toContain("s1");
  });

  it("are those of the last quarter, and none of today", () => {
    expect(weeksCountedOn * 7).toBe(91);
    const counted = ["2026-08-25", "2026-08-26", "2026-11-24", "2026-11-25"].map((day) => on(day).length);
    expect(counted).toEqual([0, 1, 1, 0]);
  });
});

describe("dearer hours", () => {
  const model = {
    resources: [],
    uses: [{ id: "u", takes: [], netMinor: 1000, minutes: 90, outlayMinor: 5 }],
    bundles: [{ id: "b", gives: [], priceMinor: 7, minutes: 30, timeMinor: 100 }],
    trips: [{ id: "t", moneyMinor: 8, minutes: 45, timeMinor: 200 }],
    limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
  } satisfies PlanModel;

  // Derived, no published source: 400 more for an hour are 600 for 90 minutes, 200 for 30 and 300 for 45.
  it("cost every use, purchase and drive more by its minutes", () => {
    const dearer = dearerHours(model, 400);
    expect(dearer.uses).toEqual([{ ...model.uses[0], netMinor: 400 }]);
    expect(dearer.bundles).toEqual([{ ...model.bundles[0], timeMinor: 300 }]);
    expect(dearer.trips).toEqual([{ ...model.trips[0], timeMinor: 500 }]);
  });

  it("are whole minor units, rounded once", () => {
    expect(dearerHours(model, 101).uses[0]?.netMinor).toBe(848);
  });

  it("change nothing where they are no dearer, and are never cheaper", () => {
    expect(dearerHours(model, 0)).toBe(model);
    expect(dearerHours(model, -50)).toBe(model);
  });
});

describe("things by a key", () => {
  it("keep the order in which keys and things came", () => {
    const groups = grouped(["beta", "alpha", "bravo", "apex"], (word) => word[0]);
    expect([...groups]).toEqual([
      ["b", ["beta", "bravo"]],
      ["a", ["alpha", "apex"]],
    ]);
  });
});

describe("counts of a solver", () => {
  it("are whole but for its error", () => {
    expect(isWhole({ uses: [1, 2.0000001], bundles: [0] })).toBe(true);
    expect(isWhole({ uses: [1, 2.001], bundles: [0] })).toBe(false);
    expect(isWhole({ uses: [1], bundles: [0.5] })).toBe(false);
    expect(rounded({ uses: [0.9999999, 2.4], bundles: [0.6] })).toEqual({ uses: [1, 2], bundles: [1] });
  });
});

describe("the resource behind a part", () => {
  const types = [
    { id: "t1", parts: [{ id: "H" }, { id: "A" }] },
    { id: "t2", parts: [{ id: "S" }] },
  ] as unknown as StockType[];

  it("is its type and its place in it", () => {
    const roles = rolesOf(types);
    expect([...roles]).toEqual([
      ["H", "t1.0"],
      ["A", "t1.1"],
      ["S", "t2.0"],
    ]);
    expect(sharesOf(["A", "S"], roles)).toEqual([
      { resource: "t1.1", count: 1 },
      { resource: "t2.0", count: 1 },
    ]);
  });

  it("has to be there", () => {
    expect(() => sharesOf(["X"], rolesOf(types))).toThrow("X stands for nothing");
  });
});
