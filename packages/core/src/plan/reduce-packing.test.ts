import { describe, expect, it } from "vitest";
import { dropDominated } from "./drop-dominated.ts";
import { loosenLimits } from "./loosen-limits.ts";
import { packedBundle, packedUse, packingOf } from "./packing.test-kit.ts";
import type { PackedUse, Packing } from "./packing.ts";
import { reducePacking } from "./reduce-packing.ts";

const idsOf = ({ uses }: Packing) => uses.map(({ id }) => id);
const kept = (uses: readonly PackedUse[], given: Partial<Packing> = {}) =>
  idsOf(dropDominated(packingOf([5, 5, 5], { uses, ...given })));
const better = packedUse("better", [0], 30);
const limits = { minutes: 60, budget: 100 };

// Derived, no published source: each row follows from what a limit and a better use are.
describe("a use that another does better", () => {
  it.each([
    ["brings less with the same", packedUse("worse", [0], 20), {}, ["better"]],
    ["brings as much with the same, under a later name", packedUse("bore", [0], 30), {}, ["better"]],
    ["brings less with more", packedUse("worse", [0, 1], 20), {}, ["better"]],
    ["brings more with more", packedUse("more", [0, 1], 31), {}, ["better", "more"]],
    ["brings less with something else", packedUse("else", [1], 20), {}, ["better", "else"]],
    ["takes less time where time is short", packedUse("quick", [0], 20), limits, ["better", "quick"]],
    ["takes less time where time is not", packedUse("quick", [0], 20), { budget: 100 }, ["better", "quick"]],
  ] as const)("that %s", (_what, other, given, expected) => {
    const slow = "minutes" in given ? { ...better, minutes: 30 } : { ...better, outlay: 5 };
    const first = "budget" in given ? slow : { ...better, minutes: 30, outlay: 5 };
    const uses = [other.id === "bore" ? { ...first, minutes: 30, outlay: 5 } : first, other];
    expect(kept(uses, given).sort()).toEqual([...(other.id === "bore" ? ["better"] : expected)].sort());
  });

  it("has to take as few of a thing, and be of no other kind", () => {
    const two = packedUse("two", [], 30, { takes: [{ resource: 0, count: 2 }] });
    expect(kept([two, packedUse("one", [0], 20)])).toEqual(["two", "one"]);
    expect(kept([{ ...better, kind: 1 }, packedUse("free", [0], 20)])).toEqual(["better", "free"]);
    expect(kept([{ ...better, kind: 1 }, packedUse("like", [0], 20, { kind: 1 })])).toEqual(["better"]);
    expect(kept([better, packedUse("counted", [0], 20, { kind: 1 })])).toEqual(["better"]);
  });

  it("may be two, one with each of its things", () => {
    const apart = [packedUse("head", [0], 30), packedUse("shaft", [1], 20)];
    expect(kept([...apart, packedUse("club", [0, 1], 50)])).toEqual(["head", "shaft"]);
    expect(kept([...apart, packedUse("club", [0, 1], 51)])).toEqual(["head", "shaft", "club"]);
    const counted = [packedUse("head", [0], 30, { kind: 0 }), packedUse("shaft", [1], 20)];
    expect(kept([...counted, packedUse("club", [0, 1], 50)])).toEqual(["head", "shaft", "club"]);
  });

  it("may not be two that take more time or money together", () => {
    const apart = [packedUse("head", [0], 30, limitsOf(20)), packedUse("shaft", [1], 20, limitsOf(20))];
    const club = (each: number) => packedUse("club", [0, 1], 50, limitsOf(each));
    expect(kept([...apart, club(40)], limits)).toEqual(["head", "shaft"]);
    expect(kept([...apart, club(39)], limits)).toEqual(["head", "shaft", "club"]);
    expect(kept([...apart, club(39)], { minutes: 60 })).toEqual(["head", "shaft", "club"]);
    expect(kept([...apart, club(39)], { budget: 100 })).toEqual(["head", "shaft", "club"]);
    expect(kept([...apart, club(39)])).toEqual(["head", "shaft"]);
  });
});

function limitsOf(each: number): { minutes: number; outlay: number } {
  return { minutes: each, outlay: each };
}

