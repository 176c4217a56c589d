import { describe, expect, it } from "vitest";
import { oneOf, packedBundle, packedUse, packingOf } from "./packing.test-kit.ts";
import { capacities, mostTimes } from "./packing.ts";

// Derived, no published source: counted by hand.
describe("what there can be of a resource", () => {
  it("is what lies there and what every bundle of its like gives", () => {
    const pairs = packedBundle("a", [], 5, { ids: ["a", "b", "c"], gives: [{ resource: 1, count: 2 }] });
    expect(capacities(packingOf([4, 1], { bundles: [pairs, packedBundle("d", [0, 1], 5)] }))).toEqual([5, 8]);
  });
});

describe("how often a use can be done", () => {
  const limited = packingOf([7, 9], { minutes: 100, budget: 50, kinds: [{ id: "driver", most: 2 }] });
  it.each([
    ["by the scarcer thing", packedUse("a", [0, 1], 1), 7],
    ["by a thing that it takes three of", packedUse("a", [], 1, { takes: [{ resource: 1, count: 3 }] }), 3],
    ["by whole times of a thing", packedUse("a", [], 1, { takes: [{ resource: 0, count: 2 }] }), 3],
    ["by the minutes", packedUse("a", [0], 1, { minutes: 33 }), 3],
    ["by minutes that come out even", packedUse("a", [0], 1, { minutes: 25 }), 4],
    ["by the money", packedUse("a", [0], 1, { outlay: 20 }), 2],
    ["by money that comes out even", packedUse("a", [0], 1, { outlay: 10 }), 5],
    ["by its kind", packedUse("a", [0], 1, { kind: 0 }), 2],
  ])("is told %s", (_what, use, times) => {
    expect(mostTimes(use, limited, [7, 9])).toBe(times);
  });

  it("is never where it takes what there is not, and a kind that is not known has no place", () => {
    expect(mostTimes(packedUse("a", [5], 1), limited, [7, 9])).toBe(0);
    expect(mostTimes(packedUse("a", [0], 1, { kind: 4 }), limited, [7, 9])).toBe(0);
    expect(oneOf(2, 3)).toEqual([
      { resource: 2, count: 1 },
      { resource: 3, count: 1 },
    ]);
  });
});
