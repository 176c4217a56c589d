import { type AdjustmentName, extrasMatter, gradeName, monthOf } from "./adjusted-price.ts";
import { marketOf, modelWords, typeOf } from "./closeness.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";
import type { Effect, Loading } from "./mixed-model.ts";
import type { ModelYears } from "./model-years.ts";
import { resalePrior as prior } from "./resale-prior.ts";

/** Which factors a price may move, and the years of models. */
export interface EffectSettings {
  readonly adjustments: Adjustments;
  /** Whether there are prices of a year at least, without which a month's is told from nothing else. */
  readonly monthsTell: boolean;
  readonly years: ModelYears;
}

/** Of a price its kind and day; of a thing that is asked about, that it is sold today. */
export interface Occasion {
  readonly what: Evidence["what"];
  readonly on: string;
  readonly currency: string;
}

/** The effects whose sum is the logarithm of a price, and the variance that comes of what is not known of the thing. */
export interface PriceEffects {
  readonly loadings: readonly Loading[];
  readonly unknown: number;
}

const one = (name: string, mean: number, spread: number): Loading => ({
  effect: { name, mean, variance: spread ** 2, spread: null },
  times: 1,
});

const marketMatters = (subject: Subject) => subject.kind === "head" || subject.kind === "club";

/** The name of a factor of the settings among the effects. */
export const factorEffect = (name: AdjustmentName, month = 0) =>
  name === "season" ? `season ${month}` : name;

function factorOf(name: Exclude<AdjustmentName, "season">, { adjustments }: EffectSettings): Effect {
  const spread = name === "askedOverSold" ? prior.askedFactorSpread : prior.factorSpread;
  const variance = adjustments.fit ? spread ** 2 : 0;
  return { name: factorEffect(name), mean: Math.log(adjustments[name]), variance, spread: null };
}

/**
 * How dear its kind is, of which nothing is taken for granted, and its type. What a head is worth beside its club is thus learnt
 * from prices alone; types and models, which both have in common, hold the two together.
 */
function ofLevel(subject: Subject, currency: string): Loading[] {
  const { kind } = subject;
  const market = marketOf(subject);
  const name = `level ${market} ${kind} ${currency}`;
  const level: Loading = { effect: { name, mean: 0, variance: null, spread: null }, times: 1 };
  const type = typeOf(subject);
  if (type === undefined) return [level];
  const ofType = one(`type ${market} ${type}`, 0, prior.typeSpread);
  return kind === "head"
    ? [level, ofType, one(`head of ${type}`, 0, prior.headByTypeSpread)]
    : [level, ofType];
}

/** What tells one model from another in one market; an adapter or a wrench is its family. */
export function modelKey(subject: Subject): string | undefined {
  const words = subject.modelId ?? modelWords(subject);
  const isFamily = subject.kind === "adapter" || subject.kind === "wrench";
  return isFamily ? (subject.adapterFamily ?? words) : words;
}

function ofModel(subject: Subject, { years }: EffectSettings): Loading[] {
  const key = modelKey(subject);
  if (key === undefined) return [];
  const market = marketOf(subject);
  const name = `${market} ${years.modelOf(key, subject)}`;
  const spread = `models ${market}`;
  const one = (of: string, variance: number): Loading => ({
    effect: { name: of, mean: 0, variance, spread },
    times: 1,
  });
  if (!marketMatters(subject)) return [one(name, modelVariance)];
  return [one(name, prior.modelSpread ** 2), one(`${subject.kind} of ${name}`, prior.modelKindSpread ** 2)];
}

const modelVariance = prior.modelSpread ** 2 + prior.modelKindSpread ** 2;

const yearZero = 2020;

function ofYear(subject: Subject, { years }: EffectSettings): Loading[] {
  if (!marketMatters(subject)) return [];
  const market = marketOf(subject);
  const key = modelKey(subject);
  const year = years.yearOf(key, subject);
  if (year === undefined) return [one(`year of ${market} unknown`, 0, prior.unknownYearSpread)];
  const newer = one(`year of ${market}`, prior.newerByYear, prior.newerByYearSpread);
  return [{ ...newer, times: year - yearZero }];
}

