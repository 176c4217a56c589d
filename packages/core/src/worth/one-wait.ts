import type { Part } from "../parts/part.ts";
import type { WorkRow } from "../parts/reference.ts";
import type { Want } from "../resolve/result.ts";
import { type Arrivals, arrivalsOf } from "./arrivals.ts";
import { waitDaysOf } from "./build-sum.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { Alternative, WaitingAnswer } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { Subject } from "./evidence.ts";
import type { Gain } from "./gain.ts";
import type { OfferedThing } from "./listing-things.ts";
import { postageFor } from "./postage-quote.ts";
import { priceBeliefOf } from "./price-belief.ts";
import { logNormalPrices, pricesFrom } from "./price-law.ts";
import { rivalsOf } from "./rivals-of.ts";
import { type Sale, saleOf } from "./sale.ts";
import type { ShelfCost, ShelfCosts } from "./shelf-worth.ts";
import { subjectOfClub } from "./subject-of.ts";
import { titleOfPart } from "./titles.ts";
import { type WaitAnswer, waitForPart } from "./wait-for-part.ts";
import { type WorkCost, workCost } from "./work-cost.ts";

/** How surely the settings know what a part costs that nobody has seen a price of: from memory. */
const priorSigmaLog = 0.6;
const priorWeight = 1;

/** One thing that waits for one want. */
export interface OneWait {
  readonly thing: OfferedThing;
  readonly sale: Sale;
  /** What is held while it waits. */
  readonly gain: Gain;
  readonly waits: boolean;
  readonly work: WorkCost;
  readonly shelf: ShelfCost;
  readonly uses: readonly string[];
  readonly days: Alternative["daysToMoney"];
  readonly answer: WaitingAnswer;
}

/** What comes of holding a thing until its missing part turns up; nothing where nobody knows what the club would sell for. */
export function waitFor(
  thing: OfferedThing,
  want: Want,
  context: DealContext,
  shelfCosts: ShelfCosts,
): OneWait | undefined {
  const { costs } = context;
  if (want.kind === "adapter" && thing.parts.some(({ kind }) => kind === "adapter")) return undefined;
  const uses = usedFromShelf(want, context, shelfCosts);
  if (!uses) return undefined;
  // The head of a club waits, and takes what lies there; what it takes must not claim the head's whole gain once more.
  if (uses.length > 0 && !thing.parts.some(({ kind }) => kind === "head")) return undefined;
  const sale = completedSale(thing, want, uses, context);
  if (!sale) return undefined;
  const steps = workFor(want, context);
  const work = workCost(steps, costs);
  const shelf = shelfCosts.of(uses);
  const seen = context.seen(want);
  const arrivals = sharedArrivals(
    arrivalsOf(seen, { shape: 1, weeks: costs.unseenPartWeeks }),
    1 + rivalsOf(thing, want, context),
  );
  const sendingMinor = sendingOf(want.kind, costs);
  const belief = priceBeliefOf(seen.pricesMinor, pricePrior(want, sale, context));
  const prices = pricesFrom(logNormalPrices(belief), resoldMinor(want, context) - sendingMinor);
  const waitAt = (side: keyof Gain) =>
    waitForPart({
      valueMinor: sale.gain[side] - work.totalMinor - shelf.amountMinor - sendingMinor,
      ratePerWeek: arrivals.ratePerWeek,
      prices,
      holdingPerWeekMinor: costs.holdingPerWeekMinor,
      discountPerYearPercent: costs.discountPerYearPercent,
      outsideMinor: Math.max(0, thing.asItIs.sale?.gain[side] ?? 0),
      deadlineWeeks: costs.deadlineWeeks,
    });
  const answer = waitAt("value");
  return {
    ...{ thing, sale, work, shelf, uses, waits: answer.waits },
    gain: gainOf(answer.valueMinor, waitAt("low").valueMinor, waitAt("high").valueMinor),
    days: waitingDays(answer, costs.deadlineWeeks, waitDaysOf(steps)),
    answer: saidOf(want, answer, arrivals, costs.deadlineWeeks),
  };
}

/** What the missing part would bring if it were sold on: a bargain that is had without the thing that waits. */
function resoldMinor(want: Want, context: DealContext): number {
  const sale = saleOf("the missing part", want.kind, context.resale(wantedSubject(want)), context.costs);
  return Math.max(0, sale?.gain.value ?? 0);
}

/** Things that wait for the same part take turns, so each of them meets it that much less often. */
const sharedArrivals = (arrivals: Arrivals, waiters: number): Arrivals => ({
  ...arrivals,
  ratePerWeek: arrivals.ratePerWeek / waiters,
});

/** What it costs to have the missing part sent, by the own rates: the prices seen are without it. */
function sendingOf(kind: Want["kind"], costs: CostSettings): number {
  const parcel = costs.parcels[kind];
  return (parcel && postageFor(parcel, costs.services).priceMinor) ?? 0;
}

/** Both sides of the sale lead to a wait of their own, whose rounding must not turn the interval round. */
const gainOf = (value: number, low: number, high: number): Gain => ({
  value,
  low: Math.min(value, low),
  high: Math.max(value, high),
});

function saidOf(
  want: Want,
  answer: WaitAnswer,
  { ratePerWeek, count }: Arrivals,
  deadlineWeeks: number | null,
): WaitingAnswer {
  const { takeAtOrUnderMinor, expectedWaitWeeks, valueMinor, chanceWithin } = answer;
  return {
    want: want.id,
    text: want.text,
    ratePerWeek,
    sightings: count,
    priorOnly: count === 0,
    takeAtOrUnderMinor,
    expectedWaitWeeks,
    valueMinor,
    chanceByDeadline: deadlineWeeks === null ? null : chanceWithin(deadlineWeeks),
    chanceWithinWeeks: [2, 4, 8, 13, 26].map((weeks) => ({ weeks, chance: chanceWithin(weeks) })),
  };
}

