import type { Adjustments } from "./cost-settings.ts";
import type { Condition, Evidence, Subject } from "./evidence.ts";
import { resalePrior } from "./resale-prior.ts";

export type AdjustmentName = Exclude<keyof Adjustments, "season" | "fit"> | "season";

/** A price brought to what is asked about: the factor on it, its weight, and which adjustments made the factor. */
export interface PriceAdjustment {
  readonly logFactor: number;
  readonly weight: number;
  readonly names: readonly AdjustmentName[];
}

const none: PriceAdjustment = { logFactor: 0, weight: 1, names: [] };

const gradeNames = { "as-new": "asNew", fair: "fair", poor: "poor" } as const;

/** A condition's factor is against good, which has none. */
export function gradeName(condition: Condition): "asNew" | "fair" | "poor" | null {
  return condition === "good" ? null : gradeNames[condition];
}

function gradeFactor(condition: Condition, adjustments: Adjustments): number {
  const name = gradeName(condition);
  return name ? adjustments[name] : 1;
}

/** Month of a date such as 2026-05-31, January 0. */
export function monthOf(date: string): number {
  return Number(date.slice(5, 7)) - 1;
}

function seasonFactor(date: string, adjustments: Adjustments): number {
  return adjustments.season[monthOf(date)] ?? 1;
}

/** Only woods, hybrids and putters are sold with a cover; a wrench comes with what an adapter screws into. */
export function extrasMatter(subject: Subject, extra: "cover" | "wrench"): boolean {
  if (subject.kind !== "head" && subject.kind !== "club") return false;
  if (subject.clubType === "iron" || subject.clubType === "wedge") return false;
  return extra === "cover" || subject.clubType !== "putter";
}

function forAsking(row: Evidence, { askedOverSold }: Adjustments): PriceAdjustment {
  if (row.what === "sold") return none;
  return { logFactor: -Math.log(askedOverSold), weight: resalePrior.askedWeight, names: ["askedOverSold"] };
}

function forCondition(row: Evidence, subject: Subject, adjustments: Adjustments): PriceAdjustment {
  if (row.condition === undefined || subject.condition === undefined)
    return { ...none, weight: resalePrior.unknownConditionWeight };
  if (row.condition === subject.condition) return none;
  const names = [gradeName(row.condition), gradeName(subject.condition)].filter((name) => name !== null);
  const factor = gradeFactor(subject.condition, adjustments) / gradeFactor(row.condition, adjustments);
  return { logFactor: Math.log(factor), weight: resalePrior.otherConditionWeight, names };
}

function forExtra(
  row: Evidence,
  subject: Subject,
  extra: "cover" | "wrench",
  adjustments: Adjustments,
): PriceAdjustment {
  if (!extrasMatter(subject, extra)) return none;
  const [had, has] = [row[extra], subject[extra]];
  if (had === undefined || has === undefined) return { ...none, weight: resalePrior.unknownExtraWeight };
  if (had === has) return none;
  const name = extra === "cover" ? "noCover" : "noWrench";
  return { logFactor: Math.log(adjustments[name]) * (has ? -1 : 1), weight: 1, names: [name] };
}

function forSeason(row: Evidence, today: string, adjustments: Adjustments): PriceAdjustment {
  const factor = seasonFactor(today, adjustments) / seasonFactor(row.on, adjustments);
  return factor === 1 ? none : { logFactor: Math.log(factor), weight: 1, names: ["season"] };
}

function forFlex(row: Evidence, subject: Subject): PriceAdjustment {
  const differs = row.flex !== undefined && subject.flex !== undefined && row.flex !== subject.flex;
  return differs ? { ...none, weight: resalePrior.otherFlexWeight } : none;
}

/**
 * Brings a price to the condition, the extras and the season that are asked about, and from asked to paid. What is not known on
 * either side is not adjusted for, and weighs a little less.
 */
export function adjustmentOf(
  row: Evidence,
  subject: Subject,
  adjustments: Adjustments,
  today: string,
): PriceAdjustment {
  const all = [
    forAsking(row, adjustments),
    forCondition(row, subject, adjustments),
    forExtra(row, subject, "cover", adjustments),
    forExtra(row, subject, "wrench", adjustments),
    forSeason(row, today, adjustments),
    forFlex(row, subject),
  ];
  return {
    logFactor: all.reduce((sum, { logFactor }) => sum + logFactor, 0),
    weight: all.reduce((product, { weight }) => product * weight, 1),
    names: all.flatMap(({ names }) => names),
  };
}
