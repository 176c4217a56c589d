import { convertMinor, roundMinor } from "../money.ts";
import { type AdjustmentName, extrasMatter, monthOf } from "./adjusted-price.ts";
import { closenessOf } from "./closeness.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";
import { type FittedAdjustments, fitAdjustments } from "./fit-adjustments.ts";
import { type Prediction, predictNext } from "./predict-level.ts";
import { type ConvertedPrice, type PriceLevel, priceLevel } from "./price-level.ts";
import type { AppliedAdjustment, EvidenceWeight, Resale } from "./resale.ts";
import { resalePrior } from "./resale-prior.ts";
import { resaleQuestion } from "./resale-question.ts";

type KnownResale = Extract<Resale, { known: true }>;
type ResaleSettings = Pick<CostSettings, "currency" | "rates" | "adjustments">;

/** The normal value that 97.5 % lie under (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
const normal975 = 1.959964;

/** Rows in the bench's currency; the currencies of the rest, which have no typed-in rate. */
function converted(evidence: readonly Evidence[], { currency, rates }: ResaleSettings) {
  const prices: ConvertedPrice[] = [];
  const withoutRate: Evidence[] = [];
  for (const row of evidence) {
    const { amountMinor, currency: from } = row.price;
    const rate = from === currency ? 1 : rates[from];
    if (rate === undefined) withoutRate.push(row);
    else prices.push({ row, amountMinor: convertMinor(amountMinor, from, currency, rate) });
  }
  return { prices, withoutRate };
}

/** The currencies of the prices that would have borne on the thing. */
function leftOut(subject: Subject, withoutRate: readonly Evidence[]): string[] {
  const close = withoutRate.filter((row) => closenessOf(subject, row) !== null);
  return [...new Set(close.map((row) => row.price.currency))].sort();
}

/** What is not known of the thing itself makes its price less sure, whatever is known of others. */
function unknownSpread(subject: Subject): number {
  const extras = (["cover", "wrench"] as const).filter(
    (extra) => extrasMatter(subject, extra) && subject[extra] === undefined,
  );
  const ofCondition = subject.condition === undefined ? resalePrior.unknownConditionSpread : 0;
  return Math.hypot(ofCondition, ...extras.map(() => resalePrior.unknownExtraSpread));
}

const pricePrior = { spread: resalePrior.spread, degreesOfFreedom: resalePrior.degreesOfFreedom };
const daysPrior = { ...pricePrior, spread: resalePrior.daysSpread, extraSpread: 0 };

function interval({ middle, halfWidth, effectiveCount }: Prediction) {
  return {
    valueMinor: roundMinor(Math.exp(middle)),
    lowMinor: roundMinor(Math.exp(middle - halfWidth)),
    highMinor: roundMinor(Math.exp(middle + halfWidth)),
    // Of the normal that has the same 95 % interval: with few prices wider than the t's own middle.
    sigmaLog: halfWidth / normal975,
    effectiveCount,
  };
}

function daysToSell(levels: readonly PriceLevel[]): KnownResale["daysToSell"] {
  const rows = levels.flatMap((level) => {
    const { daysToSell: days, what } = level.row;
    // What sold the day it was listed still took some part of a day.
    return what === "sold" && days !== undefined ? [{ ...level, value: Math.log(Math.max(days, 0.5)) }] : [];
  });
  const prediction = predictNext(rows, daysPrior);
  if (!prediction) return null;
  const { middle, halfWidth } = prediction;
  const days = (log: number) => Math.round(Math.exp(log));
  return { value: days(middle), low: days(middle - halfWidth), high: days(middle + halfWidth) };
}

function basisOf(levels: readonly PriceLevel[], shares: Prediction["shares"]): EvidenceWeight[] {
  return levels
    .map((level) => ({
      evidence: level.row.id,
      closeness: level.closeness,
      share: shares.get(level.id) ?? 0,
      adjustedMinor: roundMinor(Math.exp(level.value)),
    }))
    .sort((one, other) => other.share - one.share || (one.evidence < other.evidence ? -1 : 1));
}

function applied(
  levels: readonly PriceLevel[],
  { adjustments, fittedFrom }: FittedAdjustments,
  today: string,
): AppliedAdjustment[] {
  const month = monthOf(today);
  const one = (name: AdjustmentName): AppliedAdjustment =>
    name === "season"
      ? { name, factor: adjustments.season[month] ?? 1, fittedFrom: fittedFrom.season[month] ?? 0 }
      : { name, factor: adjustments[name], fittedFrom: fittedFrom[name] };
  return [...new Set(levels.flatMap(({ names }) => names))].sort().map(one);
}

/**
 * What things would sell for today, for several things: prices are converted and adjustments fitted once. See `estimateResale`.
 */
export function resaleEstimator(
  evidence: readonly Evidence[],
  settings: ResaleSettings,
  today: string,
): (subject: Subject) => Resale {
  const { prices, withoutRate } = converted(evidence, settings);
  const fitted = fitAdjustments(evidence, settings.adjustments);
  return (subject) => {
    const levels = prices
      .map((price) => priceLevel(price, subject, fitted.adjustments, today))
      .filter((level) => level !== null);
    const prediction = predictNext(levels, { ...pricePrior, extraSpread: unknownSpread(subject) });
    if (!prediction)
      return { known: false, question: resaleQuestion(subject, leftOut(subject, withoutRate)) };
    return {
      ...interval(prediction),
      known: true,
      currency: settings.currency,
      daysToSell: daysToSell(levels),
      basis: basisOf(levels, prediction.shares),
      adjustments: applied(levels, fitted, today),
    };
  };
}

/**
 * What a thing would sell for today, from noted prices: the middle of the next price with its 95 % interval, in whole minor units of
 * the bench's currency. Prices are brought to the thing's condition, extras and season by the adjustments (fitted, where those say
 * so), weighed by how recent and how close they are, and spread as Student's t, so that few prices give a wide interval. Where no
 * price bears on the thing, a question instead. `today` is a date such as 2026-05-31.
 */
export function estimateResale(
  subject: Subject,
  evidence: readonly Evidence[],
  settings: ResaleSettings,
  today: string,
): Resale {
  return resaleEstimator(evidence, settings, today)(subject);
}