/** Days until the part is here and the glue has cured: the mean, and the interval of 95 % that ends at the deadline at the latest. */
function waitingDays(answer: WaitAnswer, deadlineWeeks: number | null, workDays: number): OneWait["days"] {
  if (answer.expectedWaitWeeks === null) return null;
  // Without a deadline the wait is exponential: 30 times its mean is beyond any quantile that is asked for.
  const lastWeeks = deadlineWeeks ?? answer.expectedWaitWeeks * 30;
  const days = (weeks: number) => weeks * 7 + workDays;
  return {
    value: days(answer.expectedWaitWeeks),
    low: days(weeksAtChance(answer, 0.025, lastWeeks)),
    high: days(weeksAtChance(answer, 0.975, lastWeeks)),
  };
}

/** When the part is there with this chance, found by halving; the last week where even then the chance is less. */
function weeksAtChance({ chanceWithin }: WaitAnswer, chance: number, lastWeeks: number): number {
  let [low, high] = [0, lastWeeks];
  for (let turn = 0; turn < 24; turn += 1) {
    const middle = (low + high) / 2;
    if (chanceWithin(middle) < chance) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * The part of the bench that waits for the same want together with this thing, such as the shaft that lacks an adapter: of
 * several the one that is missed least. Nothing where only another thing of the listing would do.
 */
function usedFromShelf(
  { completes }: Want,
  { isOffered }: DealContext,
  shelfCosts: ShelfCosts,
): string[] | undefined {
  const open = completes.slice(0, completesTried).flatMap(({ head, shaft }) => {
    const ids = [head, shaft].filter((id) => id !== null);
    const uses = ids.filter((id) => !isOffered(id));
    return ids.length - uses.length === 1 ? [uses] : [];
  });
  const rated = open.map((uses) => ({ uses, lostMinor: shelfCosts.of(uses).amountMinor }));
  return rated.sort((one, other) => one.lostMinor - other.lostMinor)[0]?.uses;
}

/** Parts of the bench that are compared for one want. */
const completesTried = 6;

/** The club as it will be sold: the head's model, whoever's head it is. */
function completedSale(thing: OfferedThing, want: Want, uses: readonly string[], context: DealContext) {
  const shelf = uses.flatMap((id) => context.parts.get(id) ?? []);
  const part = (kind: Part["kind"]) => [...thing.parts, ...shelf].find((each) => each.kind === kind);
  const head = part("head");
  if (!head) return headlessSale(want, context);
  const item = context.isOffered(head.id) ? context.input.listing.items[thing.item] : undefined;
  const extras = { cover: item?.cover ?? null, wrench: item?.wrench ?? null };
  const shaft = part("shaft") ?? { id: "wanted", kind: "shaft" as const };
  const subject = subjectOfClub({ head, shaft }, context.finder, extras);
  const title = `${titleOfPart(head).replace(/ ?head$/u, "")} club`.trim();
  return saleOf(title, "club", context.resale(subject), context.costs);
}

/** A shaft that waits for a head: clubs of the types it suits, of several the one whose clubs fetch a middling price. */
function headlessSale({ needs }: Want, context: DealContext) {
  const types = [needs["clubType"]].flat();
  const family = needs["socket.family"];
  const sales = types.flatMap((clubType) => {
    const subject = {
      kind: "club",
      ...(typeof clubType === "string" ? { clubType } : {}),
      ...(typeof family === "string" ? { adapterFamily: family } : {}),
    } as Subject;
    return saleOf("the finished club", "club", context.resale(subject), context.costs) ?? [];
  });
  const byGain = sales.sort((one, other) => one.gain.value - other.gain.value);
  return byGain[Math.floor((byGain.length - 1) / 2)];
}

/** What is wanted, as a thing that has a price. */
function wantedSubject(want: Want): Subject {
  const family = want.needs["adapter.family"] ?? want.needs["family"] ?? want.needs["socket.family"];
  return {
    kind: want.kind,
    ...(want.kind === "shaft" && want.needs["adapter.family"] !== undefined ? { adapter: "fitted" } : {}),
    ...(typeof family === "string" ? { adapterFamily: family } : {}),
  } as Subject;
}

function pricePrior(want: Want, sale: Sale, context: DealContext) {
  const known = context.resale(wantedSubject(want));
  const price = sale.lines.find(({ code }) => code === "sale")?.amountMinor ?? 1;
  return known.known
    ? { medianMinor: Math.max(1, known.valueMinor), sigmaLog: known.sigmaLog, weight: priorWeight }
    : {
        medianMinor: Math.max(1, (price * context.costs.unpricedPartPercent) / 100),
        sigmaLog: priorSigmaLog,
        weight: priorWeight,
      };
}

/** What is done when the part comes, in the steps that building counts: it is screwed in where it has its adapter, glued where it has none. */
function workFor({ kind, needs }: Want, { input }: DealContext): WorkRow[] {
  const screwed = ["screw-in"];
  const glued = ["clean-bore", "clean-tip", "bond-tip", "butt-trim", "grip-on"];
  const byKind = {
    head: screwed,
    adapter: ["clean-tip", "bond-tip", ...screwed],
    shaft: needs["adapter.family"] === undefined ? glued : screwed,
    grip: ["grip-on"],
  };
  return byKind[kind].flatMap((name) => input.reference.work.find(({ step }) => step === name) ?? []);
}
