import { describe, expect, it } from "vitest";
import { certain, gainAtChance, lossChance, sumOfAlikeGains, sumOfGains } from "./gain.ts";

// The standard normal law: Φ(1) = 0.841345, Φ(1.96) = 0.975002, Φ(0.5) = 0.691462 (NIST/SEMATECH e-Handbook 1.3.6.7.1).
const sigma = 1000;
const side = 1.959964 * sigma;
const even = (value: number) => ({ value, low: value - side, high: value + side });

describe("sumOfGains", () => {
  it("adds values, and the spread of each side in squares", () => {
    const sum = sumOfGains([
      { value: 100, low: 70, high: 200 },
      { value: 50, low: 10, high: 50 },
    ]);
    expect(sum).toEqual({ value: 150, low: 100, high: 250 });
  });

  it("is nothing for no gains, and shifts by what is certain", () => {
    expect(sumOfGains([])).toEqual({ value: 0, low: 0, high: 0 });
    expect(sumOfGains([{ value: 100, low: 70, high: 200 }, certain(-30)])).toEqual({
      value: 70,
      low: 40,
      high: 170,
    });
  });

  it("adds spreads whole where the gains rest on one estimate", () => {
    const gain = { value: 100, low: 70, high: 150 };
    expect(sumOfAlikeGains([gain, gain, gain])).toEqual({ value: 300, low: 210, high: 450 });
  });
});

describe("lossChance", () => {
  it.each([
    [even(1000), 1 - 0.841345],
    [even(-1000), 0.841345],
    [even(500), 1 - 0.691462],
    [even(0), 0.5],
    [even(1.959964 * 1000), 0.025],
    // Only the side that reaches to nothing counts.
    [{ value: 1000, low: 1000 - side, high: 9000 }, 1 - 0.841345],
    [{ value: -1000, low: -9000, high: -1000 + side }, 0.841345],
  ])("of %o is that of the normal law", (gain, chance) => {
    expect(lossChance(gain)).toBeCloseTo(chance, 5);
  });

  it.each([
    [100, 0],
    [0, 0],
    [-1, 1],
  ])("of %d that is certain is no chance at all", (value, chance) => {
    expect(lossChance(certain(value))).toBe(chance);
  });
});

describe("gainAtChance", () => {
  it.each([0.01, 0.025, 0.3, 0.5, 0.7, 0.99])("is where the loss chance is %d", (chance) => {
    const gain = { value: 500, low: -200, high: 3000 };
    const at = gainAtChance(gain, chance);
    expect(lossChance({ value: 500 - at, low: -200 - at, high: 3000 - at })).toBeCloseTo(chance, 6);
  });

  it("is the value itself where that is certain, whatever the chance", () => {
    for (const chance of [0, 0.2, 0.5, 1]) expect(gainAtChance(certain(700), chance)).toBe(700);
  });

  it("has no end where no chance, or any, is borne", () => {
    expect(gainAtChance(even(1000), 0)).toBe(Number.NEGATIVE_INFINITY);
    expect(gainAtChance(even(1000), 1)).toBe(Number.POSITIVE_INFINITY);
  });
});
