import { emptyListing } from "../listing/empty-listing.ts";
import { askingOf } from "./asking-of.ts";
import { buildSum } from "./build-sum.ts";
import { type Candidate, candidateClubs } from "./candidate-clubs.ts";
import { type BuildDesk, chooseClubs } from "./choose-clubs.ts";
import { convertedMinor } from "./converted.ts";
import type { Alternative, Deal, DealQuestion } from "./deal.ts";
import { dealCares } from "./deal-cares.ts";
import { type DealContext, dealContext } from "./deal-context.ts";
import { dealItems } from "./deal-items.ts";
import { dealMessage } from "./deal-message.ts";
import {
  faultQuestions,
  lacksPrices,
  priceQuestions,
  rankedQuestions,
  settlingQuestions,
} from "./deal-questions.ts";
import { dealVerdict, type Verdict } from "./deal-verdict.ts";
import { type GettingHere, gettingHere, rateQuestion } from "./getting-here.ts";
import { keepSum } from "./keep-sum.ts";
import { listingThings } from "./listing-things.ts";
import type { PlanPrices } from "./plan-prices.ts";
import type { PricedInput } from "./priced-input.ts";
import { pricedShelf } from "./priced-shelf.ts";
import { partOut, sellAsItIs } from "./sell-sums.ts";
import { type ShelfCosts, shelfCosts } from "./shelf-worth.ts";
import { titleOfItem } from "./titles.ts";
import { type Waited, waitSum } from "./wait-sum.ts";
import { closedWay, type ReckonedWay, reckonedWay, type WaySum } from "./way-sum.ts";

/** Everything that the ways are reckoned from. */
interface Desk extends BuildDesk {
  readonly prices: PlanPrices | undefined;
  readonly candidates: readonly Candidate[];
  readonly here: GettingHere;
  readonly asking: Deal["asking"];
  readonly askingMinor: number | undefined;
}

/**
 * What a listing is worth to this bench: what can be done with it side by side, the most to pay, the verdict, and what to ask.
 * The most to pay is where the best way with the listing leaves what leaving it would, parts of the shelf that it uses being
 * counted at what they would bring otherwise. Nothing of the bench is changed. Throws when the bench does not hold together.
 */
export function judgeDeal(input: PricedInput): Deal {
  return dealJudge(input)(input);
}

/** What differs from one listing to the next. */
export type DealQuery = Pick<PricedInput, "listing" | "roundTripKm">;

/** Judges listing after listing for one bench: what was found out of it for one is kept for the next. See `judgeDeal`. */
export function dealJudge(world: Omit<PricedInput, keyof DealQuery>): (query: DealQuery) => Deal {
  const bench = dealContext({ ...world, listing: emptyListing });
  const alone = shelfCosts(bench);
  const shelf = world.prices ? pricedShelf(world.prices, alone) : alone;
  return ({ listing, roundTripKm }) => {
    const input = { ...world, listing, ...(roundTripKm === undefined ? {} : { roundTripKm }) };
    return dealOf(input, deskFor(input, bench, shelf));
  };
}

function dealOf(input: PricedInput, desk: Desk): Deal {
  const { context, things, here, asking, askingMinor } = desk;
  const ways = waysOf(desk);
  const hoped = hopedClubs(desk);
  const mostMinor = mostBorneBy(ways);
  const hopedMinor = mostBorneBy([...ways, buildWay(desk, hoped)]);
  const verdict = dealVerdict({
    listing: input.listing,
    askingMinor,
    lacksRate: asking !== null && askingMinor === undefined,
    mostMinor,
    hopedMinor,
    lacksPrices: lacksPrices(things, desk.candidates),
    lacksDistance: here.isOpen,
    offers: input.costs,
  });
  const cares = dealCares(things, askingMinor, context);
  const isCareful = cares.some(({ code }) => code === "price-far-under");
  const questions =
    input.listing.intent === "wanted"
      ? []
      : questionsOf(desk, hoped, { mostMinor, hopedMinor }, verdict, isCareful);
  const alternatives = ways.map(({ alternative }) => alternative);
  const { currency } = input.costs;
  return {
    ...verdict,
    mostToPay: mostMinor === undefined ? null : { amountMinor: Math.max(0, mostMinor), currency },
    asking,
    gettingHereMinor: here.totalMinor,
    alternatives,
    best: bestOf(alternatives),
    items: dealItems(things, desk.candidates, context),
    questions,
    message: dealMessage(titleOf(input), questions, verdict.verdict),
    cares,
    notices: noticesOf(desk),
  };
}

function deskFor(input: PricedInput, bench: DealContext, shelf: ShelfCosts): Desk {
  const context = dealContext(input, bench);
  const asking = askingOf(input.listing);
  return {
    context,
    shelf,
    prices: input.prices,
    things: listingThings(context),
    candidates: candidateClubs(context, shelf),
    here: gettingHere(input),
    asking,
    askingMinor: asking ? convertedMinor(asking, input.costs) : undefined,
  };
}

const isSettled = ({ club }: Candidate) => club.verdict !== "unsettled";

/** The clubs that would be built if every open question were answered for the best; none where nothing is open. */
function hopedClubs(desk: Desk): Candidate[] {
  return desk.candidates.every(isSettled) ? [] : chooseClubs(desk.candidates, desk);
}

