import { describe, expect, it } from "vitest";
import { dualBound, plainPrices, wholeBound } from "./dual-bound.ts";
import { guideOf, scoresByNet, scoresByScarcity, scoresByTime } from "./guide.ts";
import { packedBundle, packedUse, packingOf } from "./packing.test-kit.ts";

const uses = [
  packedUse("a", [0], 10, { minutes: 9 }),
  packedUse("b", [0, 1], 30, { minutes: 2 }),
  packedUse("c", [1], 20, { minutes: 1 }),
];
const packing = packingOf([1, 1], { uses });

// Derived, no published source: reckoned by hand.
describe("the order in which a search looks at uses", () => {
  it("is by score, then by what they bring, then as they stand", () => {
    expect(guideOf(packing, [1, 3, 2]).order).toEqual([1, 2, 0]);
    expect(guideOf(packing, [1, 1, 1]).order).toEqual([1, 2, 0]);
    expect(guideOf(packing, [1, 1, 1.00001]).order).toEqual([1, 2, 0]);
    const alike = packingOf([1, 1], { uses: uses.map((use) => ({ ...use, net: 5 })) });
    expect(guideOf(alike, [1, 1, 1]).order).toEqual([0, 1, 2]);
  });

  it("is kept for each thing that they take", () => {
    expect(guideOf(packing, [1, 3, 2]).byResource).toEqual([
      [1, 0],
      [1, 2],
    ]);
  });

  it("may go by what a use brings, or by the minute", () => {
    expect(scoresByNet(packing)).toEqual([10, 30, 20]);
    expect(scoresByTime(packing)).toEqual([1, 10, 10]);
  });

  it("may go by what a use brings for what it takes of scarce things", () => {
    // 10 + 30 want the one and 30 + 20 the other, of which there is one of each: 20 and 25, on the mean 22.5.
    const scores = scoresByScarcity(packing);
    const expected = [10 / (0.1 + 20 / 22.5), 30 / (0.1 + 2), 20 / (0.1 + 25 / 22.5)];
    expected.forEach((score, at) => {
      expect(scores[at]).toBeCloseTo(score, 9);
    });
    const limited = scoresByScarcity({ ...packing, minutes: 89, budget: 49, uses: uses.map(paid) });
    const share = 3 * 0.01 * (9 / 90 + 5 / 50);
    expect(limited[0]).toBeCloseTo(10 / (0.1 + 20 / 22.5 + share), 9);
  });
});

const paid = <T extends object>(use: T) => ({ ...use, outlay: 5 });

// Weak duality (Dantzig 1963, ch. 6): no choice brings more than the bound at any prices.
describe("the bound that prices prove", () => {
  const bought = packingOf([2, 1], {
    uses: uses.map((use) => ({ ...use, outlay: 4, kind: 0 })),
    bundles: [packedBundle("x", [1], 6, { ids: ["x", "y"], minutes: 3, outlay: 6, trip: 0 })],
    trips: [{ id: "town", cost: 5, outlay: 2, minutes: 7 }],
    budget: 100,
    minutes: 50,
    kinds: [{ id: "driver", most: 2 }],
  });
  const prices = { resources: [4, 8], budget: 0.5, minutes: 0.25, kinds: [3], trips: [1] };

  it("is what there is at these prices and what anything brings beyond them", () => {
    const { bound, beyond, bundlesBeyond } = dualBound(bought, prices);
    // 10 − 4 − (4 × 0.5 + 9 × 0.25) − 3, 30 − 12 − (2 + 0.5) − 3, 20 − 8 − (2 + 0.25) − 3.
    expect(beyond).toEqual([-1.25, 12.5, 6.75]);
    // 8 − 6 − (6 × 0.5 + 3 × 0.25) − 1.
    expect(bundlesBeyond).toEqual([-2.75]);
    // 2 × 4 + 8 of things, 50 of money, 12.5 of minutes, 2 × 3 of the kind, the use that has most beyond it twice and the
    // other twice; the drive owes 5 + 2 × 0.5 + 7 × 0.25 and gets 2 × 1 towards it, so it adds nothing.
    expect(bound).toBe(2 * 4 + 8 + 50 + 12.5 + 6 + 2 * 12.5 + 2 * 6.75);
  });

  it("counts a bundle and a drive that bring something beyond them", () => {
    const dear = { resources: [4, 20], budget: 0, minutes: 0, kinds: [0], trips: [6] };
    // Things 8 + 20, a twice 6 beyond, b twice 6, c nothing; each bundle 20 − 6 − 6 = 8, the drive 2 × 6 − 5 = 7.
    expect(dualBound(bought, dear).bound).toBe(28 + 2 * 6 + 2 * 6 + 2 * 8 + 7);
  });

  it("counts no limit that there is not", () => {
    const free = { ...bought, budget: Number.POSITIVE_INFINITY, minutes: Number.POSITIVE_INFINITY };
    expect(dualBound(free, { ...prices, budget: 0, minutes: 0 }).bound).toBeLessThan(
      Number.POSITIVE_INFINITY,
    );
  });

  it("has plain prices, each use's net shared out over what it takes", () => {
    expect(plainPrices(packing)).toEqual({
      resources: [15, 20],
      budget: 0,
      minutes: 0,
      kinds: [],
      trips: [],
    });
    expect(dualBound(packing, plainPrices(packing)).bound).toBe(35);
  });

  it("is a whole number, for every net is", () => {
    expect(wholeBound(12.4)).toBe(12);
    expect(wholeBound(11.9999999)).toBe(12);
    expect(wholeBound(12.99)).toBe(12);
    expect(wholeBound(-0.5)).toBe(-1);
  });
});
