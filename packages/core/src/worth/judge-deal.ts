import { buildSum, chooseClubs } from "./build-sum.ts";
import { type Candidate, candidateClubs } from "./candidate-clubs.ts";
import { convertedMinor } from "./converted.ts";
import type { Alternative, Deal, DealItem, DealQuestion } from "./deal.ts";
import { dealCares } from "./deal-cares.ts";
import { type DealContext, dealContext } from "./deal-context.ts";
import type { DealInput } from "./deal-input.ts";
import { dealMessage } from "./deal-message.ts";
import { faultQuestions, priceQuestions, rankedQuestions, settlingQuestions } from "./deal-questions.ts";
import { dealVerdict } from "./deal-verdict.ts";
import { type GettingHere, gettingHere, rateQuestion } from "./getting-here.ts";
import { listingThings, type OfferedThing } from "./listing-things.ts";
import { partOut, sellAsItIs } from "./sell-sums.ts";
import { titleOfItem } from "./titles.ts";
import { waitSum } from "./wait-sum.ts";
import { alternativeOf, closedWay, type WaySum } from "./way-sum.ts";

/** Everything that the ways are reckoned from. */
interface Desk {
  readonly context: DealContext;
  readonly things: readonly OfferedThing[];
  readonly candidates: readonly Candidate[];
  readonly here: GettingHere;
  readonly askingMinor: number | undefined;
}

/**
 * What a listing is worth to this bench: what can be done with it side by side, the most to pay, the verdict, and what to ask.
 * The most to pay is where the best way with the listing leaves what leaving it would, parts of the shelf that it uses being
 * counted at what they would bring otherwise. Nothing of the bench is changed. Throws when the bench does not hold together.
 */
export function judgeDeal(input: DealInput): Deal {
  const context = dealContext(input);
  const things = listingThings(context);
  const candidates = candidateClubs(context);
  const here = gettingHere(input);
  const { asking } = input.listing;
  const askingMinor = asking ? convertedMinor(asking, input.costs) : undefined;
  const desk: Desk = { context, things, candidates, here, askingMinor };
  const settled = candidates.filter(({ club }) => club.verdict !== "unsettled");
  const alternatives = waysOf(desk, settled);
  const mostMinor = mostToPay(alternatives);
  const hoped = candidates.length > settled.length ? chooseClubs(candidates, things, context) : [];
  const hopedMinor = mostToPay([built(desk, hoped), ...alternatives]);
  const asked = priceQuestions(things, candidates, mostMinor === undefined);
  const { verdict, reasons } = dealVerdict({
    listing: input.listing,
    askingMinor,
    mostMinor,
    hopedMinor,
    lacksPrices: asked.length > 0,
  });
  const cares = dealCares(things, askingMinor, context);
  const swing = {
    swingMinor: Math.max(0, (hopedMinor ?? 0) - (mostMinor ?? 0)),
    decides: verdict === "ask-first" && (hopedMinor ?? 0) > (mostMinor ?? 0),
  };
  const isCareful = cares.some(({ code }) => code === "price-far-under");
  const questions = rankedQuestions([
    ...settlingQuestions(candidates, new Set(hoped), swing, context),
    ...faultQuestions(things, mostMinor ?? 0, isCareful, context),
    ...moneyQuestions(desk),
    ...here.questions,
    ...asked,
  ]);
  const { currency } = input.costs;
  return {
    verdict,
    mostToPay: mostMinor === undefined ? null : { amountMinor: mostMinor, currency },
    asking,
    gettingHereMinor: here.totalMinor,
    alternatives,
    best: bestOf(alternatives),
    items: itemsOf(desk),
    questions,
    message: input.listing.intent === "wanted" ? "" : dealMessage(titleOf(input), questions),
    cares,
    reasons,
    notices: here.notices,
  };
}