/** The five ways, in the order in which they are shown. */
function waysOf(desk: Desk): ReckonedWay[] {
  const { context, things } = desk;
  const reckon = (way: Alternative["way"], outcome: ReturnType<typeof sellAsItIs>) =>
    "sum" in outcome ? reckoned(desk, outcome.sum) : closedWay(way, outcome.why);
  return [
    buildWay(desk, chooseClubs(desk.candidates.filter(isSettled), desk)),
    reckon("wait", waiting(desk)),
    reckon("sell-as-it-is", sellAsItIs(things)),
    reckon("part-out", partOut(things, context)),
    { alternative: leaveIt, borneMinor: undefined },
  ];
}

/** Keeping what the listing offers: by the plan's prices where there are any, else for the one part that is missing. */
function waiting({ context, things, shelf, prices }: Desk): Waited {
  const waited = waitSum(things, context, shelf);
  return prices ? keepSum(things, context, prices, waited) : waited;
}

const reckoned = ({ here, askingMinor, context }: Desk, sum: WaySum) =>
  reckonedWay(sum, here, askingMinor ?? 0, context.costs);

function buildWay(desk: Desk, chosen: readonly Candidate[]): ReckonedWay {
  if (chosen.length > 0) return reckoned(desk, buildSum(chosen, desk));
  const settled = desk.candidates.some(isSettled);
  if (settled) return closedBuild("no-evidence", "nobody knows what the finished club would sell for");
  return desk.candidates.length > 0
    ? closedBuild("unsettled", "whether it makes a club hangs on facts that nobody has said")
    : closedBuild("nothing-to-build", "it makes no club with what is here, within the skill you allow");
}

const closedBuild = (code: string, text: string) => closedWay("build-now", [{ code, text }]);

/** Leaving it costs nothing and brings nothing: what the shelf would bring otherwise is counted in the other ways. */
const leaveIt: Alternative = {
  ...closedWay("leave", [{ code: "nothing-changes", text: "the bench stays as it is" }]).alternative,
  possible: true,
  outlayMinor: 0,
  net: { valueMinor: 0, lowMinor: 0, highMinor: 0 },
  lossChance: 0,
  minutes: 0,
};

/** The most that any way other than leaving bears, below nothing where none is worth having; left out where none can be reckoned. */
function mostBorneBy(ways: readonly ReckonedWay[]): number | undefined {
  const most = ways.flatMap(({ borneMinor }) => borneMinor ?? []);
  return most.length === 0 ? undefined : Math.max(...most);
}

function bestOf(alternatives: readonly Alternative[]): Deal["best"] {
  const possible = alternatives.filter(({ net }) => net !== null);
  const value = ({ net }: Alternative) => net?.valueMinor ?? Number.NEGATIVE_INFINITY;
  return possible.reduce((best, next) => (value(next) > value(best) ? next : best), leaveIt).way;
}

interface Limits {
  readonly mostMinor: number | undefined;
  readonly hopedMinor: number | undefined;
}

function questionsOf(
  desk: Desk,
  hoped: readonly Candidate[],
  limits: Limits,
  { verdict, reasons }: Verdict,
  isCareful: boolean,
): DealQuestion[] {
  const { context, things, candidates, here } = desk;
  const most = Math.max(0, limits.mostMinor ?? 0);
  const swingMinor = Math.max(0, (limits.hopedMinor ?? 0) - most);
  const swing = { swingMinor, decides: verdict === "ask-first" && swingMinor > 0 };
  const isFor = (...codes: readonly string[]) => reasons.some(({ code }) => codes.includes(code));
  const asksForPrice = isFor("no-evidence", "partly-priced");
  return rankedQuestions([
    ...settlingQuestions(candidates, new Set(hoped), swing, context),
    ...faultQuestions(things, most, isCareful, context),
    ...moneyQuestions(desk),
    ...here.questions.map((each) => ({ ...each, decides: each.decides && isFor("getting-here") })),
    ...priceQuestions(things, candidates, asksForPrice),
  ]);
}

function moneyQuestions({ context, asking, askingMinor }: Desk): DealQuestion[] {
  if (asking) return askingMinor === undefined ? [rateQuestion(asking.currency)] : [];
  if (context.input.listing.items.length === 0) return [];
  const text = "What are you asking for it?";
  return [{ to: "seller", field: "asking", text, swingMinor: 0, decides: false }];
}

/** The listing in a few words for a message to its seller. */
function titleOf({ listing }: PricedInput): string {
  const titles = listing.items.map(titleOfItem);
  if (titles.length <= 2) return titles.join(" and ") || "listing";
  return `${titles[0]} and the other things`;
}

function noticesOf({ context, here, asking, askingMinor }: Desk): string[] {
  const { listing } = context.input;
  const sum = "The items are priced one by one: the price asked is taken to be that of all of them.";
  const rate = "The price asked is left out of the sums, since its currency has no rate.";
  const few = listing.items.flatMap(({ quantity }, place) => {
    const counted = context.offered.things[place]?.length ?? 0;
    return counted < quantity ? [`Of ${quantity} alike, ${counted} are counted.`] : [];
  });
  const { left } = context.leads;
  return [
    ...here.notices,
    ...(asking && !listing.asking ? [sum] : []),
    ...(asking && askingMinor === undefined ? [rate] : []),
    ...few,
    ...(left > 0 ? [`It is a large lot: ${left} of its parts were not tried in clubs.`] : []),
  ];
}
