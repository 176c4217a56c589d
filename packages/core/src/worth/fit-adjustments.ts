import { type AdjustmentName, adjustmentOf, extrasMatter, monthOf } from "./adjusted-price.ts";
import { modelWords } from "./closeness.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Condition, Evidence } from "./evidence.ts";
import { resalePrior } from "./resale-prior.ts";

/** Adjustments moved towards evidence, and how many prices each rests on (0: the figure of the settings). */
export interface FittedAdjustments {
  readonly adjustments: Adjustments;
  readonly fittedFrom: Readonly<Record<Exclude<AdjustmentName, "season">, number>> & {
    /** By month, January first. */
    readonly season: readonly number[];
  };
}

/** How many prices of the same models there have to be with a trait, and how many without it, before its factor moves. */
export const fewestPricesToFit = 3;
/** A month's prices also hold whatever else happened that month, so it takes more of them. */
export const fewestPricesOfMonth = 6;

/** How far off a factor of the settings may well be, in logarithms: from memory. It decides how soon evidence outweighs it. */
const factorSpread = 0.15;

/** Whether a price has the trait; null where that is not known or does not count. */
type Trait = (row: Evidence) => boolean | null;

const asked: Trait = (row) => row.what === "asked";

function grade(condition: Condition): Trait {
  return (row) => (row.condition === condition ? true : row.condition === "good" ? false : null);
}

function lacks(extra: "cover" | "wrench"): Trait {
  return (row) => (row[extra] === undefined || !extrasMatter(row, extra) ? null : !row[extra]);
}

/** Prices that differ in nothing known but what is adjusted for: one model, hand, number, adapter and currency. */
function groupKey(row: Evidence): string | null {
  const model = row.modelId ?? modelWords(row);
  if (model === undefined) return null;
  const { kind, hand, clubType, clubNumber, adapter, adapterFamily, price } = row;
  return JSON.stringify([model, kind, hand, clubType, clubNumber, adapter, adapterFamily, price.currency]);
}

function groupsOf(evidence: readonly Evidence[]): Evidence[][] {
  const groups = new Map<string, Evidence[]>();
  for (const row of evidence) {
    const key = row.price.amountMinor > 0 ? groupKey(row) : null;
    if (key === null) continue;
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

interface Contrast {
  /** Mean difference of the logarithm of the price, with the trait less without it. */
  readonly difference: number;
  /** How many pairs of one with and one without it is worth: n m / (n + m), summed over models. */
  readonly pairs: number;
  readonly withIt: number;
  readonly without: number;
}

function contrast(groups: readonly Evidence[][], trait: Trait, level: (row: Evidence) => number): Contrast {
  const found = groups
    .map((group) => ({
      having: group.filter((row) => trait(row) === true).map(level),
      lacking: group.filter((row) => trait(row) === false).map(level),
    }))
    .filter(({ having, lacking }) => having.length > 0 && lacking.length > 0)
    .map(({ having, lacking }) => ({
      difference: meanOf(having) - meanOf(lacking),
      pairs: (having.length * lacking.length) / (having.length + lacking.length),
      withIt: having.length,
      without: lacking.length,
    }));
  const sum = (of: (one: Contrast) => number) => found.reduce((total, one) => total + of(one), 0);
  const pairs = sum((one) => one.pairs);
  const difference = pairs > 0 ? sum((one) => one.pairs * one.difference) / pairs : 0;
  return { difference, pairs, withIt: sum((one) => one.withIt), without: sum((one) => one.without) };
}

interface Fit {
  readonly factor: number;
  readonly from: number;
}

/** Mean of the setting and the evidence, each by its precision, in logarithms. */
function shrunk(setting: number, found: Contrast, fewest: number): Fit {
  if (found.withIt < fewest || found.without < fewest) return { factor: setting, from: 0 };
  const ofSetting = 1 / factorSpread ** 2;
  const ofEvidence = found.pairs / resalePrior.spread ** 2;
  const log = (ofSetting * Math.log(setting) + ofEvidence * found.difference) / (ofSetting + ofEvidence);
  return { factor: Math.min(5, Math.exp(log)), from: found.withIt + found.without };
}

const traits: readonly (readonly [Exclude<AdjustmentName, "season">, Trait])[] = [
  ["askedOverSold", asked],
  ["asNew", grade("as-new")],
  ["fair", grade("fair")],
  ["poor", grade("poor")],
  ["noCover", lacks("cover")],
  ["noWrench", lacks("wrench")],
];

/** A price as it would be if only this trait were left in it: everything else brought to one footing by the factors so far. */
function levelWith(adjustments: Adjustments) {
  return (row: Evidence) => {
    const footing = { ...row, condition: "good", cover: true, wrench: true } as const;
    return Math.log(row.price.amountMinor) + adjustmentOf(row, footing, adjustments, row.on).logFactor;
  };
}

function fitSeason(groups: readonly Evidence[][], adjustments: Adjustments): Fit[] {
  const level = levelWith(adjustments);
  const seasonless = (row: Evidence) => level(row) - Math.log(adjustments.season[monthOf(row.on)] ?? 1);
  return adjustments.season.map((setting, month) => {
    // A month's own prices as they are, against those of other months without their season.
    const compared = (row: Evidence) => (monthOf(row.on) === month ? level(row) : seasonless(row));
    return shrunk(
      setting,
      contrast(groups, (row) => monthOf(row.on) === month, compared),
      fewestPricesOfMonth,
    );
  });
}

/**
 * Moves each factor towards what prices of the same model show, where there are at least `fewestPricesToFit` with and without the
 * trait (`fewestPricesOfMonth` for a month), by shrinkage: the more pairs, the nearer the evidence. One after another, each with those
 * before it already moved; the factors that come later stand as the settings have them. Returned as they are when `fit` is off.
 */
export function fitAdjustments(evidence: readonly Evidence[], adjustments: Adjustments): FittedAdjustments {
  const fittedFrom = { askedOverSold: 0, asNew: 0, fair: 0, poor: 0, noCover: 0, noWrench: 0 };
  const noSeason = adjustments.season.map(() => 0);
  if (!adjustments.fit) return { adjustments, fittedFrom: { ...fittedFrom, season: noSeason } };
  const groups = groupsOf(inOneOrder(evidence));
  let fitted = adjustments;
  for (const [name, trait] of traits) {
    const level = deseasoned(levelWith({ ...fitted, [name]: 1 }), fitted);
    const { factor, from } = shrunk(fitted[name], contrast(groups, trait, level), fewestPricesToFit);
    fitted = { ...fitted, [name]: factor };
    fittedFrom[name] = from;
  }
  const season = fitSeason(groups, fitted);
  return {
    adjustments: { ...fitted, season: season.map(({ factor }) => factor) },
    fittedFrom: { ...fittedFrom, season: season.map(({ from }) => from) },
  };
}

function deseasoned(level: (row: Evidence) => number, { season }: Adjustments) {
  return (row: Evidence) => level(row) - Math.log(season[monthOf(row.on)] ?? 1);
}

/** So that not even the last bit of a sum depends on the order in which prices were noted. */
function inOneOrder(evidence: readonly Evidence[]): Evidence[] {
  return [...evidence].sort((one, other) => (one.id < other.id ? -1 : one.id > other.id ? 1 : 0));
}
