import { type Design, mixedModelSolver, type Solution, sumOfEffects } from "./mixed-model.ts";

/** What is a value's own, beside its effects. */
export interface OwnNoise {
  /** The spread it is a draw of, learnt from all its draws together. */
  readonly spread: string;
  /** Variance before anything is seen; a value that counts half has twice as much. */
  readonly variance: number;
  /** Variance that is there besides, whatever is learnt. */
  readonly besides: number;
}

export interface Learnt {
  readonly solution: Solution;
  /** By spread: the factor on its variance. */
  readonly factors: ReadonlyMap<string, number>;
  /** By spread: how many degrees of freedom it is known with. */
  readonly degrees: ReadonlyMap<string, number>;
  readonly rowVariances: readonly number[];
  readonly effectVariances: readonly (number | null)[];
}

/** What has been seen of one spread: squares over what was taken for granted, how many, and how many of those tell something. */
interface Seen {
  squares: number;
  count: number;
  telling: number;
}

/** Each turn brings the factors nearer, the first ones most. */
const turns = 5;

/**
 * Learns how wide each spread is together with the effects, by expectation and maximisation (A. Gelman et al., Bayesian Data
 * Analysis, 3rd ed., sections 13.4 and 15.1): each spread's variance has a scaled inverse χ² prior that is worth
 * `priorDegrees` values, so that one that little is seen of stays where it was.
 */
export function learnSpreads(design: Design, noise: readonly OwnNoise[], priorDegrees: number): Learnt {
  let factors: ReadonlyMap<string, number> = new Map();
  const solve = mixedModelSolver(design);
  let learnt = solved(design, solve, noise, factors, priorDegrees);
  for (let turn = 1; turn < turns; turn += 1) {
    factors = learnt.next;
    learnt = solved(design, solve, noise, factors, priorDegrees);
  }
  const { next: _, ...last } = learnt;
  return last;
}

function solved(
  design: Design,
  solve: ReturnType<typeof mixedModelSolver>,
  noise: readonly OwnNoise[],
  factors: ReadonlyMap<string, number>,
  priorDegrees: number,
): Learnt & { readonly next: ReadonlyMap<string, number> } {
  const factor = (spread: string | null) => (spread === null ? 1 : (factors.get(spread) ?? 1));
  const rowVariances = noise.map(({ spread, variance, besides }) => factor(spread) * variance + besides);
  const effectVariances = design.effects.map(({ spread, variance }) =>
    variance === null ? null : factor(spread) * variance,
  );
  const solution = solve(rowVariances, effectVariances);
  const seen = new Map<string, Seen>();
  seeEffects(seen, design, solution, effectVariances);
  seeNoise(seen, design, solution, noise, rowVariances);
  const next = new Map<string, number>();
  const degrees = new Map<string, number>();
  for (const [spread, { squares, count, telling }] of seen) {
    next.set(spread, (priorDegrees + squares) / (priorDegrees + count));
    degrees.set(spread, priorDegrees + telling);
  }
  return { solution, factors, degrees, rowVariances, effectVariances, next };
}

function see(seen: Map<string, Seen>, spread: string, squares: number, telling: number): void {
  const before = seen.get(spread) ?? { squares: 0, count: 0, telling: 0 };
  before.squares += squares;
  before.count += 1;
  before.telling += Math.max(0, telling);
  seen.set(spread, before);
}

function seeEffects(
  seen: Map<string, Seen>,
  { effects }: Design,
  { means, covariance }: Solution,
  variances: readonly (number | null)[],
): void {
  for (const [at, { spread, variance }] of effects.entries()) {
    if (spread === null || variance === null) continue;
    const unsure = covariance[at * effects.length + at] as number;
    const squares = ((means[at] as number) ** 2 + unsure) / variance;
    see(seen, spread, squares, 1 - unsure / (variances[at] as number));
  }
}

function seeNoise(
  seen: Map<string, Seen>,
  { rows }: Design,
  solution: Solution,
  noise: readonly OwnNoise[],
  variances: readonly number[],
): void {
  for (const [at, row] of rows.entries()) {
    const { spread, variance, besides } = noise[at] as OwnNoise;
    const all = variances[at] as number;
    const share = (all - besides) / all;
    const sum = sumOfEffects(solution, row);
    const left = (row.rest - sum.mean) ** 2 + sum.variance;
    see(seen, spread, (share ** 2 * left + share * besides) / variance, share * (1 - sum.variance / all));
  }
}
