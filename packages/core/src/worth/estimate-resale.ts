import { convertMinor, roundMinor } from "../money.ts";
import { monthOf } from "./adjusted-price.ts";
import { basisOf, bearingPrices, type ClosePrice, closePrices } from "./close-prices.ts";
import { closenessOf } from "./closeness.ts";
import type { CostSettings } from "./cost-settings.ts";
import { daysEstimator } from "./days-to-sell.ts";
import type { Evidence, Subject } from "./evidence.ts";
import { adjustmentsOf, type FittedAdjustments } from "./fit-adjustments.ts";
import { factorBits, factorsIn } from "./price-factors.ts";
import { fitPrices, isLevelKnown, type NextPrice, type NotedPrice, nextPrice } from "./price-model.ts";
import type { AppliedAdjustment, Resale } from "./resale.ts";
import { resaleQuestion } from "./resale-question.ts";

type ResaleSettings = Pick<CostSettings, "currency" | "rates" | "adjustments">;

/** The normal value that 97.5 % lie under (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
const normal975 = 1.959964;

/** Rows in the bench's currency; a row whose currency has no typed-in rate stays in its own. */
function converted(evidence: readonly Evidence[], { currency, rates }: ResaleSettings): NotedPrice[] {
  return evidence.map((row) => {
    const { amountMinor, currency: from } = row.price;
    const rate = from === currency ? 1 : rates[from];
    return rate === undefined
      ? { row, amountMinor, currency: from }
      : { row, amountMinor: convertMinor(amountMinor, from, currency, rate), currency };
  });
}

/** The currencies of the prices that would have borne on the thing. */
function leftOut(subject: Subject, prices: readonly NotedPrice[], currency: string): string[] {
  const close = prices.filter(
    (price) => price.currency !== currency && closenessOf(subject, price.row) !== null,
  );
  return [...new Set(close.map((price) => price.currency))].sort();
}

function interval({ middle, halfWidth, effectiveCount }: NextPrice) {
  return {
    valueMinor: roundMinor(Math.exp(middle)),
    lowMinor: roundMinor(Math.exp(middle - halfWidth)),
    highMinor: roundMinor(Math.exp(middle + halfWidth)),
    // Of the normal that has the same 95 % interval: with few prices wider than the t's own middle.
    sigmaLog: halfWidth / normal975,
    effectiveCount,
  };
}

/** The factors of the settings in which some close price differs from the thing. */
function applied(
  { adjustments, fittedFrom }: FittedAdjustments,
  next: NextPrice,
  close: readonly ClosePrice[],
  today: string,
): AppliedAdjustment[] {
  const mine = factorBits(next.loadings);
  const differing = close.reduce((found, { bearing }) => found | (bearing.factors ^ mine), 0);
  const isSeasonal = adjustments.season.some((factor) => factor !== 1);
  const month = monthOf(today);
  return factorsIn(differing)
    .filter((name) => name !== "season" || isSeasonal)
    .map((name) =>
      name === "season"
        ? { name, factor: adjustments.season[month] ?? 1, fittedFrom: fittedFrom.season[month] ?? 0 }
        : { name, factor: adjustments[name], fittedFrom: fittedFrom[name] },
    );
}

/**
 * What things would sell for today, for several things: everything is learnt from the prices once. See `estimateResale`.
 */
export function resaleEstimator(
  evidence: readonly Evidence[],
  settings: ResaleSettings,
  today: string,
): (subject: Subject) => Resale {
  const { currency } = settings;
  const prices = converted(evidence, settings);
  const model = fitPrices(prices, settings.adjustments, today);
  const fitted = adjustmentsOf(model);
  const bearing = bearingPrices(model, currency);
  const daysToSell = daysEstimator(evidence, today);
  return (subject) => {
    const close = closePrices(bearing, subject);
    // What is not said of a price may make it close to a set, of which none has been seen.
    const isKnown = close.some(({ isOfKind }) => isOfKind) && isLevelKnown(model, subject, currency, today);
    if (!isKnown)
      return { known: false, question: resaleQuestion(subject, leftOut(subject, prices, currency)) };
    const next = nextPrice(model, subject, currency, today);
    return {
      ...interval(next),
      known: true,
      currency,
      daysToSell: daysToSell(subject),
      basis: basisOf(model, next, close),
      adjustments: applied(fitted, next, close, today),
    };
  };
}

/**
 * What a thing would sell for today, from noted prices: the middle of the next price with its 95 % interval, in whole minor units of
 * the bench's currency. The logarithm of a price is a sum of effects, which are learnt from all prices together and held back by
 * what is taken for granted about them, so that little evidence moves little and gives a wide interval. Where no price bears on
 * the thing, a question instead. `today` is a date such as 2026-05-31.
 */
export function estimateResale(
  subject: Subject,
  evidence: readonly Evidence[],
  settings: ResaleSettings,
  today: string,
): Resale {
  return resaleEstimator(evidence, settings, today)(subject);
}
