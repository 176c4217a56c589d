import { describe, expect, it } from "vitest";
import { learnSpreads } from "./learn-spreads.ts";
import { designOf, type Effect, type Loading, mixedModelSolver } from "./mixed-model.ts";
import { predictSum } from "./predict-sum.ts";
import { normalFrom, parkMiller } from "./resale.test-kit.ts";

/** Solves a dense system by elimination with pivots, which shares nothing with the code under test. */
function eliminated(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, at) => [...row, right[at]!]);
  for (let at = 0; at < rows.length; at += 1) {
    const best = rows
      .slice(at)
      .reduce((most, row) => (Math.abs(row[at]!) > Math.abs(most[at]!) ? row : most));
    rows.splice(rows.indexOf(best), 1);
    rows.splice(at, 0, best);
    for (const row of rows)
      if (row !== best) {
        const factor = row[at]! / best[at]!;
        for (let column = at; column < row.length; column += 1) row[column]! -= factor * best[column]!;
      }
  }
  return rows.map((row, at) => row.at(-1)! / row[at]!);
}

const level: Effect = { name: "level", mean: 0, variance: null, spread: null };
const slope: Effect = { name: "slope", mean: 0.3, variance: 0.2, spread: null };
const certain: Effect = { name: "certain", mean: 0.7, variance: 0, spread: null };
const model = (at: number): Effect => ({ name: `model ${at}`, mean: 0, variance: 0.5, spread: "models" });

const draw = parkMiller(20_271_001);
const normal = normalFrom(draw);
const values = Array.from({ length: 40 }, (_, at) => ({
  value: 3 + normal(),
  loadings: [
    { effect: level, times: 1 },
    { effect: slope, times: 4 * draw() },
    { effect: certain, times: at % 3 },
    { effect: model(at % 7), times: 1 },
  ] satisfies Loading[],
}));
const variances = values.map(() => 0.2 + draw());
const asked: Loading[] = [
  { effect: level, times: 1 },
  { effect: slope, times: 2 },
  { effect: model(3), times: 1 },
  { effect: { ...model(9), name: "unseen" }, times: 1 },
];

/** Generalised least squares on the values' whole covariance, and kriging with an unknown level: no effect is solved for. */
function byWholeCovariance() {
  const times = (loadings: readonly Loading[], name: string) =>
    loadings.find(({ effect }) => effect.name === name)?.times ?? 0;
  const shared = (one: readonly Loading[], other: readonly Loading[]) =>
    one.reduce(
      (sum, each) => sum + (each.effect.variance ?? 0) * each.times * times(other, each.effect.name),
      0,
    );
  const mean = (loadings: readonly Loading[]) =>
    loadings.reduce((sum, each) => sum + each.effect.mean * each.times, 0);
  const covariance = values.map((one, row) =>
    values.map(
      (other, column) => shared(one.loadings, other.loadings) + (row === column ? variances[row]! : 0),
    ),
  );
  const rests = values.map(({ value, loadings }) => value - mean(loadings));
  const sum = (one: readonly number[], other: readonly number[]) =>
    one.reduce((total, each, at) => total + each * other[at]!, 0);
  const ones = values.map(() => 1);
  const ofOnes = eliminated(covariance, ones);
  const middle = sum(ofOnes, rests) / sum(ofOnes, ones);
  const toAsked = values.map(({ loadings }) => shared(asked, loadings));
  const ofAsked = eliminated(covariance, toAsked);
  const left = 1 - sum(ofAsked, ones);
  return {
    mean:
      mean(asked) +
      middle +
      sum(
        ofAsked,
        rests.map((rest) => rest - middle),
      ),
    variance: shared(asked, asked) - sum(ofAsked, toAsked) + left ** 2 / sum(ofOnes, ones),
  };
}

describe("mixedModelSolver", () => {
  const design = designOf(values);
  const effectVariances = design.effects.map(({ variance }) => variance);
  const solution = mixedModelSolver(design)(variances, effectVariances);
  const learnt = {
    ...{ solution, rowVariances: variances, effectVariances },
    ...{ factors: new Map<string, number>(), degrees: new Map<string, number>() },
  };

  it("predicts what the whole covariance of the values does, solved by elimination", () => {
    // Henderson's equations and generalised least squares give one answer (C. R. Henderson, Biometrics 31, 1975).
    const dense = byWholeCovariance();
    const { mean, ofNoise, ofEffects } = predictSum(design, learnt, asked);
    expect(mean).toBeCloseTo(dense.mean, 9);
    expect(ofNoise + ofEffects).toBeCloseTo(dense.variance, 9);
  });

  it("says how much each value moves the prediction", () => {
    const { mean, weights } = predictSum(design, learnt, asked);
    const moved = values.map((value, at) => (at === 5 ? { ...value, value: value.value + 1 } : value));
    const again = designOf(moved);
    const after = predictSum(
      again,
      { ...learnt, solution: mixedModelSolver(again)(variances, effectVariances) },
      asked,
    );
    expect(after.mean - mean).toBeCloseTo(weights[5]!, 9);
  });
});

describe("learnSpreads", () => {
  const drawn = (ofModels: number, ofNoise: number) => {
    const levels = Array.from({ length: 60 }, () => ofModels * normal());
    return Array.from({ length: 600 }, (_, at) => ({
      value: levels[at % 60]! + ofNoise * normal(),
      loadings: [
        { effect: level, times: 1 },
        { effect: model(at % 60), times: 1 },
      ],
    }));
  };
  const noise = (besides: number) =>
    Array.from({ length: 600 }, () => ({ spread: "own", variance: 1, besides }));

  it.each([
    ["wider than taken for granted", 1.4, 2],
    ["narrower", 0.3, 0.4],
  ])("finds spreads that are %s", (_, ofModels, ofNoise) => {
    const { factors, degrees } = learnSpreads(designOf(drawn(ofModels, ofNoise)), noise(0), 4);
    // The spreads that the values were drawn with.
    expect(Math.sqrt(0.5 * factors.get("models")!) / ofModels).toBeGreaterThan(0.75);
    expect(Math.sqrt(0.5 * factors.get("models")!) / ofModels).toBeLessThan(1.35);
    expect(Math.sqrt(factors.get("own")!) / ofNoise).toBeGreaterThan(0.9);
    expect(Math.sqrt(factors.get("own")!) / ofNoise).toBeLessThan(1.1);
    expect(degrees.get("own")).toBeGreaterThan(500);
  });

  it("leaves a variance out that is there besides", () => {
    const { factors } = learnSpreads(designOf(drawn(0.7, Math.sqrt(0.5 + 0.3))), noise(0.3), 4);
    expect(factors.get("own")).toBeGreaterThan(0.4);
    expect(factors.get("own")).toBeLessThan(0.6);
  });

  it("leaves a spread where it was of which one draw tells nothing", () => {
    const { factors, degrees } = learnSpreads(
      designOf([
        {
          value: 9,
          loadings: [
            { effect: level, times: 1 },
            { effect: model(1), times: 1 },
          ],
        },
      ]),
      [{ spread: "own", variance: 1, besides: 0 }],
      4,
    );
    expect(factors.get("own")).toBeCloseTo(1, 9);
    expect(factors.get("models")).toBeCloseTo(1, 9);
    expect(degrees.get("own")).toBeCloseTo(4, 9);
  });
});
