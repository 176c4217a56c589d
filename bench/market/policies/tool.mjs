import { dealJudge, planBench, priceParts, rules, solvePlan } from "../../../packages/core/dist/index.js";
import { asSighting, writtenBefore } from "../before.mjs";
import { makesClub } from "../fit.mjs";
import { gripMinor } from "../ledger.mjs";
import { asAsked, asEvidence, asListing, asParts, dateOf } from "../words.mjs";
import { sellOff } from "./bench-pairs.mjs";

const planEveryDays = 7;
/** What parts are worth is worked out anew when the bench has changed, and after so many days. */
const pricesHoldDays = 3;
const boxOfGrips = 3;

/**
 * Does what the tool says: buys at the price asked where the verdict is to buy, offers the most to pay where it is to offer and
 * the seller invites offers, asks where it is to ask; once a week it builds and sells by the plan over the whole bench.
 */
export function toolPolicy({ seed, catalogue, reference, costs, solver, report = () => {} }) {
  const before = writtenBefore(seed, catalogue, costs);
  const evidence = [...before.evidence];
  /** What is asked for is noted as well as what is paid. */
  const log = new Map(before.sightings.map((each) => [`before ${each.id}`, each]));
  /** By listing: the day it was asked about, the state of the bench it was last judged at, the offer that was refused. */
  const notes = new Map();
  let benchTurn = 0;
  let priced = { day: 0, turn: -1, prices: undefined };

  return async ({ day, open, ledger, sales }) => {
    for (const sale of sales) evidence.push(asEvidence(sale, `own-${evidence.length}`, true));
    for (const listing of open) note(listing, day);
    const world = await buyWhatIsWorth(day, open, ledger, await pricedWorld(day, ledger));
    if (day % planEveryDays === planEveryDays - 1) await buildAndSell(ledger, day, world);
  };

  /** The bench with what its parts are worth to it as it stands. */
  async function pricedWorld(day, ledger) {
    const world = worldNow(day, ledger);
    if (priced.turn !== benchTurn || day - priced.day >= pricesHoldDays)
      priced = { day, turn: benchTurn, prices: await priceParts(world, solver) };
    return priced.prices ? { ...world, prices: priced.prices } : world;
  }

  function note(listing, day) {
    if (!notes.has(listing.id)) {
      notes.set(listing.id, { askedOn: undefined, judgedAt: -1, offeredMinor: 0 });
      log.set(listing.id, asSighting(listing, day, "gone"));
      evidence.push(asAsked(listing, day));
    }
  }

  function isAnswered({ id, answers }, day) {
    return answers && notes.get(id).askedOn < day;
  }

  /** What can be bought tonight, the one that brings most for its money first; after each purchase the rest is judged anew. */
  async function buyWhatIsWorth(day, open, ledger, given) {
    let world = given;
    let left = open;
    for (;;) {
      const judgeIt = dealJudge(world);
      const judged = left.flatMap((listing) => judge(listing, day, judgeIt) ?? []);
      const first = judged
        .filter(({ listing, priceMinor }) => priceMinor + listing.postageMinor <= ledger.cashMinor())
        .reduce((one, other) => (one && one.perEuro >= other.perEuro ? one : other), undefined);
      if (!first) return world;
      const thing = ledger.buy(first.listing, first.priceMinor);
      report({ day, bought: first });
      if (thing.head?.fault === "crack") ledger.scrap(thing);
      benchTurn += 1;
      left = judged.flatMap(({ listing }) => (listing === first.listing ? [] : listing));
      world = await pricedWorld(day, ledger);
    }
  }

  function judge(listing, day, judgeIt) {
    const noted = notes.get(listing.id);
    const answered = isAnswered(listing, day);
    const state = `${benchTurn} ${answered}`;
    if (noted.judgedAt === state) return undefined;
    noted.judgedAt = state;
    const said = asListing(listing, answered);
    const deal = judgeIt({ listing: said });
    const most = deal.mostToPay?.amountMinor ?? 0;
    report({ day, judged: listing, deal });
    if (deal.verdict === "ask-first") noted.askedOn ??= day;
    const isOffer = deal.verdict === "offer-up-to" && listing.negotiable && most > noted.offeredMinor;
    if (deal.verdict !== "buy" && !isOffer) return undefined;
    if (isOffer) noted.offeredMinor = most;
    if (isOffer && most < listing.leastMinor) return undefined;
    const priceMinor = isOffer ? most : listing.askingMinor;
    return { listing, priceMinor, deal, perEuro: (most - priceMinor) / (priceMinor + listing.postageMinor) };
  }

  function worldNow(day, ledger) {
    const things = [...ledger.things].map(asParts);
    const grips = Array.from({ length: boxOfGrips }, (_, at) => ({
      ...{ id: `box-grip-${at}`, kind: "grip", paid: { amountMinor: gripMinor, currency: "EUR" } },
      coreDiameterIn: { value: 0.6, source: "catalogue" },
      deniedFaults: ["grip-worn"],
    }));
    const bench = {
      parts: [...things.flatMap(({ parts }) => parts), ...grips],
      joints: things.flatMap(({ joints }) => joints),
      goal: { skill: "bond" },
    };
    const sightings = [...log.values()];
    return { bench, rules, reference, catalogue, evidence, sightings, costs, today: dateOf(day) };
  }

  async function buildAndSell(ledger, day, world) {
    if (ledger.things.size === 0) return;
    const wishes = {
      ...{ budgetMinor: null, minutes: null, mostOfType: {} },
      ...{ hours: "at-own-rate", leastPerHourMinor: null },
    };
    const options = { seconds: 5, relativeGap: 0.001, now: () => performance.now() };
    const plan = await planBench({ ...world, wishes }, (model) => solvePlan(model, solver, options));
    report({ day, plan });
    for (const action of plan.actions) {
      if (action.do === "build") buildAs(action, day, ledger);
      if (action.do === "sell") sellAs(action, day, ledger);
    }
    benchTurn += 1;
  }

  function buildAs({ parts }, day, ledger) {
    const [head, shaft] = ["head", "shaft"].map((kind) => thingWith(ledger, kind, parts));
    const from = { head, shaft, ...(shaft.adapter ? {} : { adapter: thingWith(ledger, "adapter", parts) }) };
    const fitted = shaft.adapter ?? from.adapter?.adapter;
    // What the plan takes for a club and the market does not stays on the bench.
    if (fitted && makesClub(head.head, shaft.shaft, fitted) && ledger.canBuild(from)) ledger.build(from, day);
    else report({ day, unbuilt: from });
  }

  function sellAs({ parts }, day, ledger) {
    if (parts.some((id) => id.startsWith("box-grip"))) return;
    const kinds = ["head", "shaft", "adapter"];
    const thing = kinds.map((kind) => thingWith(ledger, kind, parts)).find(Boolean);
    const isPiece =
      thing.head && thing.shaft && !(parts.includes(thing.head.id) && parts.includes(thing.shaft.id));
    const sold = isPiece
      ? ledger.part(thing).find((piece) => kinds.some((kind) => parts.includes(piece[kind]?.id)))
      : thing;
    sellOff(sold, ledger, day, costs);
  }
}

const thingWith = (ledger, kind, ids) => [...ledger.things].find((thing) => ids.includes(thing[kind]?.id));
