import type { Amount, PackedBundle, PackedTrip, PackedUse, Packing } from "./packing.ts";
import type { Bundle, PlanModel, PlanTrip, Share, Use } from "./plan-model.ts";

/** The model with places for ids. A model that contradicts itself is a bug of the one who made it, and throws. */
export function readyPacking(model: PlanModel): Packing {
  const resources = byId("resource", model.resources);
  const trips = byId("trip", model.trips);
  const kinds = Object.entries(model.limits.mostOfKind)
    .map(([id, most]) => ({ id, most: wholeOf(most, `most of kind ${id}`) }))
    .sort((a, b) => inOrder(a.id, b.id));
  const places = {
    resource: placesOf(resources),
    trip: placesOf(trips),
    kind: placesOf(kinds),
  };
  return {
    resources: resources.map(({ id, count }) => ({ id, count: wholeOf(count, `count of ${id}`) })),
    uses: byId("use", model.uses).map((use) => packedUse(use, places)),
    bundles: byId("bundle", model.bundles).map((bundle) => packedBundle(bundle, places)),
    trips: trips.map(packedTrip),
    budget: limitOf(model.limits.budgetMinor, "budget"),
    minutes: limitOf(model.limits.minutes, "minutes"),
    kinds,
  };
}

/** The order of ids: by code unit, the same everywhere. */
export function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

type Places = ReadonlyMap<string, number>;
interface AllPlaces {
  readonly resource: Places;
  readonly trip: Places;
  readonly kind: Places;
}

function packedUse({ id, takes, netMinor, minutes, outlayMinor, kind }: Use, places: AllPlaces): PackedUse {
  const amounts = amountsOf(takes, places.resource, `use ${id}`);
  if (amounts.length === 0) throw new Error(`use ${id} takes nothing, so nothing would limit it`);
  return {
    id,
    takes: amounts,
    net: moneyOf(netMinor, `net of ${id}`),
    minutes: costOf(minutes, `minutes of ${id}`),
    outlay: costOf(moneyOf(outlayMinor, `outlay of ${id}`), `outlay of ${id}`),
    kind: (kind === undefined ? undefined : places.kind.get(kind)) ?? -1,
  };
}

function packedBundle(bundle: Bundle, places: AllPlaces): PackedBundle {
  const { id, gives, priceMinor, minutes, timeMinor, trip } = bundle;
  const price = costOf(moneyOf(priceMinor, `price of ${id}`), `price of ${id}`);
  return {
    ids: [id],
    gives: amountsOf(gives, places.resource, `bundle ${id}`),
    cost: price + costOf(moneyOf(timeMinor, `time of ${id}`), `time of ${id}`),
    outlay: price,
    minutes: costOf(minutes, `minutes of ${id}`),
    trip: trip === undefined ? -1 : placeOf(trip, places.trip, `bundle ${id}`),
  };
}

function packedTrip({ id, moneyMinor, minutes, timeMinor }: PlanTrip): PackedTrip {
  const money = costOf(moneyOf(moneyMinor, `money of ${id}`), `money of ${id}`);
  const time = costOf(moneyOf(timeMinor, `time of ${id}`), `time of ${id}`);
  return { id, cost: money + time, outlay: money, minutes: costOf(minutes, `minutes of ${id}`) };
}

function amountsOf(shares: readonly Share[], places: Places, whose: string): Amount[] {
  const counts = new Map<number, number>();
  for (const { resource, count } of shares) {
    const place = placeOf(resource, places, whose);
    counts.set(place, (counts.get(place) ?? 0) + wholeOf(count, `count of ${resource} in ${whose}`));
  }
  return [...counts]
    .filter(([, count]) => count > 0)
    .sort(([a], [b]) => a - b)
    .map(([resource, count]) => ({ resource, count }));
}

function byId<T extends { readonly id: string }>(what: string, things: readonly T[]): T[] {
  const sorted = [...things].sort((a, b) => inOrder(a.id, b.id));
  const twice = sorted.find(({ id }, place) => sorted[place + 1]?.id === id);
  if (twice !== undefined) throw new Error(`there are two of ${what} ${twice.id}`);
  return sorted;
}

function placesOf(things: readonly { readonly id: string }[]): Places {
  return new Map(things.map(({ id }, place) => [id, place]));
}

function placeOf(id: string, places: Places, whose: string): number {
  const place = places.get(id);
  if (place === undefined) throw new Error(`${whose} names ${id}, which the model does not have`);
  return place;
}

function limitOf(limit: number | null, what: string): number {
  return limit === null ? Number.POSITIVE_INFINITY : costOf(limit, what);
}

function wholeOf(value: number, what: string): number {
  if (!Number.isSafeInteger(value) || value < 0) throw new Error(`${what} is ${value}, not a count`);
  return value;
}

function moneyOf(value: number, what: string): number {
  if (!Number.isSafeInteger(value)) throw new Error(`${what} is ${value}, not whole minor units`);
  return value;
}

function costOf(value: number, what: string): number {
  if (!Number.isFinite(value) || value < 0) throw new Error(`${what} is ${value}, not zero or more`);
  return value;
}
