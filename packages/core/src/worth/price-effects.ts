import { type AdjustmentName, extrasMatter, gradeName, monthOf } from "./adjusted-price.ts";
import { marketOf, modelWords, typeOf } from "./closeness.ts";
import type { Adjustments } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";
import type { Effect, Loading } from "./mixed-model.ts";
import type { ModelYears } from "./model-years.ts";
import { factorEffect } from "./price-factors.ts";
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
  const made: Loading[] = [];
  if (hand === "left") made.push(one(`left hand ${market}`, 0, prior.leftHandSpread));
  if (flex && (isShaft || kind === "club")) made.push(one(`flex ${market} ${flex}`, 0, prior.flexSpread));
  if (clubNumber && marketMatters(subject))
    made.push(one(`number ${subject.clubType} ${clubNumber.trim().toUpperCase()}`, 0, prior.numberSpread));
  if (isShaft && adapter === "none") made.push(...ofBare(typeOf(subject)));
  if (isShaft && adapter === "fitted" && adapterFamily)
    made.push(one(`on a shaft ${adapterFamily}`, 0, prior.familySpread));
  return made;
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
  const missing: Loading[] = [];
  for (const extra of extras) {
    if (subject[extra] === true || !extrasMatter(subject, extra)) continue;
    const name = extra === "cover" ? "noCover" : "noWrench";
    missing.push(
      subject[extra] === undefined
        ? one(`${extra} unknown`, 0, prior.unknownExtraSpread)
        : { effect: factorOf(name, settings), times: 1 },
    );
  }
  return missing;
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
  const isShaft = kind === "shaft";
  let variance = modelKey(subject) === undefined ? modelVariance : 0;
  const add = (isUnknown: boolean, spread: number) => {
    if (isUnknown) variance += spread ** 2;
  };
  add((isMade || isShaft) && typeOf(subject) === undefined, prior.typeSpread);
  add(isMade && hand === undefined, prior.unknownHandSpread);
  add((isShaft || kind === "club") && flex === undefined, prior.unknownFlexSpread);
  add(isShaft && adapter === undefined, prior.unknownAdapterSpread);
  add(condition === undefined, prior.unknownConditionSpread);
  for (const extra of extras)
    add(subject[extra] === undefined && extrasMatter(subject, extra), prior.unknownExtraSpread);
  return variance;
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
