/** So many of one resource, which is named by its place in the packing. */
export interface Amount {
  readonly resource: number;
  readonly count: number;
}

export interface PackedUse {
  readonly id: string;
  readonly takes: readonly Amount[];
  readonly net: number;
  readonly minutes: number;
  readonly outlay: number;
  /** The kind's place, or −1. */
  readonly kind: number;
}

/** Bundles that differ in nothing but their ids. */
export interface PackedBundle {
  readonly ids: readonly string[];
  readonly gives: readonly Amount[];
  /** What one costs in money and time together. */
  readonly cost: number;
  readonly outlay: number;
  readonly minutes: number;
  /** The trip's place, or −1. */
  readonly trip: number;
}

export interface PackedTrip {
  readonly id: string;
  readonly cost: number;
  readonly outlay: number;
  readonly minutes: number;
}

/**
 * A plan model, or a part of one that can be solved apart, with places for ids and everything in the order of ids, so that
 * the answer does not depend on the order in which things came. Limits that do not limit are ∞. All money in minor units.
 */
export interface Packing {
  readonly resources: readonly { readonly id: string; readonly count: number }[];
  readonly uses: readonly PackedUse[];
  readonly bundles: readonly PackedBundle[];
  readonly trips: readonly PackedTrip[];
  readonly budget: number;
  readonly minutes: number;
  readonly kinds: readonly { readonly id: string; readonly most: number }[];
}

/** The most there can be of each resource: what there is and what all bundles give. */
export function capacities({ resources, bundles }: Packing): number[] {
  const most = resources.map(({ count }) => count);
  for (const { ids, gives } of bundles) {
    for (const { resource, count } of gives) most[resource] = (most[resource] ?? 0) + count * ids.length;
  }
  return most;
}

/** How often a use can be done at most when it has everything for itself. */
export function mostTimes(use: PackedUse, packing: Packing, capacity: readonly number[]): number {
  let times = use.kind < 0 ? Number.POSITIVE_INFINITY : (packing.kinds[use.kind]?.most ?? 0);
  for (const { resource, count } of use.takes)
    times = Math.min(times, Math.floor((capacity[resource] ?? 0) / count));
  if (use.minutes > 0) times = Math.min(times, Math.floor(packing.minutes / use.minutes + 1e-9));
  if (use.outlay > 0) times = Math.min(times, Math.floor(packing.budget / use.outlay));
  return times;
}