/** The five ways, in the order in which they are shown. */
function waysOf(desk: Desk, candidates: readonly Candidate[]): Alternative[] {
  const { context, things, here, askingMinor } = desk;
  const reckon = (sum: WaySum) => alternativeOf(sum, here, askingMinor ?? 0, context.costs);
  const wait = waitSum(things, context);
  const asItIs = sellAsItIs(things);
  const apart = partOut(things, context);
  return [
    built(desk, chooseClubs(candidates, things, context), candidates.length),
    wait.sum ? reckon(wait.sum) : closedWay("wait", wait.why),
    "sum" in asItIs ? reckon(asItIs.sum) : closedWay("sell-as-it-is", asItIs.why),
    "sum" in apart ? reckon(apart.sum) : closedWay("part-out", apart.why),
    leaveIt,
  ];
}

/** Building these clubs, which the candidates were found to allow. */
function built(
  { context, things, here, askingMinor }: Desk,
  chosen: readonly Candidate[],
  found = 0,
): Alternative {
  if (chosen.length > 0)
    return alternativeOf(buildSum(chosen, things, context), here, askingMinor ?? 0, context.costs);
  return closedWay("build-now", [
    found > 0
      ? { code: "no-evidence", text: "nobody knows what the finished club would sell for" }
      : { code: "nothing-to-build", text: "it makes no club with what is here, within the skill you allow" },
  ]);
}

/** Leaving it costs nothing and brings nothing: what the shelf would bring otherwise is counted in the other ways. */
const leaveIt: Alternative = {
  ...closedWay("leave", [{ code: "nothing-changes", text: "the bench stays as it is" }]),
  possible: true,
  outlayMinor: 0,
  net: { valueMinor: 0, lowMinor: 0, highMinor: 0 },
  lossChance: 0,
  minutes: 0,
};

/** The most that any way other than leaving bears; nothing where none can be reckoned. */
function mostToPay(alternatives: readonly Alternative[]): number | undefined {
  const most = alternatives.flatMap(({ mostToPayMinor }) => mostToPayMinor ?? []);
  return most.length === 0 ? undefined : Math.max(...most);
}

function bestOf(alternatives: readonly Alternative[]): Deal["best"] {
  const possible = alternatives.filter(({ net }) => net !== null);
  const value = ({ net }: Alternative) => net?.valueMinor ?? Number.NEGATIVE_INFINITY;
  return possible.reduce((best, next) => (value(next) > value(best) ? next : best), leaveIt).way;
}

function moneyQuestions({ context: { input }, askingMinor }: Desk): DealQuestion[] {
  const { asking, intent, items } = input.listing;
  if (asking && askingMinor === undefined) return [rateQuestion(asking.currency)];
  if (asking || intent === "wanted" || items.length === 0) return [];
  const text = "What are you asking for it?";
  return [{ to: "seller", field: "asking", text, swingMinor: 0, decides: false }];
}

/** The listing in a few words for a message to its seller. */
function titleOf({ listing }: DealInput): string {
  const titles = listing.items.map(titleOfItem);
  if (titles.length <= 2) return titles.join(" and ") || "listing";
  return `${titles[0]} and the other things`;
}

function itemsOf({ context, things, candidates }: Desk): DealItem[] {
  return context.input.listing.items.map((item, place) => {
    const mine = things.filter((thing) => thing.item === place);
    const parts = mine.flatMap((thing) => thing.parts.map(({ id }) => id));
    const own = new Set(parts);
    const first = mine[0];
    return {
      title: titleOfItem(item),
      parts,
      resale: first?.asItIs.resale ?? { known: false, question: "What would it sell for?" },
      clubs: candidates
        .filter(({ takes }) => takes.some((id) => own.has(id)))
        .slice(0, clubsShown)
        .map(({ club, title, resale }) => ({
          id: club.id,
          verdict: club.verdict as "fits" | "fits-with-work" | "unsettled",
          title,
          resale,
          work: club.work.map(({ text }) => text),
        })),
      wants: wantsShown(mine, context),
    };
  });
}

/** Clubs shown for one item; the sum rests on the best of them. */
const clubsShown = 12;

function wantsShown(things: readonly OfferedThing[], context: DealContext): DealItem["wants"] {
  const lead = things[0]?.parts.find(({ kind }) => kind === "head" || kind === "shaft");
  if (!lead) return [];
  return context
    .resolveWith(lead.id)
    .wants.slice(0, 4)
    .map(({ id, text }) => ({ id, text }));
}
