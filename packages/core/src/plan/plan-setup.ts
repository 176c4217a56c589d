import { emptyListing } from "../listing/empty-listing.ts";
import { type ReadyBench, readyBench, skillByDefault } from "../resolve/ready-bench.ts";
import { type DealContext, dealContext } from "../worth/deal-context.ts";
import { unsoldBench } from "../worth/unsold-bench.ts";
import { clubsToBuild, usesOfClubs } from "./build-uses.ts";
import { dearerHours } from "./dearer-hours.ts";
import { keepUses } from "./keep-uses.ts";
import { leanModel } from "./lean-model.ts";
import { mayWait } from "./may-wait.ts";
import { type MeaningfulUse, rolesOf } from "./meaningful-use.ts";
import { asOfferedUses, extrasOfHeads, offeredThings } from "./offered-things.ts";
import { type LeftOut, type Offer, offersOf } from "./offers.ts";
import { freedResources, type Parting, partingBundles, partingsOf } from "./parting.ts";
import type { PlanInput, PlanWishes } from "./plan-input.ts";
import type { PlanModel, PlanTrip, Resource, Share, Use } from "./plan-model.ts";
import { sellUses } from "./sell-uses.ts";
import { type StockType, stockTypes } from "./stock.ts";
import { type Waits, waitUses } from "./wait-uses.ts";
import type { WantedThing } from "./wanted-things.ts";

/** All that a plan rests on but its limits: made once, and planned with under one limit after another. */
export interface PlanGround {
  readonly types: readonly StockType[];
  readonly uses: readonly MeaningfulUse[];
  readonly offers: readonly Offer[];
  readonly leftOut: readonly LeftOut[];
  /** One of each type, ready to be asked. */
  readonly ready: ReadyBench;
  readonly context: DealContext;
  readonly partings: readonly Parting[];
  readonly trips: readonly PlanTrip[];
  /** By the number of a wanted thing: the resources it would add to. */
  readonly wanted: ReadonlyMap<number, readonly string[]>;
  /** What there is, what can be done and what can be bought; of limits those alone that the user has no say in. */
  readonly model: PlanModel;
  /** The same without what is in no best choice under any limits. */
  readonly lean: PlanModel;
}

/** A plan's model with what its names mean. */
export interface PlanSetup extends Omit<PlanGround, "uses"> {
  readonly uses: ReadonlyMap<string, MeaningfulUse>;
  readonly wishes: PlanWishes;
}

/** Makes the model of a plan within what the user allows. */
export function planSetup(input: PlanInput, wanted: readonly WantedThing[] = []): PlanSetup {
  return setupWithin(planGround(input, wanted), input.wishes);
}

/**
 * Makes what a plan rests on; of the wishes only how hours count makes a difference to it. Wanted things are in the model with
 * a count of none, so that one of them can be added and the model solved again. With `waits` false nothing is kept for what
 * may come. Throws when the bench does not hold together: whoever calls has checked it.
 */
export function planGround(
  given: PlanInput,
  wanted: readonly WantedThing[] = [],
  { waits: withWaits }: { readonly waits: boolean } = { waits: true },
): PlanGround {
  const input = withHours(given);
  const { bench } = input;
  const { offers, leftOut } = offersOf(input);
  const imagined = wanted.map(({ parts, joints }, at) => ({ id: wantedBundle(at), parts, joints }));
  const types = stockTypes({ parts: bench.parts, joints: bench.joints ?? [] }, [...offers, ...imagined]);
  const { ready, context } = shownBench(types, input);
  const imaginedIds = new Set(imagined.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const isImagined = (id: string) => imaginedIds.has(id);
  const things = offeredThings(offers, types);
  const extras = extrasOfHeads(things);
  const clubs = clubsToBuild({ ready, context, isImagined, extras });
  const skill = ready.graph.goal.skill ?? skillByDefault;
  const partings = partingsOf(types, clubs, { ...input, skill });
  const roles = rolesOf(types);
  const desk = { ready, context, roles, partings, extras };
  const builds = usesOfClubs(clubs, { ...desk, isImagined });
  const sells = sellUses(types, context, roles, partings);
  const waits = waitsOf(input, withWaits);
  const uses = [...builds, ...sells, ...asOfferedUses(things, context, roles), ...waits.uses];
  const trips = tripsOf(offers);
  const model: PlanModel = {
    resources: [...types.flatMap(resourcesOfType), ...freedResources(partings)],
    uses: uses.map(modelUse),
    bundles: [...offers.map((offer) => bundleOf(offer, types)), ...partingBundles(partings)],
    trips,
    limits: { budgetMinor: null, minutes: null, mostOfKind: waits.mostOfKind },
  };
  return {
    ...{ types, uses, offers, leftOut, ready, context, partings, trips, model, lean: leanModel(model) },
    wanted: new Map(wanted.map((_, at) => [at, resourcesOf(wantedBundle(at), types)])),
  };

  function waitsOf({ prices }: PlanInput, isWanted: boolean): Waits {
    if (!isWanted) return noWaits;
    if (prices) return { ...noWaits, uses: keepUses(types, desk, prices) };
    return waitUses(types.filter(mayWait(types, [...builds, ...sells], offers)), desk);
  }
}

const noWaits: Waits = { uses: [], mostOfKind: {} };

/**
 * The same under limits. How hours count is not among them: that is another ground. Where an hour has to bring more than it
 * costs, the model counts it at that; what its uses bring stays as it is.
 */
export function setupWithin(ground: PlanGround, wishes: PlanWishes): PlanSetup {
  const { model, lean, context } = ground;
  const limits = {
    budgetMinor: wishes.budgetMinor,
    minutes: wishes.minutes,
    mostOfKind: { ...(wishes.mostOfType as Record<string, number>), ...model.limits.mostOfKind },
  };
  const morePerHourMinor = (wishes.leastPerHourMinor ?? 0) - context.costs.hourValueMinor;
  const within = dearerHours({ ...model, limits }, morePerHourMinor);
  return {
    ...ground,
    wishes,
    uses: new Map(ground.uses.map((use) => [use.id, use])),
    model: within,
    // By a minor unit that rounding takes, what was outdone may be as good with dearer hours.
    lean: morePerHourMinor > 0 ? within : { ...lean, limits },
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
