/** A distribution of one input: a normal by its standard deviation, a rectangle by its half-width. */
export type Distribution = readonly [shape: "normal" | "rectangular", centre: number, width: number];

export interface Drawn {
  readonly mean: number;
  readonly standardDeviation: number;
  /** Ends of the probabilistically symmetric 95 % interval (JCGM 101:2008, 7.7). */
  readonly low: number;
  readonly high: number;
}

/** Propagates distributions by drawing from them (JCGM 101:2008, clause 7). The same seed gives the same answer. */
export function drawModel(
  model: (values: readonly number[]) => number,
  distributions: readonly Distribution[],
  { draws = 1_000_000, seed = 1 }: { readonly draws?: number; readonly seed?: number } = {},
): Drawn {
  const uniform = uniformFrom(seed);
  const values: number[] = distributions.map(() => 0);
  const results = new Float64Array(draws);
  let sum = 0;
  for (let k = 0; k < draws; k++) {
    for (const [i, [shape, centre, width]] of distributions.entries()) {
      const unit = shape === "normal" ? normalFrom(uniform) : 2 * uniform() - 1;
      values[i] = centre + width * unit;
    }
    results[k] = model(values);
    sum += results[k] ?? Number.NaN;
  }
  const mean = sum / draws;
  const variance = results.reduce((total, result) => total + (result - mean) ** 2, 0) / (draws - 1);
  results.sort();
  const quantile = (p: number) => results[Math.round(p * (draws - 1))] ?? Number.NaN;
  return { mean, standardDeviation: Math.sqrt(variance), low: quantile(0.025), high: quantile(0.975) };
}

/** Marsaglia's 32-bit xorshift (Journal of Statistical Software 8(14), 2003, triple 13, 17, 5), two words to a fraction. */
function uniformFrom(seed: number): () => number {
  let state = seed >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
  for (let k = 0; k < 20; k++) next();
  return () => ((next() >>> 6) * 2 ** 26 + (next() >>> 6) + 0.5) / 2 ** 52;
}

/** Box and Muller's transform, one of its two normals. */
function normalFrom(uniform: () => number): number {
  return Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
