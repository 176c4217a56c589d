import { describe, expect, it } from "vitest";
import { arrivalsOf, weakArrivalPrior } from "./arrivals.ts";
import { gammaCdf, gammaQuantile } from "./gamma-law.ts";

describe("how often a part turns up", () => {
  it("is the prior alone, and says so, until somebody has looked", () => {
    const arrivals = arrivalsOf({ count: 0, weeks: 0 });
    expect(arrivals).toMatchObject({ ...weakArrivalPrior, ratePerWeek: 1 / 8, count: 0, priorOnly: true });
    // An exponential law, whose quantiles are logarithms (derived, no published source).
    expect(arrivals.low).toBeCloseTo(-Math.log(0.975) / 8, 12);
    expect(arrivals.high).toBeCloseTo(-Math.log(0.025) / 8, 12);
  });

  it("adds counts to the shape and weeks to the weeks", () =>
    expect(arrivalsOf({ count: 5, weeks: 12 }, { shape: 2, weeks: 4 })).toMatchObject({
      ratePerWeek: 7 / 16,
      shape: 7,
      weeks: 16,
      count: 5,
      priorOnly: false,
    }));

  it("comes down when weeks of looking show nothing", () => {
    const nothing = arrivalsOf({ count: 0, weeks: 20 });
    expect(nothing.priorOnly).toBe(false);
    expect(nothing.ratePerWeek).toBeLessThan(arrivalsOf({ count: 0, weeks: 0 }).ratePerWeek);
  });

  it("comes near what is seen, with a narrower interval, the longer one looks", () => {
    const [little, much] = [arrivalsOf({ count: 4, weeks: 8 }), arrivalsOf({ count: 400, weeks: 800 })];
    expect(much.ratePerWeek).toBeCloseTo(0.5, 2);
    expect(much.high - much.low).toBeLessThan((little.high - little.low) / 5);
    for (const { low, ratePerWeek, high } of [little, much]) {
      expect(low).toBeLessThan(ratePerWeek);
      expect(high).toBeGreaterThan(ratePerWeek);
    }
  });

  it("refuses what nobody can have seen", () => {
    expect(() => arrivalsOf({ count: -1, weeks: 3 })).toThrow(RangeError);
    expect(() => arrivalsOf({ count: 1, weeks: 3 }, { shape: 0, weeks: 8 })).toThrow(RangeError);
  });
});

describe("the gamma law", () => {
  // For whole shapes it is a Poisson sum (NIST DLMF 8.4.10): P(n, x) = 1 − e^(−x) Σ xᵏ/k! over k < n.
  it.each([
    [1, 0.025],
    [1, 3],
    [2, 0.3],
    [3, 2],
    [7, 7],
    [20, 12],
    [20, 35],
  ])("with shape %d is a Poisson sum at %d", (shape, at) => {
    let [term, sum] = [1, 1];
    for (let k = 1; k < shape; k += 1) {
      term *= at / k;
      sum += term;
    }
    expect(gammaCdf(shape, at)).toBeCloseTo(1 - Math.exp(-at) * sum, 13);
  });

  // Half a squared normal draw has shape ½: Φ(1.96) is printed 0.975 (JCGM 100:2008, table G.1 gives 1.960 for 95 %).
  it("with shape one half is the law of half a squared normal draw", () =>
    expect(gammaCdf(0.5, 1.96 ** 2 / 2)).toBeCloseTo(0.95, 4));

  it.each([0.3, 1, 4.5, 60])("with shape %d has quantiles that go back to their chances", (shape) => {
    for (const chance of [0.001, 0.025, 0.5, 0.975]) {
      expect(gammaCdf(shape, gammaQuantile(shape, chance))).toBeCloseTo(chance, 12);
    }
  });

  it("throws at no shape and at no chance", () => {
    expect(() => gammaCdf(0, 1)).toThrow(RangeError);
    expect(() => gammaQuantile(1, 1)).toThrow(RangeError);
    expect(gammaCdf(2, -1)).toBe(0);
  });
});
