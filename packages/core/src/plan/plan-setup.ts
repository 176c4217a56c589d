import { type ReadyBench, readyBench } from "../resolve/ready-bench.ts";
import { type DealContext, dealContext } from "../worth/deal-context.ts";
import { unsoldBench } from "../worth/unsold-bench.ts";
import { emptyListing, type LeftOut, type Offer, offersOf } from "./offers.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanModel, PlanTrip, Share } from "./plan-model.ts";
import { buildUses, type MeaningfulUse, rolesOf, sellUses, waitUses } from "./plan-uses.ts";
import { type StockType, stockTypes } from "./stock.ts";
import type { WantedThing } from "./wanted-things.ts";

/** A plan's model with what its names mean. */
export interface PlanSetup {
  readonly model: PlanModel;
  readonly types: readonly StockType[];
  readonly uses: ReadonlyMap<string, MeaningfulUse>;
  readonly offers: readonly Offer[];
  readonly leftOut: readonly LeftOut[];
  readonly context: DealContext;
  readonly ready: ReadyBench;
  /** By the number of a wanted thing: the resources it would add to. */
  readonly wanted: ReadonlyMap<number, readonly string[]>;
}

/**
 * Makes the model of a plan. Wanted things are in it with a count of none, so that one of them can be added and the model
 * solved again. Throws when the bench does not hold together: whoever calls has checked it.
 */
export function planSetup(input: PlanInput, wanted: readonly WantedThing[] = []): PlanSetup {
  const bench = unsoldBench(input.bench);
  const costs = input.wishes.hours === "for-nothing" ? { ...input.costs, hourValueMinor: 0 } : input.costs;
  const { offers, leftOut } = offersOf({ ...input, costs });
  const imagined = wanted.map(({ parts, joints }, at) => ({ id: wantedBundle(at), parts, joints }));
  const types = stockTypes({ parts: bench.parts, joints: bench.joints ?? [] }, [...offers, ...imagined]);
  const shown = {
    ...bench,
    parts: types.flatMap(({ parts }) => [...parts]),
    joints: types.flatMap(({ joints }) => [...joints]),
  };
  const context = dealContext({ ...input, costs, listing: emptyListing, bench: shown });
  const made = readyBench({ ...shown, goal: { ...bench.goal, limit: 40 } }, input.rules, input.reference);
  if (!made.ok) throw new Error(`the bench does not hold together: ${JSON.stringify(made.refusals[0])}`);
  const imaginedIds = new Set(imagined.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const roles = rolesOf(types);
  const uses = [
    ...buildUses(made.ready, context, roles, (id) => imaginedIds.has(id)),
    ...sellUses(types, context, roles),
    ...waitUses(types, made.ready, context, roles),
  ].filter((use) => earnsEnough(use, input));
  return {
    types,
    offers,
    leftOut,
    context,
    ready: made.ready,
    wanted: new Map(wanted.map((_, at) => [at, resourcesOf(wantedBundle(at), types)])),
    uses: new Map(uses.map((use) => [use.id, use])),
    model: {
      resources: types.flatMap(({ id, parts, instances }) =>
        parts.map((_, at) => ({ id: `${id}.${at}`, count: onBench(instances) })),
      ),
      uses,
      bundles: offers.map((offer) => bundleOf(offer, types)),
      trips: tripsOf(offers),
      limits: {
        budgetMinor: input.wishes.budgetMinor,
        minutes: input.wishes.minutes,
        mostOfKind: input.wishes.mostOfType as Record<string, number>,
      },
    },
  };
}

/** Wanted things come as a bundle that nobody sells. */
const wantedBundle = (at: number) => `wanted ${at}`;

const resourcesOf = (bundle: string, types: readonly StockType[]) =>
  types.flatMap((type) =>
    type.instances.some((instance) => instance.bundle === bundle)
      ? type.parts.map((_, at) => `${type.id}.${at}`)
      : [],
  );

const onBench = (instances: StockType["instances"]) =>
  instances.filter(({ bundle }) => bundle === undefined).length;

function earnsEnough({ netMinor, minutes }: MeaningfulUse, { wishes, costs }: PlanInput): boolean {
  if (wishes.leastPerHourMinor === null || minutes === 0) return true;
  const ownTime = wishes.hours === "for-nothing" ? 0 : (minutes / 60) * costs.hourValueMinor;
  return ((netMinor + ownTime) / minutes) * 60 >= wishes.leastPerHourMinor;
}

function bundleOf({ id, priceMinor, trip }: Offer, types: readonly StockType[]) {
  const gives: Share[] = types.flatMap((type) => {
    const count = type.instances.filter(({ bundle }) => bundle === id).length;
    return count === 0 ? [] : type.parts.map((_, at) => ({ resource: `${type.id}.${at}`, count }));
  });
  return { id, gives, priceMinor, minutes: 0, timeMinor: 0, ...(trip ? { trip: trip.id } : {}) };
}

/** Of listings at one place the longest drive is the one that is driven. */
function tripsOf(offers: readonly Offer[]): PlanTrip[] {
  const trips = new Map<string, PlanTrip>();
  for (const { trip } of offers) {
    if (!trip) continue;
    const known = trips.get(trip.id);
    if (!known || known.moneyMinor < trip.moneyMinor) trips.set(trip.id, trip);
  }
  return [...trips.values()];
}
