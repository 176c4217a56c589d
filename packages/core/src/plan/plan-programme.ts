import type { Counts } from "./draft.ts";
import type { Prices } from "./dual-bound.ts";
import type { LinearProgramme } from "./linear-solver.ts";
import { capacities, mostTimes, type Packing } from "./packing.ts";

/** A linear programme of a packing, and how to read its columns and rows. Columns: the chosen uses, all bundles, all trips. */
export interface PlanProgramme {
  readonly programme: LinearProgramme;
  readonly places: readonly number[];
  readonly rows: readonly RowName[];
}

interface RowName {
  readonly of: "resources" | "kinds" | "trips" | "budget" | "minutes";
  /** Among those of its sort; the budget and the minutes are one each. */
  readonly place: number;
}

interface Row {
  readonly name: RowName;
  readonly most: number;
  readonly entries: { column: number; factor: number }[];
}

/** The programme over some of the uses, given by their places, in whole numbers or relaxed. */
export function planProgramme(packing: Packing, places: readonly number[], whole: boolean): PlanProgramme {
  const { bundles, trips } = packing;
  const capacity = capacities(packing);
  const bundleAt = places.length;
  const tripAt = bundleAt + bundles.length;
  const column = (cost: number, high: number) => ({ cost, bounds: { low: 0, high }, whole });
  const rows = emptyRows(packing);
  const uses = places.flatMap((place) => packing.uses[place] ?? []);
  uses.forEach((use, at) => {
    for (const { resource, count } of use.takes) rows.resources[resource]?.entries.push(entry(at, count));
    rows.kinds[use.kind]?.entries.push(entry(at, 1));
    spend(rows, at, use);
  });
  bundles.forEach((bundle, place) => {
    const at = bundleAt + place;
    for (const { resource, count } of bundle.gives) rows.resources[resource]?.entries.push(entry(at, -count));
    spend(rows, at, bundle);
    if (bundle.trip < 0) return;
    rows.trips[place]?.entries.push(entry(at, 1), entry(tripAt + bundle.trip, -bundle.ids.length));
  });
  trips.forEach((trip, place) => {
    spend(rows, tripAt + place, trip);
  });
  const kept = [...rows.resources, ...rows.kinds, ...rows.trips, rows.budget, rows.minutes].filter(
    ({ entries, most }) => entries.length > 0 && most < Number.POSITIVE_INFINITY,
  );
  return {
    places,
    rows: kept.map(({ name }) => name),
    programme: {
      columns: [
        ...uses.map((use) => column(use.net, mostTimes(use, packing, capacity))),
        ...bundles.map(({ cost, ids }) => column(-cost, ids.length)),
        ...trips.map(({ cost }) => column(-cost, 1)),
      ],
      rows: kept.map(({ most, entries }) => ({
        bounds: { low: Number.NEGATIVE_INFINITY, high: most },
        entries,
      })),
    },
  };
}

function entry(column: number, factor: number): { column: number; factor: number } {
  return { column, factor };
}

interface Rows {
  readonly resources: readonly Row[];
  readonly kinds: readonly Row[];
  readonly trips: readonly Row[];
  readonly budget: Row;
  readonly minutes: Row;
}

function emptyRows({ resources, kinds, bundles, budget, minutes }: Packing): Rows {
  return {
    resources: resources.map(({ count }, place) => ({
      name: { of: "resources", place },
      most: count,
      entries: [],
    })),
    kinds: kinds.map(({ most }, place) => ({ name: { of: "kinds", place }, most, entries: [] })),
    trips: bundles.map((_, place) => ({ name: { of: "trips", place }, most: 0, entries: [] })),
    budget: { name: { of: "budget", place: 0 }, most: budget, entries: [] },
    minutes: { name: { of: "minutes", place: 0 }, most: minutes, entries: [] },
  };
}

function spend(rows: Rows, at: number, { outlay, minutes }: { outlay: number; minutes: number }): void {
  if (outlay > 0) rows.budget.entries.push(entry(at, outlay));
  if (minutes > 0) rows.minutes.entries.push(entry(at, minutes));
}

/** The prices of the rows, those that came out a hair below zero as zero. */
export function pricesOf(packing: Packing, { rows }: PlanProgramme, values: readonly number[]): Prices {
  const prices = {
    resources: packing.resources.map(() => 0),
    kinds: packing.kinds.map(() => 0),
    trips: packing.bundles.map(() => 0),
    budget: 0,
    minutes: 0,
  };
  rows.forEach((name, row) => {
    const price = Math.max(0, values[row] ?? 0);
    if (name.of === "budget" || name.of === "minutes") prices[name.of] = price;
    else prices[name.of][name.place] = price;
  });
  return prices;
}

/** Values of columns as how often each use is done and each bundle bought, not yet whole. */
export function countsOf(packing: Packing, { places }: PlanProgramme, values: readonly number[]): Counts {
  const uses = packing.uses.map(() => 0);
  places.forEach((place, at) => {
    uses[place] = values[at] ?? 0;
  });
  return { uses, bundles: packing.bundles.map((_, place) => values[places.length + place] ?? 0) };
}

/** A choice as values of the columns; null where it has uses that the programme has not. */
export function valuesOf(
  packing: Packing,
  { places }: PlanProgramme,
  { uses, bundles }: Counts,
): number[] | null {
  const values = places.map((place) => uses[place] ?? 0);
  const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0);
  if (sum(values) !== sum(uses)) return null;
  const driven = packing.trips.map((_, trip) =>
    packing.bundles.some((bundle, place) => bundle.trip === trip && (bundles[place] ?? 0) > 0) ? 1 : 0,
  );
  return [...values, ...bundles, ...driven];
}
