import { describe, expect, it } from "vitest";
import { packedBundle, packedUse, packingOf } from "./packing.test-kit.ts";
import type { Packing } from "./packing.ts";
import { splitPacking } from "./split-packing.ts";

const apart = [packedUse("a", [0, 1], 5), packedUse("b", [2], 6)];
const partsOf = (given: Partial<Packing>) =>
  splitPacking(packingOf([1, 2, 3, 4], { uses: apart, ...given })).map(({ uses }) =>
    uses.map(({ id }) => id).join(" "),
  );
const timed = apart.map((use) => ({ ...use, minutes: 5, outlay: 5 }));

// Derived, no published source: what shares nothing limited can be solved apart.
describe("a packing", () => {
  it.each<[string, Partial<Packing>, string[]]>([
    ["whose uses share no thing", {}, ["a", "b"]],
    ["whose uses share a thing", { uses: [...apart, packedUse("c", [1, 2], 1)] }, ["a b c"]],
    ["of which a bundle gives things of both", { bundles: [packedBundle("x", [1, 2], 1)] }, ["a b"]],
    ["of which a bundle gives things of one", { bundles: [packedBundle("x", [0, 1], 1)] }, ["a", "b"]],
    ["whose minutes are limited and taken", { uses: timed, minutes: 9 }, ["a b"]],
    ["whose money is limited and taken", { uses: timed, budget: 9 }, ["a b"]],
    ["whose minutes are limited and not taken", { minutes: 9, budget: 9 }, ["a", "b"]],
    ["whose uses take time that is not limited", { uses: timed }, ["a", "b"]],
    ["of which both are of one kind", { uses: apart.map((use) => ({ ...use, kind: 0 })) }, ["a b"]],
    ["of which each has a kind", { uses: apart.map((use, kind) => ({ ...use, kind })) }, ["a", "b"]],
    ["of which nothing can be done", { uses: [] }, []],
  ])("%s", (_what, given, expected) => {
    const kinds = [
      { id: "driver", most: 1 },
      { id: "iron", most: 1 },
    ];
    expect(partsOf({ kinds, ...given })).toEqual(expected);
  });

  it("whose things are fetched on one drive stays whole, and on a drive each does not", () => {
    const trips = [0, 1].map((at) => ({ id: `t${at}`, cost: 1, outlay: 1, minutes: 1 }));
    const fetched = (other: number) => ({
      trips,
      bundles: [packedBundle("x", [0], 1, { trip: 0 }), packedBundle("y", [2], 1, { trip: other })],
    });
    expect(partsOf(fetched(0))).toEqual(["a b"]);
    expect(partsOf(fetched(1))).toEqual(["a", "b"]);
    expect(partsOf({ ...fetched(1), minutes: 9 })).toEqual(["a b"]);
    expect(partsOf({ ...fetched(1), budget: 9 })).toEqual(["a b"]);
  });

  it("gives each part its own things, drives and kinds under new places", () => {
    const [first, second] = splitPacking(
      packingOf([1, 2, 3], {
        uses: [packedUse("a", [0], 5), packedUse("b", [1, 2], 6, { kind: 1 })],
        bundles: [packedBundle("x", [2], 1, { trip: 1 })],
        trips: [0, 1].map((at) => ({ id: `t${at}`, cost: at, outlay: 0, minutes: 0 })),
        kinds: ["driver", "iron"].map((id) => ({ id, most: 1 })),
      }),
    );
    expect(first).toMatchObject({
      resources: [{ id: "r0", count: 1 }],
      uses: [{ id: "a", takes: [{ resource: 0, count: 1 }], kind: -1 }],
      ...{ bundles: [], trips: [], kinds: [] },
    });
    expect(second).toMatchObject({
      resources: [
        { id: "r1", count: 2 },
        { id: "r2", count: 3 },
      ],
      uses: [{ id: "b", takes: [{ resource: 0 }, { resource: 1 }], kind: 0 }],
      bundles: [{ ids: ["x"], gives: [{ resource: 1, count: 1 }], trip: 0 }],
      trips: [{ id: "t1" }],
      kinds: [{ id: "iron" }],
    });
  });
});
