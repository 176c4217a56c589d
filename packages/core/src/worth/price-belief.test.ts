import { describe, expect, it } from "vitest";
import { exponentialLaw, normalLaw, uniformLaw } from "./offer-laws.test-kit.ts";
import { priceBeliefOf } from "./price-belief.ts";
import { logNormalPrices, type PriceLaw } from "./price-law.ts";

const prior = { medianMinor: 6000, sigmaLog: 0.5, weight: 2 };

describe("what prices are believed to be", () => {
  it("is the prior itself, and says so, before one was seen", () =>
    expect(priceBeliefOf([], prior)).toEqual({
      medianMinor: 6000,
      sigmaLog: 0.5,
      count: 0,
      priorOnly: true,
    }));

  it("takes the geometric mean of prior and prices by their weights", () => {
    const belief = priceBeliefOf([3000, 3000], prior);
    expect(belief.medianMinor).toBeCloseTo(Math.sqrt(6000 * 3000), 9);
    expect(belief).toMatchObject({ count: 2, priorOnly: false });
  });

  // Worked by hand: within = 0.25/1.5; between = (2·1/3)·ln(2)²; variance = (2·within + between)/3 · 4/3.
  it("spreads by prior, prices and the gap between them", () =>
    expect(priceBeliefOf([12_000], prior).sigmaLog).toBeCloseTo(
      Math.sqrt((((2 * 0.25) / 1.5 + (2 / 3) * Math.log(2) ** 2) / 3) * (4 / 3)),
      12,
    ));

  it("narrows with prices that agree, and comes to the spread of many that do not", () => {
    const alike = priceBeliefOf([5900, 6000, 6100, 6000, 5950, 6050], prior);
    expect(alike.sigmaLog).toBeLessThan(0.4);
    const many = Array.from({ length: 2000 }, (_, at) => 6000 * Math.exp(at % 2 === 0 ? 0.3 : -0.3));
    expect(priceBeliefOf(many, prior).sigmaLog).toBeCloseTo(0.3, 2);
    expect(priceBeliefOf(many, prior).medianMinor).toBeCloseTo(6000, 6);
  });

  it("leaves out what has no logarithm, and refuses a prior that is none", () => {
    expect(priceBeliefOf([0, 3000], prior)).toEqual(priceBeliefOf([3000], prior));
    expect(priceBeliefOf([0], prior).priorOnly).toBe(true);
    expect(() => priceBeliefOf([], { ...prior, weight: 0 })).toThrow(RangeError);
  });
});

/** The expected saving is the area under the distribution function up to the limit: E[(k − P)⁺] = ∫ F. */
function areaUnder(law: PriceLaw, from: number, limit: number): number {
  const cells = 200_000;
  const width = (limit - from) / cells;
  return Array.from({ length: cells }, (_, at) => law.cdf(from + (at + 0.5) * width)).reduce(
    (sum, chance) => sum + chance * width,
    0,
  );
}

describe("laws of prices", () => {
  const logNormal = logNormalPrices({ medianMinor: 6000, sigmaLog: 0.5 });

  // Derived, no published source: an identity that every law keeps.
  it.each([
    ["log-normal", logNormal, 0, [0, 1000, 6000, 20_000]],
    ["uniform", uniformLaw(4000, 9000), 0, [3000, 5000, 12_000]],
    ["exponential", exponentialLaw(5000), 0, [500, 5000, 30_000]],
    ["normal", normalLaw(6000, 800), -4000, [4000, 6000, 9000]],
  ] as const)("save, when %s, the area under their distribution function", (_name, law, from, limits) => {
    for (const limit of limits)
      expect(law.expectedSaving(limit) / 1000).toBeCloseTo(areaUnder(law, from, limit) / 1000, 5);
  });

  it.each([
    ["log-normal", logNormal],
    ["uniform", uniformLaw(4000, 9000)],
    ["exponential", exponentialLaw(5000)],
    ["normal", normalLaw(6000, 800)],
  ] as const)("have, when %s, quantiles that go back to their chances", (_name, law) => {
    for (const chance of [0.01, 0.25, 0.5, 0.99])
      expect(law.cdf(law.quantile(chance))).toBeCloseTo(chance, 9);
  });

  it("never sell a part for less than nothing, when log-normal", () => {
    expect(logNormal.cdf(0)).toBe(0);
    expect(logNormal.cdf(-1)).toBe(0);
    expect(logNormal.expectedSaving(-1)).toBe(0);
    expect(logNormal.expectedSaving(1e-6)).toBeGreaterThanOrEqual(0);
    expect(() => logNormalPrices({ medianMinor: 0, sigmaLog: 0.5 })).toThrow(RangeError);
  });
});
