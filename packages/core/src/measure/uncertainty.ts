import type { Interval } from "../interval.ts";

/** One input of a measurement model: its best estimate and standard uncertainty, both in the unit its name says. */
export interface UncertainInput<N extends string> {
  readonly name: N;
  readonly value: number;
  readonly standardUncertainty: number;
}

/** The correlation coefficient of two inputs, -1 to 1. Pairs that are not listed are independent. */
export interface Correlation<N extends string> {
  readonly a: N;
  readonly b: N;
  readonly r: number;
}

/** How much of the variance one input explains. Shares add up to 1; a negative one (only with correlations) narrows it. */
export interface Contribution<N extends string> {
  readonly name: N;
  readonly share: number;
}

export interface Propagated<N extends string> {
  readonly value: number;
  readonly standardUncertainty: number;
  /** Widest first. All shares are 0 when nothing is uncertain. */
  readonly contributions: readonly Contribution<N>[];
}

/** What the model is called with: one record, changed in place between calls, so a model must not keep it. */
export type Point<N extends string> = Readonly<Record<N, number>>;

/** The factor for a 95 % interval of a normal distribution (JCGM 100:2008 table G.1, printed 1.960). */
export const coverageFactor95 = 1.96;

/** The 95 % interval about a value. */
export function interval95(estimate: {
  readonly value: number;
  readonly standardUncertainty: number;
}): Interval {
  const half = coverageFactor95 * estimate.standardUncertainty;
  return { low: estimate.value - half, high: estimate.value + half };
}

/**
 * The law of propagation of uncertainty (JCGM 100:2008, 5.1.2 and 5.2.2) with sensitivities from central differences. Where
 * the model gives no number on one side of a point (a refusal near a bound), the other side alone is used.
 * Throws when the model gives no number at the point itself, when names repeat, or when a correlation is no correlation.
 */
export function propagate<N extends string>(
  f: (at: Point<N>) => number,
  inputs: readonly UncertainInput<N>[],
  correlations: readonly Correlation<N>[] = [],
): Propagated<N> {
  const at = pointOf(inputs);
  const value = f(at);
  if (!Number.isFinite(value)) throw new RangeError(`the model gives ${value} at its own best estimate`);
  // cu[i] is the change of the result for one standard uncertainty of input i.
  const cu = new Float64Array(inputs.length);
  for (let i = 0; i < inputs.length; i++) cu[i] = changeForOneUncertainty(f, at, inputs[i]!, value);
  const parts = varianceParts(cu, inputs, correlations);
  let variance = 0;
  for (const part of parts) variance += part;
  return {
    value,
    standardUncertainty: Math.sqrt(Math.max(0, variance)),
    contributions: contributionsOf(inputs, parts, variance),
  };
}

export interface PropagatedMany {
  readonly values: readonly number[];
  readonly standardUncertainties: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** NaN for a pair of which one output is certain. */
  readonly correlation: readonly (readonly number[])[];
}

/**
 * The same law for a model of several results (JCGM 102:2011, clause 6: the covariance is C U Cᵀ). The model may return the
 * same array each time. Throws as `propagate` does.
 */
export function propagateMany<N extends string>(
  f: (at: Point<N>) => readonly number[],
  inputs: readonly UncertainInput<N>[],
  correlations: readonly Correlation<N>[] = [],
): PropagatedMany {
  const at = pointOf(inputs);
  const values = [...f(at)];
  if (!values.every(Number.isFinite))
    throw new RangeError(`the model gives ${values.join(", ")} at its own best estimate`);
  const cu = values.map((value, k) => {
    const one = (point: Point<N>): number => f(point)[k] ?? Number.NaN;
    return Float64Array.from(inputs, (input) => changeForOneUncertainty(one, at, input, value));
  });
  const r = correlationMatrix(inputs, correlations);
  const covariance = cu.map((row) => cu.map((column) => bilinear(row, r, column)));
  const standardUncertainties = covariance.map((row, k) => Math.sqrt(Math.max(0, row[k]!)));
  const correlation = covariance.map((row, k) =>
    row.map((c, l) => c / (standardUncertainties[k]! * standardUncertainties[l]!)),
  );
  return { values, standardUncertainties, covariance, correlation };
}

