import { emptyListing } from "../listing/empty-listing.ts";
import { type ReadyBench, readyBench, skillByDefault } from "../resolve/ready-bench.ts";
import { type DealContext, dealContext } from "../worth/deal-context.ts";
import { unsoldBench } from "../worth/unsold-bench.ts";
import { buildUses } from "./build-uses.ts";
import { mayWait } from "./may-wait.ts";
import { type MeaningfulUse, rolesOf } from "./meaningful-use.ts";
import { asOfferedUses, extrasOfHeads, offeredThings } from "./offered-things.ts";
import { type LeftOut, type Offer, offersOf } from "./offers.ts";
import { freedResources, type Parting, partingBundles, partingsOf } from "./parting.ts";
import type { PlanInput, PlanWishes } from "./plan-input.ts";
import type { PlanModel, PlanTrip, Resource, Share, Use } from "./plan-model.ts";
import { sellUses } from "./sell-uses.ts";
import { type StockType, stockTypes } from "./stock.ts";
import { waitUses } from "./wait-uses.ts";
import type { WantedThing } from "./wanted-things.ts";

/** A plan's model with what its names mean. */
export interface PlanSetup {
  readonly model: PlanModel;
  readonly types: readonly StockType[];
  readonly uses: ReadonlyMap<string, MeaningfulUse>;
  readonly offers: readonly Offer[];
  readonly leftOut: readonly LeftOut[];
  readonly context: DealContext;
  readonly wishes: PlanWishes;
  readonly partings: readonly Parting[];
  /** By the number of a wanted thing: the resources it would add to. */
  readonly wanted: ReadonlyMap<number, readonly string[]>;
}

/**
 * Makes the model of a plan. Wanted things are in it with a count of none, so that one of them can be added and the model
 * solved again. Throws when the bench does not hold together: whoever calls has checked it.
 */
export function planSetup(given: PlanInput, wanted: readonly WantedThing[] = []): PlanSetup {
  const input = withHours(given);
  const { bench, wishes } = input;
  const { offers, leftOut } = offersOf(input);
  const imagined = wanted.map(({ parts, joints }, at) => ({ id: wantedBundle(at), parts, joints }));
  const types = stockTypes({ parts: bench.parts, joints: bench.joints ?? [] }, [...offers, ...imagined]);
  const { ready, context } = shownBench(types, input);
  const partings = partingsOf(types, { ...input, skill: ready.graph.goal.skill ?? skillByDefault });
  const imaginedIds = new Set(imagined.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const things = offeredThings(offers, types);
  const roles = rolesOf(types);
  const desk = { ready, context, roles, partings, extras: extrasOfHeads(things) };
  const builds = buildUses({ ...desk, isImagined: (id) => imaginedIds.has(id) });
  const sells = sellUses(types, context, roles, partings);
  const waits = waitUses(types.filter(mayWait(types, [...builds, ...sells], offers)), desk);
  const uses = [...builds, ...sells, ...asOfferedUses(things, context, roles), ...waits.uses].filter((use) =>
    earnsEnough(use, input),
  );
  return {
    ...{ types, offers, leftOut, context, partings, wishes },
    wanted: new Map(wanted.map((_, at) => [at, resourcesOf(wantedBundle(at), types)])),
    uses: new Map(uses.map((use) => [use.id, use])),
    model: {
      resources: [...types.flatMap(resourcesOfType), ...freedResources(partings)],
      uses: uses.map(modelUse),
      bundles: [...offers.map((offer) => bundleOf(offer, types)), ...partingBundles(partings)],
      trips: tripsOf(offers),
      limits: {
        budgetMinor: wishes.budgetMinor,
        minutes: wishes.minutes,
        mostOfKind: { ...(wishes.mostOfType as Record<string, number>), ...waits.mostOfKind },
      },
    },
  };
}

/** What is there, with own hours counted as the user says. */
function withHours(input: PlanInput): PlanInput {
  const free = input.wishes.hours === "for-nothing";
  const costs = free ? { ...input.costs, hourValueMinor: 0 } : input.costs;
  return { ...input, bench: unsoldBench(input.bench), costs };
}

/** One of each sort of things made ready as a bench: what holds for it holds for all like it. */
function shownBench(
  types: readonly StockType[],
  input: PlanInput,
): { ready: ReadyBench; context: DealContext } {
  const bench = {
    ...input.bench,
    parts: types.flatMap(({ parts }) => [...parts]),
    joints: types.flatMap(({ joints }) => [...joints]),
  };
  const made = readyBench(bench, input.rules, input.reference);
  if (!made.ok) throw new Error(`the bench does not hold together: ${JSON.stringify(made.refusals[0])}`);
  return { ready: made.ready, context: dealContext({ ...input, listing: emptyListing, bench }) };
}

/** What the solver needs of a use, so that no more has to be carried to where it is solved. */
const modelUse = ({ id, takes, netMinor, minutes, outlayMinor, kind }: MeaningfulUse): Use => ({
  ...{ id, takes, netMinor, minutes, outlayMinor },
  ...(kind === undefined ? {} : { kind }),
});

const resourcesOfType = ({ id, parts, instances }: StockType): Resource[] =>
  parts.map((_, at) => ({ id: `${id}.${at}`, count: onBench(instances) }));

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

/** What a use brings for an hour, its own time not taken off. What is bought for it is not in it: no use has that alone. */
function earnsEnough({ netMinor, minutes }: MeaningfulUse, { wishes, costs }: PlanInput): boolean {
  if (wishes.leastPerHourMinor === null || minutes === 0) return true;
  const hours = minutes / 60;
  return netMinor + hours * costs.hourValueMinor >= wishes.leastPerHourMinor * hours;
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
    if (!known || known.minutes < trip.minutes) trips.set(trip.id, trip);
  }
  return [...trips.values()];
}
