import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convertMinor, minorDigits, percentOfMinor, roundMinor, splitMinor } from "./money.ts";

describe("roundMinor", () => {
  it.each([
    [335.5, 336],
    [-335.5, -336],
    [335.4999, 335],
    [1.005 * 100, 101],
    [-0.2, 0],
    [0.145 * 100, 15],
  ])("rounds %d to %d, half away from zero", (amount, rounded) => expect(roundMinor(amount)).toBe(rounded));

  // Derived: 2^53 / 10^12 is 9007, so that many of the largest amounts still add up exactly.
  it.each([
    [1e12, 1e12],
    [1e12 + 1, 1e12],
    [-1e300, -1e12],
  ])("makes %d no more than %d", (amount, rounded) => expect(roundMinor(amount)).toBe(rounded));

  it("throws at what is no number", () => expect(() => roundMinor(Number.NaN)).toThrow(RangeError));
});

describe("percentOfMinor", () => {
  // Decimal arithmetic, derived, no published source.
  it.each([
    [301000, 9, 27090],
    [7500, 2.5, 188],
    [2300, 1, 23],
    [9500, 9, 855],
  ])("%d at %d %% is %d", (amount, percent, share) => expect(percentOfMinor(amount, percent)).toBe(share));
});

describe("convertMinor", () => {
  it("minds that currencies have different decimals (ISO 4217)", () => {
    expect(minorDigits("JPY")).toBe(0);
    expect(convertMinor(10_000, "EUR", "JPY", 160)).toBe(16_000);
    expect(convertMinor(16_000, "JPY", "EUR", 0.00625)).toBe(10_000);
  });
});

describe("splitMinor", () => {
  it("gives what rounding leaves to the largest remainders", () =>
    expect(splitMinor(100, [1, 1, 1])).toEqual([34, 33, 33]));

  it("splits evenly where nobody weighs anything", () => expect(splitMinor(-5, [0, 0])).toEqual([-2, -3]));

  it("loses no minor unit", () => {
    const weights = fc.array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }), weights, (amount, shares) => {
        const split = splitMinor(amount, shares);
        expect(split.every(Number.isInteger)).toBe(true);
        expect(split.reduce((sum, share) => sum + share, 0)).toBe(amount);
      }),
    );
  });
});
