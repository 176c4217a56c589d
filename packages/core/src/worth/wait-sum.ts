import type { WorkRow } from "../parts/reference.ts";
import type { Want } from "../resolve/result.ts";
import { arrivalsOf } from "./arrivals.ts";
import { worthSelling } from "./build-sum.ts";
import type { DealLine, DealReason, WaitingAnswer } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { Subject } from "./evidence.ts";
import { certain, type Gain } from "./gain.ts";
import type { OfferedThing } from "./listing-things.ts";
import { priceBeliefOf } from "./price-belief.ts";
import { logNormalPrices } from "./price-law.ts";
import { type Sale, saleOf } from "./sale.ts";
import { seenForWant } from "./seen-for-want.ts";
import { shelfCost } from "./shelf-worth.ts";
import { subjectOfClub } from "./subject-of.ts";
import { titleOfPart } from "./titles.ts";
import { waitForPart } from "./wait-for-part.ts";
import { daysOfSales, type WaySum } from "./way-sum.ts";
import { workCost } from "./work-cost.ts";

/** What a part that nobody has seen a price of is taken to cost: a share of the finished club's price, from memory. */
const priorShare = 0.3;
const priorSigmaLog = 0.6;
const priorWeight = 1;

type Waited =
  | { readonly sum: WaySum; readonly why?: never }
  | { readonly why: readonly DealReason[]; readonly sum?: never };

/** Keeping what a head or a shaft of the listing needs in mind, and taking it when one comes at the right price. */
export function waitSum(things: readonly OfferedThing[], context: DealContext): Waited {
  const open = things.flatMap((thing) => wantsOf(thing, context).map((want) => ({ thing, want })));
  if (open.length === 0)
    return {
      why: [{ code: "nothing-to-wait-for", text: "no single missing part is known that would complete it" }],
    };
  const answers = open.flatMap(({ thing, want }) => waitingFor(thing, want, context) ?? []);
  const best = answers.reduce<(typeof answers)[number] | undefined>(
    (one, other) => (one && one.gain.value >= other.gain.value ? one : other),
    undefined,
  );
  if (!best)
    return { why: [{ code: "no-evidence", text: "nobody knows what the finished club would sell for" }] };
  if (!best.waits)
    return { why: [{ code: "not-worth-waiting", text: "waiting brings no more than selling it as it is" }] };
  return { sum: sumOfWaiting(best, things) };
}

/** What would complete a thing's head or shaft, as the resolver says it. */
function wantsOf({ parts }: OfferedThing, context: DealContext): Want[] {
  const complete = parts.some(({ kind }) => kind === "head") && parts.some(({ kind }) => kind === "shaft");
  const lead = parts.find(({ kind }) => kind === "head" || kind === "shaft");
  if (complete || !lead) return [];
  return context.resolveWith(lead.id).wants.slice(0, wantsMax);
}

/** Wants looked at for one part: those that complete most come first. */
const wantsMax = 4;

interface OneWait {
  readonly thing: OfferedThing;
  readonly sale: Sale;
  readonly gain: Gain;
  readonly waits: boolean;
  readonly work: ReturnType<typeof workCost>;
  readonly shelfMinor: number;
  readonly uses: readonly string[];
  readonly answer: WaitingAnswer;
}

function waitingFor(thing: OfferedThing, want: Want, context: DealContext): OneWait | undefined {
  const { costs, input, finder } = context;
  const uses = usedFromShelf(want, context);
  const sale = completedSale(thing, want, uses, context);
  if (!sale) return undefined;
  const work = workCost(workFor(want, context), costs);
  const shelfMinor = shelfCost(uses, context).amountMinor;
  const seen = seenForWant(want, input.sightings, finder, costs, input.today);
  const arrivals = arrivalsOf(seen);
  const belief = priceBeliefOf(seen.pricesMinor, pricePrior(want, sale, context));
  const waitAt = (side: keyof Gain) =>
    waitForPart({
      valueMinor: sale.gain[side] - work.totalMinor - shelfMinor,
      ratePerWeek: arrivals.ratePerWeek,
      prices: logNormalPrices(belief),
      holdingPerWeekMinor: costs.holdingPerWeekMinor,
      discountPerYearPercent: costs.discountPerYearPercent,
      outsideMinor: Math.max(0, thing.asItIs.sale?.gain[side] ?? 0),
      deadlineWeeks: costs.deadlineWeeks,
    });
  const answer = waitAt("value");
  return {
    thing,
    sale,
    work,
    shelfMinor,
    uses,
    waits: answer.waits,
    gain: {
      value: answer.valueMinor,
      low: waitAt("low").valueMinor,
      high: waitAt("high").valueMinor,
    },
    answer: {
      want: want.id,
      text: want.text,
      takeAtOrUnderMinor: answer.takeAtOrUnderMinor,
      expectedWaitWeeks: answer.expectedWaitWeeks,
      chanceByDeadline: costs.deadlineWeeks === null ? null : answer.chanceWithin(costs.deadlineWeeks),
      chanceWithinWeeks: [2, 4, 8, 13, 26].map((weeks) => ({ weeks, chance: answer.chanceWithin(weeks) })),
      valueMinor: answer.valueMinor,
      ratePerWeek: arrivals.ratePerWeek,
      sightings: seen.count,
      priorOnly: arrivals.priorOnly || seen.count === 0,
    },
  };
}

