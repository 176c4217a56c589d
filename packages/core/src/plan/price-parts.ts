import type { Part } from "../parts/part.ts";
import { convertedMinor } from "../worth/converted.ts";
import type { PlanPrices } from "../worth/plan-prices.ts";
import { keepThings } from "./keep-things.ts";
import type { LinearProgramme, LinearSolver } from "./linear-solver.ts";
import type { Packing } from "./packing.ts";
import type { PlanInput, PlanWishes } from "./plan-input.ts";
import type { Bundle, PlanModel } from "./plan-model.ts";
import { type PlanProgramme, planProgramme, pricesOf } from "./plan-programme.ts";
import { type PlanGround, planGround } from "./plan-setup.ts";
import { readyPacking } from "./ready-packing.ts";
import { isAgain, seenAgain } from "./seen-again.ts";
import type { StockType } from "./stock.ts";

/** Fewer listings than this in the weeks that are counted on tell nothing of what comes. From memory. */
const fewestSeen = 20;
const seconds = 20;

const withoutLimits: PlanWishes = {
  ...{ budgetMinor: null, minutes: null, mostOfType: {} },
  ...{ hours: "at-own-rate", leastPerHourMinor: null },
};

/**
 * Prices every part by the relaxed plan over what is on the bench and the listings of the last weeks as if they came again: the
 * method of K. Talluri and G. van Ryzin, "A randomized linear programming method for computing network bid prices",
 * Transportation Science 33 (1999), with what was really seen in the place of what is drawn. Nothing where too few listings
 * were seen to tell, or where the solver gives no answer.
 */
export async function priceParts(
  input: Omit<PlanInput, "wishes">,
  solver: LinearSolver,
): Promise<PlanPrices | undefined> {
  const again = seenAgain(input.sightings, input.today);
  if (again.length < fewestSeen) return undefined;
  const onOffer = input.sightings.filter(({ outcome }) => outcome === "open");
  const ground = planGround({ ...input, sightings: [...again, ...onOffer], wishes: withoutLimits }, [], {
    waits: false,
  });
  const priceOf = await relaxedPrices(countedOn(ground), solver);
  if (!priceOf) return undefined;
  const known = pricesOfParts(ground.types, priceOf);
  return {
    ofPart: (id) => known.get(id),
    keep: keepThings(ground, { priceOf, dearerBy: dearerBy(ground, priceOf) }),
  };
}

type PriceOf = (resource: string) => number;

async function relaxedPrices(model: PlanModel, solver: LinearSolver): Promise<PriceOf | undefined> {
  const packing = readyPacking(model);
  const made = planProgramme(
    packing,
    packing.uses.map((_, place) => place),
    false,
  );
  const answer = await solver(limitedByStock(made, packing), { seconds, relativeGap: 0 });
  if (answer.status !== "best" || !answer.prices) return undefined;
  const { resources } = pricesOf(packing, made, answer.prices);
  const byId = new Map(packing.resources.map(({ id }, place) => [id, resources[place] ?? 0]));
  return (id) => byId.get(id) ?? 0;
}

/**
 * The programme with nothing but what there is, and what was seen, to limit how often anything is done: a limit of its own, on
 * building one club or on taking one apart, would take the price of the parts that it stands for.
 */
function limitedByStock({ programme, places }: PlanProgramme, { bundles }: Packing): LinearProgramme {
  const unlimited = { low: 0, high: Number.POSITIVE_INFINITY };
  const isBought = (at: number) => bundles[at - places.length]?.ids.some(isAgain) ?? false;
  const columns = programme.columns.map((column, at) =>
    isBought(at) || at >= places.length + bundles.length ? column : { ...column, bounds: unlimited },
  );
  return { ...programme, columns };
}

/**
 * What can be counted on. What is on offer today is somebody else's, and priced as one more of its sort. Grips are bought as they
 * are needed, at what those in the box have cost, or at what they would bring if that is more.
 */
function countedOn({ model, types, offers, context }: PlanGround): PlanModel {
  const loose = types.filter(({ parts }) => parts.length === 1 && parts[0]?.kind === "grip");
  const grips: Bundle[] = loose.map(({ id, parts }) => {
    const { paid } = parts[0] as Part;
    const resource = `${id}.0`;
    const priceMinor = Math.max((paid && convertedMinor(paid, context.costs)) ?? 0, soldFor(resource, model));
    return {
      ...{ id: `more of ${id}`, gives: [{ resource, count: 1 }] },
      ...{ priceMinor, minutes: 0, timeMinor: 0 },
    };
  });
  const onOffer = new Set(offers.flatMap(({ id }) => (isAgain(id) ? [] : id)));
  return { ...model, bundles: [...model.bundles.filter(({ id }) => !onOffer.has(id)), ...grips] };
}

/** What a part alone would bring. */
function soldFor(resource: string, { uses }: PlanModel): number {
  const alone = uses.filter(({ takes }) => takes.length === 1 && takes[0]?.resource === resource);
  return Math.max(0, ...alone.map(({ netMinor }) => netMinor));
}

const resourceAt = ({ id }: StockType, at: number) => `${id}.${at}`;

function pricesOfParts(types: readonly StockType[], priceOf: PriceOf): Map<string, number> {
  return new Map(
    types.flatMap((type) =>
      type.instances.flatMap(({ parts }) =>
        parts.map(({ id }, at) => [id, priceOf(resourceAt(type, at))] as const),
      ),
    ),
  );
}

/**
 * How much more than its price a thing costs that nobody has: a listing that is not worth its price to the plan has to be paid
 * all the same by whoever wants one thing of it. Nothing is added to what lies on the bench.
 */
function dearerBy({ types, offers, model }: PlanGround, priceOf: PriceOf): (type: StockType) => number {
  const worth = (bundle: Bundle | undefined) =>
    (bundle?.gives ?? []).reduce((sum, { resource, count }) => sum + count * priceOf(resource), 0);
  const bundles = new Map(model.bundles.map((bundle) => [bundle.id, bundle]));
  const short = new Map(
    offers.map(({ id, priceMinor, trip }) => {
      const totalMinor = priceMinor + (trip ? trip.moneyMinor + trip.timeMinor : 0);
      const shortMinor = isAgain(id) ? totalMinor - worth(bundles.get(id)) : Number.POSITIVE_INFINITY;
      return [id, Math.max(0, shortMinor)];
    }),
  );
  const known = new Map(
    types.map((type) => [
      type,
      Math.min(...type.instances.map(({ bundle }) => (bundle === undefined ? 0 : (short.get(bundle) ?? 0)))),
    ]),
  );
  return (type) => known.get(type) ?? 0;
}
