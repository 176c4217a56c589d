import type { Amount, PackedBundle, PackedUse, Packing } from "./packing.ts";

/** One of each of these resources. */
export const oneOf = (...resources: readonly number[]): Amount[] =>
  resources.map((resource) => ({ resource, count: 1 }));

export const packedUse = (
  id: string,
  takes: readonly number[],
  net: number,
  more: Partial<PackedUse> = {},
) => ({
  ...{ id, takes: oneOf(...takes), net, minutes: 0, outlay: 0, kind: -1 },
  ...more,
});

export const packedBundle = (
  id: string,
  gives: readonly number[],
  cost: number,
  more: Partial<PackedBundle> = {},
): PackedBundle => ({
  ...{ ids: [id], gives: oneOf(...gives), cost, outlay: cost, minutes: 0, trip: -1 },
  ...more,
});

/** A packing of as many resources as there are counts, and without limits where none is given. */
export const packingOf = (counts: readonly number[], given: Partial<Packing> = {}): Packing => ({
  resources: counts.map((count, place) => ({ id: `r${place}`, count })),
  uses: [],
  bundles: [],
  trips: [],
  budget: Number.POSITIVE_INFINITY,
  minutes: Number.POSITIVE_INFINITY,
  kinds: [],
  ...given,
});