/** The part of the bench that waits for the same want together with this thing: the shaft that lacks an adapter, say. */
function usedFromShelf({ completes }: Want, { isOffered }: DealContext): string[] {
  const [first] = completes;
  return [first?.head, first?.shaft].filter((id): id is string => typeof id === "string" && !isOffered(id));
}

/** The club as it will be sold: the head's model, whoever's head it is. */
function completedSale(thing: OfferedThing, want: Want, uses: readonly string[], context: DealContext) {
  const part = (kind: string) =>
    thing.parts.find((each) => each.kind === kind) ??
    uses.flatMap((id) => context.parts.get(id) ?? []).find((each) => each.kind === kind);
  const head = part("head");
  if (!head) return headlessSale(want, context);
  const item = context.input.listing.items[thing.item];
  const extras = { cover: item?.cover ?? null, wrench: item?.wrench ?? null };
  const shaft = part("shaft") ?? { id: "wanted", kind: "shaft" as const };
  const subject = subjectOfClub({ head, shaft }, context.finder, extras);
  return saleOf(
    `${titleOfPart(head).replace(/ head$/u, "")} club`,
    "club",
    context.resale(subject),
    context.costs,
  );
}

/** A shaft that waits for a head: clubs of the type it suits. */
function headlessSale({ needs }: Want, context: DealContext) {
  const types = needs["clubType"];
  const clubType = Array.isArray(types) ? types[0] : types;
  const family = needs["socket.family"];
  const subject = {
    kind: "club",
    ...(typeof clubType === "string" ? { clubType } : {}),
    ...(typeof family === "string" ? { adapterFamily: family } : {}),
  } as Subject;
  return saleOf("the finished club", "club", context.resale(subject), context.costs);
}

function pricePrior(want: Want, sale: Sale, context: DealContext) {
  const family = want.needs["adapter.family"] ?? want.needs["family"] ?? want.needs["socket.family"];
  const subject = {
    kind: want.kind,
    ...(want.kind === "shaft" && want.needs["adapter.family"] !== undefined ? { adapter: "fitted" } : {}),
    ...(typeof family === "string" ? { adapterFamily: family } : {}),
  } as Subject;
  const known = context.resale(subject);
  const price = sale.lines.find(({ code }) => code === "sale")?.amountMinor ?? 1;
  return known.known
    ? { medianMinor: Math.max(1, known.valueMinor), sigmaLog: known.sigmaLog, weight: priorWeight }
    : { medianMinor: Math.max(1, price * priorShare), sigmaLog: priorSigmaLog, weight: priorWeight };
}

/** What is done when the part comes: it is screwed in where it has its adapter, glued where it has none. */
function workFor({ kind, needs }: Want, { input }: DealContext): WorkRow[] {
  const screwed = ["screw-in", "check-club"];
  const glued = ["clean-bore", "clean-tip", "bond-tip", "butt-trim", "grip-on", "check-club"];
  const byKind = {
    head: screwed,
    adapter: ["clean-tip", "bond-tip", ...screwed],
    shaft: needs["adapter.family"] === undefined ? glued : screwed,
    grip: ["grip-on", "check-club"],
  };
  return byKind[kind].flatMap((name) => input.reference.work.find(({ step }) => step === name) ?? []);
}

function sumOfWaiting(best: OneWait, things: readonly OfferedThing[]): WaySum {
  const others = worthSelling(
    things.filter((thing) => thing !== best.thing).flatMap(({ asItIs }) => asItIs.sale ?? []),
  );
  const waitDays = best.answer.expectedWaitWeeks === null ? null : best.answer.expectedWaitWeeks * 7;
  const spent = best.sale.gain.value - best.work.totalMinor - best.shelfMinor - best.gain.value;
  const lines: DealLine[] = [
    ...best.sale.lines,
    { code: "materials", text: "materials when the part is here", amountMinor: -best.work.materialMinor },
    { code: "work-time", text: "own time at the bench", amountMinor: -best.work.timeMinor },
    {
      code: "shelf",
      text: "what the parts from the shelf would bring otherwise",
      amountMinor: -best.shelfMinor,
    },
    { code: "missing-part", text: "the missing part, and the wait for it", amountMinor: -Math.round(spent) },
    ...others.flatMap((sale) => sale.lines),
  ];
  return {
    way: "wait",
    gains: [best.gain, ...others.map(({ gain }) => gain), certain(0)],
    lines: lines.filter(({ amountMinor }) => amountMinor !== 0),
    minutes: best.work.minutes + best.sale.minutes + others.reduce((sum, { minutes }) => sum + minutes, 0),
    spentMinor: best.work.materialMinor + best.answer.takeAtOrUnderMinor + best.sale.listingFeeMinor,
    days: waitDays === null ? null : daysOfSales([best.sale, ...others], waitDays),
    clubs: [],
    usesParts: best.uses,
    risks: best.answer.priorOnly
      ? [{ code: "prior-only", text: "no part like it has been seen yet, so how often one comes is a guess" }]
      : [],
    reasons: [{ code: "waits-for", text: `waits for ${best.answer.text}` }],
    waiting: best.answer,
  };
}
