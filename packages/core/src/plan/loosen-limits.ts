import { capacities, type PackedUse, type Packing } from "./packing.ts";

/** The packing without the limits on money, minutes and kinds that no choice can reach. */
export function loosenLimits(packing: Packing): Packing {
  const driven = new Set(packing.bundles.map(({ trip }) => trip));
  const bought = (of: "outlay" | "minutes") =>
    packing.bundles.reduce((sum, bundle) => sum + bundle[of] * bundle.ids.length, 0) +
    packing.trips.filter((_, place) => driven.has(place)).reduce((sum, trip) => sum + trip[of], 0);
  const loosen = (limit: number, most: number) => (most <= limit ? Number.POSITIVE_INFINITY : limit);
  const reachable = kindsReached(packing);
  const kept = packing.kinds.flatMap((kind, place) =>
    (reachable[place] ?? 0) <= kind.most ? [] : [{ kind, place }],
  );
  const placeNow = new Map(kept.map(({ place }, now) => [place, now]));
  return {
    ...packing,
    budget: loosen(packing.budget, mostOf(packing, ({ outlay }) => outlay) + bought("outlay")),
    minutes: loosen(packing.minutes, mostOf(packing, ({ minutes }) => minutes) + bought("minutes")),
    kinds: kept.map(({ kind }) => kind),
    uses: packing.uses.map((use) => ({ ...use, kind: placeNow.get(use.kind) ?? -1 })),
  };
}

function kindsReached(packing: Packing): number[] {
  return packing.kinds.map((_, place) => mostOf(packing, ({ kind }) => (kind === place ? 1 : 0)));
}

/**
 * No choice of uses amounts to more: each use's amount is shared out evenly over what it takes, and every single thing is
 * taken once at most, at best by the use that has the greatest share on it.
 */
function mostOf(packing: Packing, amountOf: (use: PackedUse) => number): number {
  const share = packing.resources.map(() => 0);
  for (const use of packing.uses) {
    const each = amountOf(use) / use.takes.reduce((sum, { count }) => sum + count, 0);
    for (const { resource } of use.takes) share[resource] = Math.max(share[resource] ?? 0, each);
  }
  const capacity = capacities(packing);
  const most = share.reduce((sum, each, resource) => sum + each * (capacity[resource] ?? 0), 0);
  return most * (1 + 1e-12);
}
