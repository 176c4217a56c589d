import { type Amount, capacities, mostTimes, type Packing } from "./packing.ts";

/** What one more of everything limited would bring; none is negative. */
export interface Prices {
  readonly resources: readonly number[];
  readonly budget: number;
  readonly minutes: number;
  readonly kinds: readonly number[];
  /** What a bundle pays towards its trip, for each of its like. */
  readonly trips: readonly number[];
}

export interface DualBound {
  /** No choice brings more. */
  readonly bound: number;
  /** What a use brings beyond what it takes at these prices; where negative, what a choice that has it lacks to the bound. */
  readonly beyond: readonly number[];
  readonly bundlesBeyond: readonly number[];
}

/**
 * The bound that prices prove: what there is at these prices, and what anything brings beyond them. By weak duality it holds
 * for any prices at all, so a solver that is a little out, or was stopped, makes it worse and never wrong.
 */
export function dualBound(packing: Packing, prices: Prices): DualBound {
  const { budget, minutes } = packing;
  const capacity = capacities(packing);
  const worth = (amounts: readonly Amount[]) =>
    amounts.reduce((sum, { resource, count }) => sum + count * (prices.resources[resource] ?? 0), 0);
  const spent = (what: { outlay: number; minutes: number }) =>
    what.outlay * prices.budget + what.minutes * prices.minutes;
  const beyond = packing.uses.map(
    (use) => use.net - worth(use.takes) - spent(use) - (prices.kinds[use.kind] ?? 0),
  );
  const bundlesBeyond = packing.bundles.map(
    (bundle, place) =>
      worth(bundle.gives) - bundle.cost - spent(bundle) - (bundle.trip < 0 ? 0 : (prices.trips[place] ?? 0)),
  );
  let bound = packing.resources.reduce(
    (sum, { count }, place) => sum + count * (prices.resources[place] ?? 0),
    0,
  );
  if (budget < Number.POSITIVE_INFINITY) bound += budget * prices.budget;
  if (minutes < Number.POSITIVE_INFINITY) bound += minutes * prices.minutes;
  packing.kinds.forEach(({ most }, place) => {
    bound += most * (prices.kinds[place] ?? 0);
  });
  packing.uses.forEach((use, place) => {
    const more = beyond[place] ?? 0;
    if (more > 0) bound += more * mostTimes(use, packing, capacity);
  });
  const towards = packing.trips.map((trip) => -trip.cost - spent(trip));
  packing.bundles.forEach(({ ids, trip }, place) => {
    bound += Math.max(0, bundlesBeyond[place] ?? 0) * ids.length;
    if (trip >= 0) towards[trip] = (towards[trip] ?? 0) + (prices.trips[place] ?? 0) * ids.length;
  });
  for (const more of towards) bound += Math.max(0, more);
  return { bound, beyond, bundlesBeyond };
}

/** Prices that need no solver: each use's net shared out evenly over what it takes, and the greatest share on each thing. */
export function plainPrices(packing: Packing): Prices {
  const share = packing.resources.map(() => 0);
  for (const { takes, net } of packing.uses) {
    const each = net / takes.reduce((sum, { count }) => sum + count, 0);
    for (const { resource } of takes) share[resource] = Math.max(share[resource] ?? 0, each);
  }
  return {
    resources: share,
    budget: 0,
    minutes: 0,
    kinds: packing.kinds.map(() => 0),
    trips: packing.bundles.map(() => 0),
  };
}

/** The bound as whole minor units, which every net is; a hair above a whole number counts as that number. */
export function wholeBound(bound: number): number {
  return Math.floor(bound + 1e-6 + Math.abs(bound) * 1e-11);
}