describe("a limit that no choice can reach", () => {
  const uses = [packedUse("a", [0], 9, { minutes: 10, outlay: 4, kind: 0 })];
  const bundles = [packedBundle("x", [0], 3, { ids: ["x", "y"], minutes: 5, trip: 0 })];
  const trips = [
    { id: "town", cost: 2, outlay: 2, minutes: 30 },
    { id: "nowhere", cost: 50, outlay: 50, minutes: 500 },
  ];
  // Two lie there and two can be bought: 4 × 10 + 2 × 5 + 30 minutes, 4 × 4 + 2 × 3 + 2 of money, four of the kind.
  const at = (minutes: number, budget: number, most: number) =>
    loosenLimits(packingOf([2], { uses, bundles, trips, minutes, budget, kinds: [{ id: "driver", most }] }));

  it("is none", () => {
    const loose = at(81, 25, 5);
    expect(loose).toMatchObject({
      minutes: Number.POSITIVE_INFINITY,
      budget: Number.POSITIVE_INFINITY,
      kinds: [],
    });
    expect(loose.uses[0]?.kind).toBe(-1);
  });

  it("is one where a choice can", () => {
    const tight = at(79, 23, 3);
    expect(tight).toMatchObject({ minutes: 79, budget: 23, kinds: [{ id: "driver", most: 3 }] });
    expect(tight.uses[0]?.kind).toBe(0);
  });

  it("is told kind by kind", () => {
    const kinds = [
      { id: "driver", most: 9 },
      { id: "iron", most: 1 },
    ];
    const both = [packedUse("a", [0], 9, { kind: 0 }), packedUse("b", [1], 9, { kind: 1 })];
    const loose = loosenLimits(packingOf([2, 2], { uses: both, kinds }));
    expect(loose.kinds).toEqual([{ id: "iron", most: 1 }]);
    expect(loose.uses.map(({ kind }) => kind)).toEqual([-1, 0]);
  });
});

describe("a packing made smaller", () => {
  const uses = [packedUse("sell", [0], 10)];
  const bundled = (cost: number, more: object = {}, given: Partial<Packing> = {}) =>
    reducePacking(packingOf([0], { uses, bundles: [packedBundle("x", [0], cost, more)], ...given }));

  it("leaves out uses that bring nothing or take what there is not", () => {
    const none = [packedUse("loss", [0], -1), packedUse("nothing", [0], 0), packedUse("lacks", [1], 5)];
    expect(idsOf(reducePacking(packingOf([1, 0], { uses: [...uses, ...none] })))).toEqual(["sell"]);
  });

  it("leaves out a bundle that costs what its things can bring, and what only it would give", () => {
    expect(bundled(9).bundles).toHaveLength(1);
    expect(bundled(10)).toMatchObject({ bundles: [], uses: [] });
  });

  it("leaves out a bundle that costs more than there is, its drive with it", () => {
    const trips = [{ id: "town", cost: 1, outlay: 3, minutes: 20 }];
    const drive = (budget: number, minutes: number) =>
      bundled(5, { trip: 0, minutes: 10 }, { trips, budget, minutes }).bundles.length;
    expect(drive(8, 30)).toBe(1);
    expect(drive(7, 30)).toBe(0);
    expect(drive(8, 29)).toBe(0);
  });

  it("leaves out what has to be fetched where all of it together is not worth the drive", () => {
    const trips = (cost: number) => ({ trips: [{ id: "town", cost, outlay: 0, minutes: 0 }] });
    expect(bundled(6, { trip: 0 }, trips(3)).bundles).toHaveLength(1);
    expect(bundled(6, { trip: 0 }, trips(4)).bundles).toHaveLength(0);
    expect(bundled(6, { trip: 0, ids: ["x", "y"] }, trips(7)).bundles).toHaveLength(1);
    expect(bundled(6, { trip: 0, ids: ["x", "y"] }, trips(8)).bundles).toHaveLength(0);
  });

  it("counts bundles that are alike, and tells those apart that are not", () => {
    const bundles = [packedBundle("x", [0], 5), packedBundle("y", [0], 5), packedBundle("z", [0], 6)];
    const reduced = reducePacking(packingOf([0], { uses, bundles }));
    expect(reduced.bundles.map(({ ids }) => ids)).toEqual([["x", "y"], ["z"]]);
  });
});
