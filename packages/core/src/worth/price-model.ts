import type { Adjustments } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";
import { type Learnt, learnSpreads, type OwnNoise } from "./learn-spreads.ts";
import { type Design, designOf } from "./mixed-model.ts";
import { type ModelYears, modelYears } from "./model-years.ts";
import { predictSum } from "./predict-sum.ts";
import { type EffectSettings, modelKey, type PriceEffects, priceEffects } from "./price-effects.ts";
import { daysBetween, recencyWeight } from "./recency.ts";
import { resalePrior } from "./resale-prior.ts";
import { studentQuantile } from "./student-t.ts";

/** A noted price in whole minor units of the named currency. */
export interface NotedPrice {
  readonly row: Evidence;
  readonly amountMinor: number;
  readonly currency: string;
}

/** All that noted prices say together, learnt once. */
export interface PriceModel {
  readonly prices: readonly (NotedPrice & PriceEffects)[];
  readonly settings: EffectSettings;
  readonly design: Design;
  readonly learnt: Learnt;
}

/** The next price of a thing: everything in logarithms. */
export interface NextPrice {
  readonly middle: number;
  /** Half of the 95 % interval. */
  readonly halfWidth: number;
  /** How many sales of the thing itself the evidence amounts to. */
  readonly effectiveCount: number;
  /** How much each noted price moves the middle, in their order. */
  readonly weights: Float64Array;
  readonly loadings: PriceEffects["loadings"];
}

const daysOfYear = 365;
/** The spread that sales have, and those that prices asked for one kind of thing have. */
const soldSpread = "sold";

function noiseOf({ row }: NotedPrice, unknown: number, today: string): OwnNoise {
  const isSold = row.what === "sold";
  const spread = isSold ? resalePrior.spread : resalePrior.askedSpread;
  return {
    spread: isSold ? soldSpread : `asked for a ${row.kind}`,
    variance: spread ** 2 / recencyWeight(row.on, today),
    besides: unknown,
  };
}

function spansYear(prices: readonly NotedPrice[]): boolean {
  const days = prices.map(({ row }) => row.on).sort();
  return days.length > 0 && daysBetween(days[0] as string, days.at(-1) as string) >= daysOfYear;
}

function yearsOf(prices: readonly NotedPrice[]): ModelYears {
  return modelYears(
    prices.flatMap(({ row }) => {
      const key = modelKey(row);
      return key === undefined ? [] : [{ key, thing: row }];
    }),
  );
}

/** Learns every effect on a price, and how wide prices are spread, from all of them together. A price of nothing is left out. */
export function fitPrices(noted: readonly NotedPrice[], adjustments: Adjustments, today: string): PriceModel {
  // In one order whatever order they come in, so that not even the last bit of a sum depends on it.
  const sorted = noted
    .filter(({ amountMinor }) => amountMinor > 0)
    .sort((one, other) => (one.row.id < other.row.id ? -1 : 1));
  const settings = { adjustments, monthsTell: spansYear(sorted), years: yearsOf(sorted) };
  const prices = sorted.map((price) => ({
    ...price,
    ...priceEffects(price.row, { ...price.row, currency: price.currency }, settings),
  }));
  const design = designOf(
    prices.map(({ amountMinor, loadings }) => ({ value: Math.log(amountMinor), loadings })),
  );
  const noise = prices.map((price) => noiseOf(price, price.unknown, today));
  return { prices, settings, design, learnt: learnSpreads(design, noise, resalePrior.degreesOfFreedom) };
}

/** Whether anything is known of how dear things of its kind are, of which nothing is taken for granted. */
export function isLevelKnown(
  { settings, design }: PriceModel,
  subject: Subject,
  currency: string,
  today: string,
): boolean {
  const { loadings } = priceEffects(subject, { what: "sold", on: today, currency }, settings);
  return loadings.every(({ effect }) => effect.variance !== null || design.columns.has(effect.name));
}

/** What the thing would sell for next; there has to be a price of its kind in that currency. */
export function nextPrice(model: PriceModel, subject: Subject, currency: string, today: string): NextPrice {
  const { settings, design, learnt } = model;
  const { loadings, unknown } = priceEffects(subject, { what: "sold", on: today, currency }, settings);
  const { mean, ofNoise, ofEffects, weights } = predictSum(design, learnt, loadings);
  const nextVariance = resalePrior.spread ** 2 * (learnt.factors.get(soldSpread) ?? 1);
  const known = (spread: string) => learnt.degrees.get(spread) ?? resalePrior.degreesOfFreedom;
  const models = loadings.find(({ effect }) => effect.spread !== null)?.effect.spread ?? "";
  const scatter = nextVariance + ofNoise;
  // Two variances that are each estimated add up to about one with these degrees of freedom (Satterthwaite 1946).
  const degrees =
    (scatter + ofEffects) ** 2 / (scatter ** 2 / known(soldSpread) + ofEffects ** 2 / known(models));
  return {
    middle: mean,
    halfWidth: studentQuantile(0.975, degrees) * Math.sqrt(scatter + ofEffects + unknown),
    effectiveCount: nextVariance / (ofNoise + ofEffects),
    weights,
    loadings,
  };
}
