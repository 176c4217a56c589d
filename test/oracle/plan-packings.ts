import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";

/** S. K. Park and K. W. Miller, Communications of the ACM 31 (1988): x ← 16807 x mod (2³¹ − 1). */
export function parkMiller(seed: number): () => number {
  let value = seed;
  return () => {
    value = (value * 16807) % 2147483647;
    return value;
  };
}

/** Weighted sets of things of which each can be taken once: a plan with nothing but uses. */
export function packingModel(sets: readonly (readonly number[])[], weights: readonly number[]): PlanModel {
  const things = [...new Set(sets.flat())];
  return {
    resources: things.map((thing) => ({ id: `thing ${thing}`, count: 1 })),
    uses: sets.map((set, at) => ({
      // Ids in the order given, so that of equal weights the first comes first.
      id: `set ${String(at).padStart(4, "0")}`,
      takes: set.map((thing) => ({ resource: `thing ${thing}`, count: 1 })),
      netMinor: weights[at]!,
      minutes: 0,
      outlayMinor: 0,
    })),
    bundles: [],
    trips: [],
    limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
  };
}

/** Sets of three drawn at random; a thing that the set has already is drawn again. */
export function drawnPacking(seed: number, setCount: number, thingCount: number): PlanModel {
  const next = parkMiller(seed);
  const weights: number[] = [];
  const sets = Array.from({ length: setCount }, () => {
    const set = new Set<number>();
    while (set.size < 3) set.add(next() % thingCount);
    weights.push((next() % 100) + 1);
    return [...set];
  });
  return packingModel(sets, weights);
}

/** Triples of one thing of each of three rows of n, worth `worthOf` the cost that the generator gives, i, j, k nested. */
export function threeIndex(n: number, worthOf: (cost: number) => number): PlanModel {
  const next = parkMiller(1);
  const range = Array.from({ length: n }, (_, at) => at);
  const triples = range.flatMap((i) =>
    range.flatMap((j) => range.map((k) => ({ set: [i, n + j, 2 * n + k], cost: next() % 100 }))),
  );
  return packingModel(
    triples.map(({ set }) => set),
    triples.map(({ cost }) => worthOf(cost)),
  );
}
