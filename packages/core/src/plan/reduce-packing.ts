import { dropDominated } from "./drop-dominated.ts";
import { loosenLimits } from "./loosen-limits.ts";
import { capacities, mostTimes, type PackedBundle, type Packing } from "./packing.ts";

/** The same packing without what provably cannot make it better, alike bundles counted. Its best is the best of the whole. */
export function reducePacking(packing: Packing): Packing {
  let reduced = loosenLimits(packing);
  // What one round drops lets the next see more; after a few rounds there is little left to gain.
  for (let round = 0; round < 4; round += 1) {
    const next = loosenLimits(dropBundles(dropDominated(dropImpossible(reduced))));
    const same = next.uses.length === reduced.uses.length && next.bundles.length === reduced.bundles.length;
    reduced = next;
    if (same) break;
  }
  return mergeBundles(reduced);
}

function dropImpossible(packing: Packing): Packing {
  const capacity = capacities(packing);
  const uses = packing.uses.filter((use) => use.net > 0 && mostTimes(use, packing, capacity) >= 1);
  return { ...packing, uses };
}

/**
 * A bundle whose things are worth less than it costs even if each went to the use that brings most goes. Giving back one
 * thing costs at most one use that takes it, so without the bundle a choice brings at most that much less.
 */
function dropBundles(packing: Packing): Packing {
  const highest = packing.resources.map(() => 0);
  for (const { takes, net } of packing.uses) {
    for (const { resource } of takes) highest[resource] = Math.max(highest[resource] ?? 0, net);
  }
  const gainOf = ({ gives, cost }: PackedBundle) =>
    gives.reduce((sum, { resource, count }) => sum + count * (highest[resource] ?? 0), 0) - cost;
  const paying = packing.bundles.filter((bundle) => gainOf(bundle) > 0 && affordable(bundle, packing));
  const ofTrip = packing.trips.map(() => 0);
  for (const bundle of paying)
    if (bundle.trip >= 0)
      ofTrip[bundle.trip] = (ofTrip[bundle.trip] ?? 0) + gainOf(bundle) * bundle.ids.length;
  const bundles = paying.filter(
    ({ trip }) => trip < 0 || (ofTrip[trip] ?? 0) > (packing.trips[trip]?.cost ?? 0),
  );
  return { ...packing, bundles };
}

function affordable({ trip, outlay, minutes }: PackedBundle, packing: Packing): boolean {
  const drive = packing.trips[trip];
  return (
    outlay + (drive?.outlay ?? 0) <= packing.budget && minutes + (drive?.minutes ?? 0) <= packing.minutes
  );
}

function mergeBundles(packing: Packing): Packing {
  const merged = new Map<string, PackedBundle>();
  for (const bundle of packing.bundles) {
    const { ids, ...rest } = bundle;
    const key = JSON.stringify(rest);
    merged.set(key, { ...bundle, ids: [...(merged.get(key)?.ids ?? []), ...ids] });
  }
  return { ...packing, bundles: [...merged.values()] };
}
