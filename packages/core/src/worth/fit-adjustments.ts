import { type AdjustmentName, extrasMatter, gradeName, monthOf } from "./adjusted-price.ts";
import { modelWords } from "./closeness.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Evidence } from "./evidence.ts";
import { resalePrior } from "./resale-prior.ts";

type FactorName = Exclude<AdjustmentName, "season">;

/** Adjustments moved towards evidence, and how many prices each rests on (0: the figure of the settings). */
export interface FittedAdjustments {
  readonly adjustments: Adjustments;
  readonly fittedFrom: Readonly<Record<FactorName, number>> & {
    /** By month, January first. */
    readonly season: readonly number[];
  };
}

/** How many prices of the same models there have to be with a trait, and how many without it, before its factor moves. */
const fewestPricesToFit = 3;
/** A month's prices also hold whatever else happened that month, so it takes more of them. */
const fewestPricesOfMonth = 6;

/** How far off a factor of the settings may well be, in logarithms: from memory. It decides how soon evidence outweighs it. */
const factorSpread = 0.15;

/** Factors hang together (what is asked is often what is as new), so each is fitted again with the others moved: so many times. */
const sweeps = 6;

const factorNames = ["askedOverSold", "asNew", "fair", "poor", "noCover", "noWrench"] as const;

/** A price with what its factors are about. A trait is true, false, or null where that is not known or does not count. */
interface TraitRow {
  readonly log: number;
  readonly traits: Readonly<Record<FactorName, boolean | null>>;
  readonly month: number;
}

function traitRow(row: Evidence): TraitRow {
  const lacks = (extra: "cover" | "wrench") =>
    row[extra] === undefined || !extrasMatter(row, extra) ? null : !row[extra];
  // A grade is told from good, and from good alone.
  const grade = row.condition === undefined ? undefined : gradeName(row.condition);
  const isGrade = (name: "asNew" | "fair" | "poor") =>
    grade === name ? true : grade === null ? false : null;
  return {
    log: Math.log(row.price.amountMinor),
    month: monthOf(row.on),
    traits: {
      askedOverSold: row.what === "asked",
      asNew: isGrade("asNew"),
      fair: isGrade("fair"),
      poor: isGrade("poor"),
      noCover: lacks("cover"),
      noWrench: lacks("wrench"),
    },
  };
}

/** Prices that differ in nothing known but what is adjusted for: one model, hand, number, adapter and currency. */
function groupKey(row: Evidence): string | null {
  const model = row.modelId ?? modelWords(row);
  if (model === undefined || row.price.amountMinor <= 0) return null;
  const { kind, year, hand, clubType, clubNumber, adapter, adapterFamily, price } = row;
  return JSON.stringify([
    model,
    kind,
    year,
    hand,
    clubType,
    clubNumber,
    adapter,
    adapterFamily,
    price.currency,
  ]);
}

/** In one order whatever order they come in, so that not even the last bit of a sum depends on it. */
function groupsOf(evidence: readonly Evidence[]): TraitRow[][] {
  const groups = new Map<string, TraitRow[]>();
  for (const row of [...evidence].sort((one, other) => (one.id < other.id ? -1 : 1))) {
    const key = groupKey(row);
    if (key === null) continue;
    const group = groups.get(key);
    if (group) group.push(traitRow(row));
    else groups.set(key, [traitRow(row)]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

/** The logarithm of a price with every factor taken out of it. */
function footing({ log, traits, month }: TraitRow, adjustments: Adjustments): number {
  return factorNames.reduce(
    (level, name) => (traits[name] ? level - Math.log(adjustments[name]) : level),
    log - Math.log(adjustments.season[month] ?? 1),
  );
}

interface Contrast {
  /** Mean difference of the logarithm of the price, with the trait less without it. */
  readonly difference: number;
  /** How many pairs of one with and one without it is worth: n m / (n + m), summed over models. */
  readonly pairs: number;
  readonly withIt: number;
  readonly without: number;
}

function contrastIn(group: readonly TraitRow[], trait: (row: TraitRow) => boolean | null, at: Adjustments) {
  // Without the trait first, with it second.
  const sum: [number, number] = [0, 0];
  const count: [number, number] = [0, 0];
  for (const row of group) {
    const has = trait(row);
    if (has === null) continue;
    sum[has ? 1 : 0] += footing(row, at);
    count[has ? 1 : 0] += 1;
  }
  const [without, withIt] = count;
  if (without === 0 || withIt === 0) return null;
  const pairs = (withIt * without) / (withIt + without);
  return { difference: sum[1] / withIt - sum[0] / without, pairs, withIt, without };
}

function contrast(
  groups: readonly (readonly TraitRow[])[],
  trait: (row: TraitRow) => boolean | null,
  at: Adjustments,
): Contrast {
  const found = groups.map((group) => contrastIn(group, trait, at)).filter((one) => one !== null);
  const sum = (of: (one: Contrast) => number) => found.reduce((total, one) => total + of(one), 0);
  const pairs = sum((one) => one.pairs);
  return {
    difference: pairs > 0 ? sum((one) => one.pairs * one.difference) / pairs : 0,
    pairs,
    withIt: sum((one) => one.withIt),
    without: sum((one) => one.without),
  };
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

/** One factor after another, each with all the others as they have been moved so far. */
function swept(groups: readonly TraitRow[][], settings: Adjustments, fitted: FittedAdjustments) {
  let { adjustments } = fitted;
  const fittedFrom = { ...fitted.fittedFrom, season: [...fitted.fittedFrom.season] };
  for (const name of factorNames) {
    const found = contrast(groups, (row) => row.traits[name], { ...adjustments, [name]: 1 });
    const { factor, from } = shrunk(settings[name], found, fewestPricesToFit);
    adjustments = { ...adjustments, [name]: factor };
    fittedFrom[name] = from;
  }
  for (const month of settings.season.keys()) {
    const found = contrast(groups, (row) => row.month === month, {
      ...adjustments,
      season: adjustments.season.with(month, 1),
    });
    const { factor, from } = shrunk(settings.season[month] ?? 1, found, fewestPricesOfMonth);
    adjustments = { ...adjustments, season: adjustments.season.with(month, factor) };
    fittedFrom.season[month] = from;
  }
  return { adjustments, fittedFrom };
}

/**
 * Moves each factor towards what prices of the same model show, where there are at least three with and without the
 * trait (six for a month), by shrinkage: the more pairs, the nearer the evidence. Returned as they are when `fit` is off.
 */
export function fitAdjustments(evidence: readonly Evidence[], adjustments: Adjustments): FittedAdjustments {
  const noPrices = { askedOverSold: 0, asNew: 0, fair: 0, poor: 0, noCover: 0, noWrench: 0 };
  const start = { adjustments, fittedFrom: { ...noPrices, season: adjustments.season.map(() => 0) } };
  if (!adjustments.fit) return start;
  const groups = groupsOf(evidence);
  let fitted: FittedAdjustments = start;
  for (let sweep = 0; sweep < sweeps && groups.length > 0; sweep += 1)
    fitted = swept(groups, adjustments, fitted);
  return fitted;
}
