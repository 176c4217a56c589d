import {
  arrivalsOf,
  logNormalPrices,
  type ModelFinder,
  priceBeliefOf,
  type Resale,
  type Subject,
  seenForWant,
  type Want,
  waitForPart,
} from "@ferrule/core";
import type { PlanWorld } from "./thread-task.ts";

/** The price at or under which to take a wanted part, and what is known of how often one turns up. */
export interface Waiting {
  readonly takeAtOrUnderMinor: number;
  readonly expectedWaitWeeks: number | null;
  readonly ratePerWeek: number;
  readonly sightings: number;
  readonly priorOnly: boolean;
}

export interface WaitingMarket extends PlanWorld {
  readonly resale: (subject: Subject) => Resale;
  readonly finder: ModelFinder;
}

/** How surely the settings know what a part costs that nobody has seen a price of: from memory. */
const priorSigmaLog = 0.6;

/** What waiting for a part comes to that is worth so much here, with nothing to sell meanwhile. */
export function waitingFor(want: Want, worthMinor: number, market: WaitingMarket): Waiting {
  const { costs, sightings, finder, today } = market;
  const seen = seenForWant(want, sightings, finder, costs, today);
  const { ratePerWeek } = arrivalsOf(seen, { shape: 1, weeks: costs.unseenPartWeeks });
  const { takeAtOrUnderMinor, expectedWaitWeeks } = waitForPart({
    valueMinor: worthMinor,
    ratePerWeek,
    prices: logNormalPrices(priceBeliefOf(seen.pricesMinor, pricePrior(want, worthMinor, market))),
    holdingPerWeekMinor: costs.holdingPerWeekMinor,
    discountPerYearPercent: costs.discountPerYearPercent,
    outsideMinor: 0,
    deadlineWeeks: costs.deadlineWeeks,
  });
  return {
    takeAtOrUnderMinor: Math.round(takeAtOrUnderMinor),
    expectedWaitWeeks,
    ratePerWeek,
    sightings: seen.count,
    priorOnly: seen.count === 0,
  };
}

/** What parts of the kind and the family went for, where somebody noted it. */
function pricePrior({ kind, needs }: Want, worthMinor: number, { resale, costs }: WaitingMarket) {
  const family = needs["adapter.family"] ?? needs["family"] ?? needs["socket.family"];
  const known = resale({
    kind,
    ...(kind === "shaft" && needs["adapter.family"] !== undefined ? { adapter: "fitted" as const } : {}),
    ...(typeof family === "string" ? { adapterFamily: family } : {}),
  });
  return known.known
    ? { medianMinor: Math.max(1, known.valueMinor), sigmaLog: known.sigmaLog, weight: 1 }
    : {
        medianMinor: Math.max(1, (worthMinor * costs.unpricedPartPercent) / 100),
        sigmaLog: priorSigmaLog,
        weight: 1,
      };
}
