import { studentQuantile } from "./student-t.ts";

/** One logarithm of a price (or of days), with the weight of a row that is as good as it gets being 1. */
export interface WeighedRow {
  readonly id: string;
  readonly value: number;
  readonly weight: number;
  /** Rows of one group share a level; null is the group of the thing itself. */
  readonly group: string | null;
  /** Standard deviation of that group's level about the thing's own, in logarithms. */
  readonly levelSpread: number;
}

export interface SpreadPrior {
  readonly spread: number;
  readonly degreesOfFreedom: number;
  /** Added to the spread of the next value, however much evidence there is. */
  readonly extraSpread: number;
}

export interface Prediction {
  readonly middle: number;
  /** Half of the 95 % interval of the next value. */
  readonly halfWidth: number;
  /** How many rows of weight 1 and of the thing itself the evidence amounts to. */
  readonly effectiveCount: number;
  /** By id; together 1. */
  readonly shares: ReadonlyMap<string, number>;
}

interface Level {
  readonly rows: readonly WeighedRow[];
  /** Sum of the weights, weighted mean, weighted sum of squares about it. */
  readonly count: number;
  readonly mean: number;
  readonly squares: number;
  readonly levelSpread: number;
}

const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

function levelOf(rows: readonly WeighedRow[]): Level {
  const count = sumOf(rows.map((row) => row.weight));
  const mean = sumOf(rows.map((row) => row.weight * row.value)) / count;
  const squares = sumOf(rows.map((row) => row.weight * (row.value - mean) ** 2));
  const levelSpread = sumOf(rows.map((row) => row.weight * row.levelSpread)) / count;
  return { rows, count, mean, squares, levelSpread };
}

/** What other things of the class say of the level: its middle, and its precision in prices of the thing itself. */
interface ClassLevel {
  readonly mean: number;
  readonly precision: number;
  readonly parts: readonly { readonly level: Level; readonly share: number }[];
}

function pooled(levels: readonly Level[], levelVariance: (level: Level) => number): ClassLevel {
  const precisions = levels.map((level) => 1 / (1 / level.count + levelVariance(level)));
  const total = sumOf(precisions);
  const parts = levels.map((level, at) => ({ level, share: (precisions[at] as number) / total }));
  const mean = sumOf(parts.map(({ level, share }) => share * level.mean));
  // The thing's own distance from its class is not made smaller by many others: it is added once, whole.
  const own = sumOf(parts.map(({ level, share }) => share * levelVariance(level)));
  return { mean, precision: 1 / (1 / total + own), parts };
}

/** How much further than the prior says the levels of a class lie from each other, shrunk towards the prior, as a factor on their variance. */
function levelInflation(levels: readonly Level[], prior: SpreadPrior): number {
  const variance = (level: Level) => (level.levelSpread / prior.spread) ** 2;
  const { mean } = pooled(levels, variance);
  const squares = levels.map(
    (level) => ((level.mean - mean) / prior.spread) ** 2 / (1 / level.count + variance(level)),
  );
  return (prior.degreesOfFreedom + sumOf(squares)) / (prior.degreesOfFreedom + levels.length - 1);
}

function classLevelOf(levels: readonly Level[], prior: SpreadPrior): ClassLevel | null {
  if (levels.length === 0) return null;
  const inflation = levelInflation(levels, prior);
  return pooled(levels, (level) => inflation * (level.levelSpread / prior.spread) ** 2);
}

function sharesOf(own: Level | null, others: ClassLevel | null, count: number): Map<string, number> {
  const shares = new Map<string, number>();
  for (const row of own?.rows ?? []) shares.set(row.id, row.weight / count);
  for (const { level, share } of others?.parts ?? [])
    for (const row of level.rows)
      shares.set(row.id, ((others as ClassLevel).precision / count) * share * (row.weight / level.count));
  return shares;
}

function levelsOf(rows: readonly WeighedRow[]): { own: Level | null; others: Level[] } {
  const byGroup = new Map<string | null, WeighedRow[]>();
  for (const row of rows) {
    const group = byGroup.get(row.group);
    if (group) group.push(row);
    else byGroup.set(row.group, [row]);
  }
  const own = byGroup.get(null);
  byGroup.delete(null);
  return { own: own ? levelOf(own) : null, others: [...byGroup.values()].map(levelOf) };
}

/** Variance of noise from one value to the next: the prior's, moved by weighted squares about each level. */
function noiseOf(own: Level | null, others: readonly Level[], middle: number, prior: SpreadPrior) {
  const ownSquares = own ? own.squares + own.count * (own.mean - middle) ** 2 : 0;
  const squares = ownSquares + sumOf(others.map((level) => level.squares));
  const counted = sumOf([...(own ? [own] : []), ...others].map((level) => Math.max(0, level.count - 1)));
  const degreesOfFreedom = prior.degreesOfFreedom + counted;
  return {
    variance: (prior.degreesOfFreedom * prior.spread ** 2 + squares) / degreesOfFreedom,
    degreesOfFreedom,
  };
}

/** Half of the 95 % interval of the next value, where `own` and `others` are the precisions of the two sources, in values of weight 1. */
function halfWidthOf(
  noise: ReturnType<typeof noiseOf>,
  precision: { readonly own: number; readonly others: number; readonly levels: number },
  prior: SpreadPrior,
): number {
  const count = precision.own + precision.others;
  const ofNoise = noise.variance * (1 + precision.own / count ** 2);
  const ofLevels = Math.max(noise.variance, prior.spread ** 2) * (precision.others / count ** 2);
  const levelDegrees = prior.degreesOfFreedom + Math.max(0, precision.levels - 1);
  // Two variances that are each estimated add up to about one with these degrees of freedom (Satterthwaite 1946).
  const degreesOfFreedom =
    (ofNoise + ofLevels) ** 2 / (ofNoise ** 2 / noise.degreesOfFreedom + ofLevels ** 2 / levelDegrees);
  const scale = Math.sqrt(ofNoise + ofLevels + prior.extraSpread ** 2);
  return studentQuantile(0.975, degreesOfFreedom) * scale;
}

/**
 * What the next value of a thing would be, from weighed values of it and of others of its class: a normal level within a normal
 * class, each with a prior on its spread, so that the next value is Student's t about the weighted mean. The spread is the
 * prior's, moved by weighted residuals; the others pull by precision, and never count for more than how alike things of
 * a class are. Derived, no published source beyond the normal model. Null without a row.
 */
export function predictNext(rows: readonly WeighedRow[], prior: SpreadPrior): Prediction | null {
  // In one order whatever order they come in, so that not even the last bit of a sum depends on it.
  const sorted = [...rows].sort((one, other) => one.value - other.value || (one.id < other.id ? -1 : 1));
  const { own, others } = levelsOf(sorted);
  const classLevel = classLevelOf(others, prior);
  if (!own && !classLevel) return null;
  const precision = { own: own?.count ?? 0, others: classLevel?.precision ?? 0, levels: others.length };
  const count = precision.own + precision.others;
  const middle = (precision.own * (own?.mean ?? 0) + precision.others * (classLevel?.mean ?? 0)) / count;
  const noise = noiseOf(own, others, middle, prior);
  return {
    middle,
    halfWidth: halfWidthOf(noise, precision, prior),
    effectiveCount: count,
    shares: sharesOf(own, classLevel, count),
  };
}
