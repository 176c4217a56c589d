import { marketOf, typeOf } from "./closeness.ts";
import type { Evidence, Subject } from "./evidence.ts";
import { learnSpreads } from "./learn-spreads.ts";
import { designOf, type Effect, type Loading } from "./mixed-model.ts";
import { predictSum } from "./predict-sum.ts";
import { modelKey } from "./price-effects.ts";
import { recencyWeight } from "./recency.ts";
import type { Resale } from "./resale.ts";
import { resalePrior } from "./resale-prior.ts";
import { studentQuantile } from "./student-t.ts";

type DaysToSell = Extract<Resale, { known: true }>["daysToSell"];

/** The effects on the logarithm of days: what sort of thing, what type, what model. */
function daysEffects(subject: Subject): Loading[] {
  const market = marketOf(subject);
  const [type, model] = [typeOf(subject), modelKey(subject)];
  const one = (name: string, spread: number | null, of: string | null = null): Loading => {
    const effect: Effect = { name, mean: 0, variance: spread === null ? null : spread ** 2, spread: of };
    return { effect, times: 1 };
  };
  return [
    one(`days ${market}`, null),
    ...(subject.kind === "head" ? [one("head", resalePrior.daysByKindSpread)] : []),
    ...(type === undefined ? [] : [one(`type ${market} ${type}`, resalePrior.daysByKindSpread)]),
    ...(model === undefined
      ? []
      : [one(`model ${market} ${model}`, resalePrior.daysByModelSpread, "models")]),
  ];
}

/**
 * How many days a sale of a thing takes: the next one's middle and its 95 % interval, from all sales that say it, as prices are
 * told. Null for a thing of a sort of which no sale says it.
 */
export function daysEstimator(
  evidence: readonly Evidence[],
  today: string,
): (subject: Subject) => DaysToSell {
  const sales = evidence
    .filter(({ what, daysToSell }) => what === "sold" && daysToSell !== undefined)
    .sort((one, other) => (one.id < other.id ? -1 : 1));
  const design = designOf(
    sales.map((row) => ({
      // What sold the day it was listed still took some part of a day.
      value: Math.log(Math.max(row.daysToSell as number, 0.5)),
      loadings: daysEffects(row),
    })),
  );
  const noise = sales.map(({ on }) => ({
    ...{ spread: "sold", variance: resalePrior.daysSpread ** 2 / recencyWeight(on, today) },
    besides: 0,
  }));
  const learnt = learnSpreads(design, noise, resalePrior.degreesOfFreedom);
  return (subject) => {
    const loadings = daysEffects(subject);
    if (!loadings.every(({ effect }) => effect.variance !== null || design.columns.has(effect.name)))
      return null;
    const { mean, ofNoise, ofEffects } = predictSum(design, learnt, loadings);
    const next = resalePrior.daysSpread ** 2 * (learnt.factors.get("sold") ?? 1);
    const quantile = studentQuantile(0.975, learnt.degrees.get("sold") ?? resalePrior.degreesOfFreedom);
    const halfWidth = quantile * Math.sqrt(next + ofNoise + ofEffects);
    const days = (log: number) => Math.round(Math.exp(log));
    return { value: days(mean), low: days(mean - halfWidth), high: days(mean + halfWidth) };
  };
}
