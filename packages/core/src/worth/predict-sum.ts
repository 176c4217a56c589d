import type { Learnt } from "./learn-spreads.ts";
import { type Design, type Loading, priorSum, sumOfEffects } from "./mixed-model.ts";

export interface PredictedSum {
  readonly mean: number;
  /** How unsure it is since values that were seen have noise of their own. */
  readonly ofNoise: number;
  /** How unsure it is since effects have been seen too little, or not at all. */
  readonly ofEffects: number;
  /** How much each value moves the mean. */
  readonly weights: Float64Array;
}

/** A sum of effects that may have been seen, each alone or together, or not: an effect that was not has its prior. */
export function predictSum(
  design: Design,
  { solution, rowVariances, factors }: Learnt,
  loadings: readonly Loading[],
): PredictedSum {
  const open = loadings.filter(({ effect, times }) => effect.variance !== 0 && times !== 0);
  const seen = open.filter(({ effect }) => design.columns.has(effect.name));
  const columns = seen.map(({ effect }) => design.columns.get(effect.name) as number);
  const times = seen.map((loading) => loading.times);
  const sum = sumOfEffects(solution, { columns, times });
  const weights = weightsOf(design, solution.covariance, columns, times, rowVariances);
  let ofNoise = 0;
  for (let at = 0; at < weights.length; at += 1)
    ofNoise += (weights[at] as number) ** 2 * (rowVariances[at] as number);
  let unseen = 0;
  for (const { effect, times: often } of open)
    if (!design.columns.has(effect.name))
      unseen +=
        often ** 2 *
        (effect.variance ?? Number.POSITIVE_INFINITY) *
        (effect.spread === null ? 1 : (factors.get(effect.spread) ?? 1));
  return {
    mean: priorSum(loadings) + sum.mean,
    ofNoise,
    // What is left of the variance once the part of the noise is taken out: rounding must not make it negative.
    ofEffects: Math.max(0, sum.variance - ofNoise) + unseen,
    weights,
  };
}

function weightsOf(
  { effects, rows }: Design,
  covariance: Float64Array,
  columns: readonly number[],
  times: readonly number[],
  rowVariances: readonly number[],
): Float64Array {
  const size = effects.length;
  const pulls = new Float64Array(size);
  for (let at = 0; at < columns.length; at += 1) {
    const start = (columns[at] as number) * size;
    for (let other = 0; other < size; other += 1)
      pulls[other] = (pulls[other] as number) + (times[at] as number) * (covariance[start + other] as number);
  }
  const weights = new Float64Array(rows.length);
  for (let at = 0; at < rows.length; at += 1) {
    const row = rows[at] as Design["rows"][number];
    let pull = 0;
    for (let one = 0; one < row.columns.length; one += 1)
      pull += (row.times[one] as number) * (pulls[row.columns[one] as number] as number);
    weights[at] = pull / (rowVariances[at] as number);
  }
  return weights;
}
