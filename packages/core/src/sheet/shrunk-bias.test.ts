import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BiasScales, type Residual, shrunkBias } from "./shrunk-bias.ts";

/** Eight schools (Rubin 1981), as printed in Gelman et al., Bayesian Data Analysis, 3rd ed., table 5.2. */
const schools: readonly Residual[] = [
  ["A", 28, 15],
  ["B", 8, 10],
  ["C", -3, 16],
  ["D", 7, 11],
  ["E", -1, 9],
  ["F", 1, 11],
  ["G", 18, 10],
  ["H", 12, 18],
].map(([group, value, plusMinus]) => ({ group, value, plusMinus }) as Residual);

/**
 * The same posterior by another algorithm: the joint precision matrix of the shared mean and every group's mean is written out
 * and inverted by elimination. Derived, no published source.
 */
function byElimination(residuals: readonly Residual[], group: string, scales: BiasScales) {
  const groups = [...new Set([...residuals.map((one) => one.group), group])];
  const size = groups.length + 1;
  const between = 1 / scales.between ** 2;
  const rows = Array.from({ length: size }, () => Array<number>(size + 2).fill(0));
  const add = (i: number, j: number, value: number) => {
    const row = rows[i];
    if (row) row[j] = (row[j] ?? 0) + value;
  };
  add(0, 0, 1 / scales.shared ** 2);
  groups.forEach((name, at) => {
    add(0, 0, between);
    add(0, at + 1, -between);
    add(at + 1, 0, -between);
    add(at + 1, at + 1, between);
    for (const { value, plusMinus } of residuals.filter((one) => one.group === name)) {
      add(at + 1, at + 1, 1 / plusMinus ** 2);
      add(at + 1, size, value / plusMinus ** 2);
    }
  });
  const wanted = groups.indexOf(group) + 1;
  add(wanted, size + 1, 1);
  for (let pivot = 0; pivot < size; pivot += 1)
    for (let row = 0; row < size; row += 1) {
      if (row === pivot) continue;
      const factor = (rows[row]?.[pivot] ?? 0) / (rows[pivot]?.[pivot] ?? 1);
      for (let column = 0; column < size + 2; column += 1)
        add(row, column, -factor * (rows[pivot]?.[column] ?? 0));
    }
  const solved = (column: number) => (rows[wanted]?.[column] ?? 0) / (rows[wanted]?.[wanted] ?? 1);
  return { value: solved(size), plusMinus: Math.sqrt(solved(size + 1)) };
}

describe("the bias of a bench's estimates", () => {
  it("pools all groups as printed where groups do not differ: 7.7 with a standard error of 4.1", () => {
    // Bayesian Data Analysis, 3rd ed., section 5.5: the pooled estimate of the eight schools.
    const { value, plusMinus } = shrunkBias(schools, "A", { shared: Number.POSITIVE_INFINITY, between: 0 });
    expect(value).toBeCloseTo(7.7, 1);
    expect(plusMinus).toBeCloseTo(4.1, 1);
  });

  it("is the group's own mean where groups have nothing in common", () => {
    const { value, plusMinus, count } = shrunkBias(schools, "G", {
      shared: Number.POSITIVE_INFINITY,
      between: 1e6,
    });
    expect(value).toBeCloseTo(18, 3);
    expect(plusMinus).toBeCloseTo(10, 3);
    expect(count).toBe(1);
  });

  it("is nothing, as wide as was taken for granted, before anything was measured", () => {
    expect(shrunkBias([], "driver", { shared: 3, between: 4 })).toEqual({
      value: 0,
      plusMinus: 5,
      count: 0,
      countOfAll: 0,
    });
  });

  it("of a type never measured is drawn from the others, and stays wider than theirs", () => {
    const scales = { shared: 1.5, between: 1 };
    const residuals = [1.2, 1, 1.4].map((value) => ({ group: "driver", value, plusMinus: 0.5 }));
    const [own, other] = [shrunkBias(residuals, "driver", scales), shrunkBias(residuals, "iron", scales)];
    expect(other.value).toBeGreaterThan(0);
    expect(other.value).toBeLessThan(own.value);
    expect(other.plusMinus).toBeGreaterThan(own.plusMinus);
    expect(other).toMatchObject({ count: 0, countOfAll: 3 });
  });

  it("is widened where clubs of one type scatter more than they may", () => {
    const at = (...values: number[]) =>
      shrunkBias(
        values.map((value) => ({ group: "driver", value, plusMinus: 0.1 })),
        "driver",
        { shared: 1.5, between: 1 },
      ).plusMinus;
    expect(at(-1, 0, 1)).toBeGreaterThan(3 * at(0, 0, 0));
  });

  const residual = fc.record({
    group: fc.constantFrom("driver", "fairway", "iron"),
    value: fc.double({ min: -10, max: 10, noNaN: true }),
    plusMinus: fc.double({ min: 0.1, max: 5, noNaN: true }),
  });
  const oneEach = fc.uniqueArray(residual, { selector: ({ group }) => group, maxLength: 3 });
  const scales = fc.record({
    shared: fc.double({ min: 0.2, max: 5, noNaN: true }),
    between: fc.double({ min: 0.2, max: 5, noNaN: true }),
  });

  it("agrees with the joint posterior worked out by elimination", () => {
    fc.assert(
      fc.property(oneEach, fc.constantFrom("driver", "iron", "putter"), scales, (residuals, group, taken) => {
        const [one, other] = [shrunkBias(residuals, group, taken), byElimination(residuals, group, taken)];
        expect(one.value).toBeCloseTo(other.value, 8);
        expect(one.plusMinus).toBeCloseTo(other.plusMinus, 8);
      }),
    );
  });

  it("is never surer for having seen less, nor further out than the furthest club", () => {
    fc.assert(
      fc.property(fc.array(residual, { minLength: 1, maxLength: 8 }), scales, (residuals, taken) => {
        const { value, plusMinus } = shrunkBias(residuals, "driver", taken);
        const furthest = Math.max(...residuals.map((one) => Math.abs(one.value)));
        expect(Math.abs(value)).toBeLessThanOrEqual(furthest + 1e-9);
        expect(plusMinus).toBeLessThanOrEqual(shrunkBias([], "driver", taken).plusMinus + 1e-9);
      }),
    );
  });
});