export interface TypeA {
  readonly mean: number;
  /** Of one observation. */
  readonly standardDeviation: number;
  /** Of the mean. */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/** A Type A evaluation of independent observations (JCGM 100:2008, 4.2). Throws with fewer than two of them. */
export function typeA(observations: readonly number[]): TypeA {
  const joint = typeAJoint([observations]);
  const standardUncertainty = Math.sqrt(joint.covarianceOfMeans[0]![0]!);
  return {
    mean: joint.means[0]!,
    standardDeviation: standardUncertainty * Math.sqrt(observations.length),
    standardUncertainty,
    degreesOfFreedom: observations.length - 1,
  };
}

export interface TypeAJoint {
  readonly means: readonly number[];
  readonly covarianceOfMeans: readonly (readonly number[])[];
  readonly correlation: readonly (readonly number[])[];
}

/** Means of quantities observed together and the covariance of those means (JCGM 100:2008, equation 17). */
export function typeAJoint(series: readonly (readonly number[])[]): TypeAJoint {
  const count = series[0]?.length ?? 0;
  if (count < 2) throw new RangeError(`a Type A evaluation needs two observations or more, got ${count}`);
  if (series.some((one) => one.length !== count))
    throw new RangeError("series observed together must be equally long");
  const means = series.map((one) => one.reduce((sum, x) => sum + x, 0) / count);
  const covarianceOfMeans = series.map((one, i) =>
    series.map((other, j) => {
      let sum = 0;
      for (let k = 0; k < count; k++) sum += (one[k]! - means[i]!) * (other[k]! - means[j]!);
      return sum / (count * (count - 1));
    }),
  );
  const correlation = covarianceOfMeans.map((row, i) =>
    row.map((c, j) => c / Math.sqrt(row[i]! * covarianceOfMeans[j]![j]!)),
  );
  return { means, covarianceOfMeans, correlation };
}

/** Standard uncertainty of a value anywhere within ± the half-width alike (JCGM 100:2008, 4.3.7). */
export function rectangularUncertainty(halfWidth: number): number {
  return halfWidth / Math.sqrt(3);
}

/** Standard uncertainty of a reading rounded to a step of the scale (JCGM 100:2008, F.2.2.1). */
export function resolutionUncertainty(step: number): number {
  return step / Math.sqrt(12);
}

/** Standard uncertainty of a value that swings between ± the half-width as a sine does (JCGM 101:2008, 6.4.6). */
export function arcsineUncertainty(halfWidth: number): number {
  return halfWidth / Math.SQRT2;
}

/** Standard uncertainty of a rectangle whose half-width is itself only known to ± `limitSlack` (JCGM 101:2008, 6.4.3.3). */
export function curvilinearTrapezoidUncertainty(given: {
  readonly halfWidth: number;
  readonly limitSlack: number;
}): number {
  return Math.sqrt((2 * given.halfWidth) ** 2 / 12 + given.limitSlack ** 2 / 9);
}

/**
 * Effective degrees of freedom (Welch–Satterthwaite, JCGM 100:2008, G.4.1). Each uncertainty is in the unit of the result;
 * `Infinity` is a number of degrees of freedom. Infinity when nothing finite is uncertain.
 */
export function effectiveDegreesOfFreedom(
  components: readonly {
    readonly standardUncertainty: number;
    readonly degreesOfFreedom: number;
  }[],
): number {
  let variance = 0;
  let fourths = 0;
  for (const { standardUncertainty, degreesOfFreedom } of components) {
    variance += standardUncertainty ** 2;
    fourths += standardUncertainty ** 4 / degreesOfFreedom;
  }
  return fourths === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / fourths;
}

function pointOf<N extends string>(inputs: readonly UncertainInput<N>[]): Record<N, number> {
  const at = {} as Record<N, number>;
  for (const { name, value, standardUncertainty } of inputs) {
    if (Object.hasOwn(at, name)) throw new RangeError(`input ${name} is given twice`);
    if (!(standardUncertainty >= 0))
      throw new RangeError(`input ${name} has uncertainty ${standardUncertainty}`);
    at[name] = value;
  }
  return at;
}

// The step has to be small beside the uncertainty, so that the slope is that of the point and not of the spread, and large
// beside the rounding of the value. The cube root of the machine epsilon balances the two errors of a central difference.
const uncertaintyStep = 1e-3;
const roundingStep = Math.cbrt(Number.EPSILON);

function changeForOneUncertainty<N extends string>(
  f: (at: Point<N>) => number,
  at: Record<N, number>,
  { name, value, standardUncertainty }: UncertainInput<N>,
  middle: number,
): number {
  if (standardUncertainty === 0) return 0;
  const step = Math.max(uncertaintyStep * standardUncertainty, roundingStep * Math.abs(value));
  at[name] = value + step;
  const above = f(at);
  at[name] = value - step;
  const below = f(at);
  at[name] = value;
  const slope = slopeFrom(below, middle, above, step);
  if (!Number.isFinite(slope)) throw new RangeError(`the model has no slope along ${name} at ${value}`);
  return slope * standardUncertainty;
}

function slopeFrom(below: number, middle: number, above: number, step: number): number {
  if (!Number.isFinite(below)) return (above - middle) / step;
  if (!Number.isFinite(above)) return (middle - below) / step;
  return (above - below) / (2 * step);
}

function varianceParts<N extends string>(
  cu: Float64Array,
  inputs: readonly UncertainInput<N>[],
  correlations: readonly Correlation<N>[],
): Float64Array {
  const parts = cu.map((c) => c * c);
  // A covariance belongs to both of its inputs: each takes half of 2 r (c u)(c u).
  for (const correlation of correlations) {
    const [i, j] = indicesOf(inputs, correlation);
    const half = correlation.r * cu[i]! * cu[j]!;
    parts[i]! += half;
    parts[j]! += half;
  }
  return parts;
}

function contributionsOf<N extends string>(
  inputs: readonly UncertainInput<N>[],
  parts: Float64Array,
  variance: number,
): Contribution<N>[] {
  const contributions = inputs.map(({ name }, i) => ({
    name,
    share: variance > 0 ? parts[i]! / variance : 0,
  }));
  return contributions.sort((one, other) => other.share - one.share);
}

function indicesOf<N extends string>(
  inputs: readonly UncertainInput<N>[],
  { a, b, r }: Correlation<N>,
): [number, number] {
  const i = inputs.findIndex(({ name }) => name === a);
  const j = inputs.findIndex(({ name }) => name === b);
  if (i < 0 || j < 0 || i === j) throw new RangeError(`no such pair of inputs: ${a} and ${b}`);
  if (!(r >= -1 && r <= 1)) throw new RangeError(`a correlation lies within -1 and 1, got ${r}`);
  return [i, j];
}

function correlationMatrix<N extends string>(
  inputs: readonly UncertainInput<N>[],
  correlations: readonly Correlation<N>[],
): Float64Array[] {
  const matrix = inputs.map((_, i) => {
    const row = new Float64Array(inputs.length);
    row[i] = 1;
    return row;
  });
  for (const correlation of correlations) {
    const [i, j] = indicesOf(inputs, correlation);
    matrix[i]![j] = correlation.r;
    matrix[j]![i] = correlation.r;
  }
  return matrix;
}

function bilinear(row: Float64Array, matrix: readonly Float64Array[], column: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < row.length; i++) {
    for (let j = 0; j < column.length; j++) sum += row[i]! * matrix[i]![j]! * column[j]!;
  }
  return sum;
}
