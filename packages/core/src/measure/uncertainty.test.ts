import { describe, expect, test } from "vitest";
import {
  arcsineUncertainty,
  curvilinearTrapezoidUncertainty,
  effectiveDegreesOfFreedom,
  interval95,
  propagate,
  propagateMany,
  rectangularUncertainty,
  resolutionUncertainty,
  typeA,
  typeAJoint,
} from "./uncertainty.ts";

const inputs = [
  { name: "x", value: 3, standardUncertainty: 0.1 },
  { name: "y", value: 5, standardUncertainty: 0.2 },
] as const;

describe("propagate", () => {
  test("adds variances of independent terms, each with its sensitivity (JCGM 100:2008, 5.1.2)", () => {
    const { value, standardUncertainty } = propagate(({ x, y }) => 2 * x - y, inputs);
    expect(value).toBe(1);
    expect(standardUncertainty).toBeCloseTo(Math.hypot(0.2, 0.2), 9);
  });

  test("lists what each input explains, widest first, adding up to all of it", () => {
    const { contributions } = propagate(({ x, y }) => x * y, inputs);
    expect(contributions.map(({ name }) => name)).toEqual(["y", "x"]);
    expect(contributions[0]!.share).toBeCloseTo(0.36 / 0.61, 8);
    expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test.each([
    [1, 0.3],
    [0, Math.hypot(0.1, 0.2)],
    [-1, 0.1],
  ])("a sum of inputs correlated by %d has uncertainty %d (JCGM 100:2008, 5.2.2)", (r, expected) => {
    const { standardUncertainty } = propagate(({ x, y }) => x + y, inputs, [{ a: "x", b: "y", r }]);
    expect(standardUncertainty).toBeCloseTo(expected, 9);
  });

  test("takes the slope at the point and not over the spread (the linear row of NPL DEM-ES-011, 9.2)", () => {
    const x = {
      name: "x",
      value: 0.6,
      standardUncertainty: 0.5 / Math.sqrt(3),
    } as const;
    expect(propagate((at) => Math.log(at.x), [x]).standardUncertainty).toBeCloseTo(
      x.standardUncertainty / 0.6,
      6,
    );
  });

  test("keeps its accuracy for a large value with a tiny uncertainty", () => {
    const big = {
      name: "x",
      value: 50_000_623,
      standardUncertainty: 1e-6,
    } as const;
    expect(propagate((at) => at.x, [big]).standardUncertainty / 1e-6).toBeCloseTo(1, 6);
  });

  test("uses the side that has an answer at the edge of a model's range", () => {
    const edge = { name: "x", value: 1, standardUncertainty: 0.1 } as const;
    const { standardUncertainty } = propagate(({ x }) => (x > 1 ? Number.NaN : 3 * x), [edge]);
    expect(standardUncertainty).toBeCloseTo(0.3, 9);
  });

  test("an input without uncertainty is not even moved, and nothing uncertain means no share", () => {
    let calls = 0;
    const sure = { name: "x", value: 2, standardUncertainty: 0 } as const;
    const result = propagate(
      ({ x }) => {
        calls += 1;
        return x;
      },
      [sure],
    );
    expect(calls).toBe(1);
    expect(result).toEqual({
      value: 2,
      standardUncertainty: 0,
      contributions: [{ name: "x", share: 0 }],
    });
  });

  test("throws where a caller slipped", () => {
    expect(() => propagate(() => Number.NaN, inputs)).toThrow(/NaN at its own best estimate/);
    expect(() => propagate(({ x }) => x, [inputs[0], inputs[0]])).toThrow(/x is given twice/);
    expect(() => propagate(({ x }) => x, [{ ...inputs[0], standardUncertainty: -1 }])).toThrow(
      /uncertainty -1/,
    );
    expect(() => propagate(({ x }) => x, inputs, [{ a: "x", b: "y", r: 1.2 }])).toThrow(/within -1 and 1/);
    expect(() => propagate(({ x }) => x, inputs, [{ a: "x", b: "x", r: 1 }])).toThrow(/no such pair/);
  });
});

describe("propagateMany", () => {
  test("agrees with propagate on each result and knows that two results share an input", () => {
    const model = ({ x, y }: Readonly<Record<"x" | "y", number>>) => [x + y, x * y];
    const correlations = [{ a: "x", b: "y", r: 0.4 }] as const;
    const many = propagateMany(model, inputs, correlations);
    const sum = propagate((at) => at.x + at.y, inputs, correlations);
    const product = propagate((at) => at.x * at.y, inputs, correlations);
    expect(many.values).toEqual([8, 15]);
    expect(many.standardUncertainties[0]).toBeCloseTo(sum.standardUncertainty, 10);
    expect(many.standardUncertainties[1]).toBeCloseTo(product.standardUncertainty, 10);
    // 5·u²x + 3·u²y + (3 + 5)·r·ux·uy
    expect(many.covariance[0]![1]).toBeCloseTo(5 * 0.01 + 3 * 0.04 + 8 * 0.4 * 0.02, 8);
  });

  test("results that are the same are wholly correlated, opposite ones wholly anticorrelated", () => {
    const { correlation } = propagateMany(({ x, y }) => [x * y, x * y, -x * y], inputs);
    expect(correlation[0]![1]).toBeCloseTo(1, 9);
    expect(correlation[0]![2]).toBeCloseTo(-1, 9);
  });
});

describe("Type A", () => {
  test("is the standard deviation of the mean (JCGM 100:2008, 4.2.3)", () => {
    const { mean, standardDeviation, standardUncertainty, degreesOfFreedom } = typeA([1, 2, 3, 4]);
    expect(mean).toBe(2.5);
    expect(standardDeviation).toBeCloseTo(Math.sqrt(5 / 3), 12);
    expect(standardUncertainty).toBeCloseTo(Math.sqrt(5 / 12), 12);
    expect(degreesOfFreedom).toBe(3);
  });

  test("refuses a single observation and series of different lengths", () => {
    expect(() => typeA([1])).toThrow(/two observations or more, got 1/);
    expect(() => typeAJoint([[1, 2], [1]])).toThrow(/equally long/);
  });
});

describe("Type B", () => {
  test("a resolution is a rectangle of half a step", () => {
    expect(resolutionUncertainty(1)).toBeCloseTo(rectangularUncertainty(0.5), 15);
  });

  test("a trapezoid with sure limits is a rectangle, and unsure limits widen it", () => {
    const sure = curvilinearTrapezoidUncertainty({
      halfWidth: 0.5,
      limitSlack: 0,
    });
    expect(sure).toBeCloseTo(rectangularUncertainty(0.5), 15);
    expect(curvilinearTrapezoidUncertainty({ halfWidth: 0.5, limitSlack: 0.1 })).toBeGreaterThan(sure);
  });

  test("a sine spends its time near the limits, so it is wider than a rectangle", () => {
    expect(arcsineUncertainty(1)).toBeGreaterThan(rectangularUncertainty(1));
  });
});

describe("effectiveDegreesOfFreedom", () => {
  test("one component keeps its own, and two alike have twice as many", () => {
    const one = { standardUncertainty: 2, degreesOfFreedom: 7 };
    expect(effectiveDegreesOfFreedom([one])).toBeCloseTo(7, 12);
    expect(effectiveDegreesOfFreedom([one, one])).toBeCloseTo(14, 12);
  });

  test("components known without limit make a sum known without limit", () => {
    expect(
      effectiveDegreesOfFreedom([{ standardUncertainty: 1, degreesOfFreedom: Number.POSITIVE_INFINITY }]),
    ).toBe(Number.POSITIVE_INFINITY);
  });
});

test("a 95 % interval reaches 1.96 standard uncertainties either way (JCGM 100:2008, table G.1)", () => {
  const { low, high } = interval95({ value: 10, standardUncertainty: 0.5 });
  expect(low).toBeCloseTo(9.02, 12);
  expect(high).toBeCloseTo(10.98, 12);
});