/** Only things that are made for a hand have one, and it is seldom said of what is for the right. */
function ofMake(subject: Subject): Loading[] {
  const market = marketOf(subject);
  const { hand, flex, clubNumber, adapter, adapterFamily, kind } = subject;
  const isShaft = kind === "shaft";
  const hasFlex = isShaft || kind === "club";
  return [
    ...(hand === "left" ? [one(`left hand ${market}`, 0, prior.leftHandSpread)] : []),
    ...(hasFlex && flex ? [one(`flex ${market} ${flex}`, 0, prior.flexSpread)] : []),
    ...(marketMatters(subject) && clubNumber
      ? [one(`number ${subject.clubType} ${clubNumber.trim().toUpperCase()}`, 0, prior.numberSpread)]
      : []),
    ...(isShaft && adapter === "none" ? ofBare(typeOf(subject)) : []),
    ...(isShaft && adapter === "fitted" && adapterFamily
      ? [one(`on a shaft ${adapterFamily}`, 0, prior.familySpread)]
      : []),
  ];
}

function ofBare(type: string | undefined): Loading[] {
  const all = one("bare shaft", Math.log(prior.bareShare), prior.bareShareSpread);
  return type === undefined ? [all] : [all, one(`bare shaft ${type}`, 0, prior.bareShareByTypeSpread)];
}

function ofCondition(subject: Subject, settings: EffectSettings): Loading[] {
  if (subject.condition === undefined) return [one("condition unknown", 0, prior.unknownConditionSpread)];
  const name = gradeName(subject.condition);
  return name === null ? [] : [{ effect: factorOf(name, settings), times: 1 }];
}

const extras = ["cover", "wrench"] as const;

function ofExtras(subject: Subject, settings: EffectSettings): Loading[] {
  return extras
    .filter((extra) => extrasMatter(subject, extra))
    .flatMap((extra) => {
      if (subject[extra] === undefined) return [one(`${extra} unknown`, 0, prior.unknownExtraSpread)];
      const name = extra === "cover" ? "noCover" : "noWrench";
      return subject[extra] ? [] : [{ effect: factorOf(name, settings), times: 1 }];
    });
}

function ofOccasion(subject: Subject, { what, on }: Occasion, settings: EffectSettings): Loading[] {
  const { adjustments, monthsTell } = settings;
  const month = monthOf(on);
  const variance = adjustments.fit && monthsTell ? prior.monthSpread ** 2 : 0;
  const season: Effect = {
    name: factorEffect("season", month),
    mean: Math.log(adjustments.season[month] ?? 1),
    variance,
    spread: null,
  };
  if (what === "sold") return [{ effect: season, times: 1 }];
  const byKind = one(`asked of ${subject.kind}`, 0, adjustments.fit ? prior.askedByKindSpread : 0);
  return [{ effect: season, times: 1 }, { effect: factorOf("askedOverSold", settings), times: 1 }, byKind];
}

function unknownOf(subject: Subject): number {
  const { kind, hand, flex, adapter, condition } = subject;
  const isMade = marketMatters(subject);
  const spreads = [
    ...(modelKey(subject) === undefined ? [Math.sqrt(modelVariance)] : []),
    ...(isMade && typeOf(subject) === undefined ? [prior.typeSpread] : []),
    ...(isMade && hand === undefined ? [prior.unknownHandSpread] : []),
    ...((kind === "shaft" || kind === "club") && flex === undefined ? [prior.unknownFlexSpread] : []),
    ...(kind === "shaft" && adapter === undefined ? [prior.unknownAdapterSpread] : []),
    ...(condition === undefined ? [prior.unknownConditionSpread] : []),
    ...extras
      .filter((extra) => extrasMatter(subject, extra) && subject[extra] === undefined)
      .map(() => prior.unknownExtraSpread),
  ];
  return spreads.reduce((sum, spread) => sum + spread ** 2, 0);
}

/** The logarithm of a price as a sum: each effect named, with what is taken for granted about it. */
export function priceEffects(subject: Subject, occasion: Occasion, settings: EffectSettings): PriceEffects {
  return {
    loadings: [
      ...ofLevel(subject, occasion.currency),
      ...ofModel(subject, settings),
      ...ofYear(subject, settings),
      ...ofMake(subject),
      ...ofCondition(subject, settings),
      ...ofExtras(subject, settings),
      ...ofOccasion(subject, occasion, settings),
    ],
    unknown: unknownOf(subject),
  };
}
