import { describe, expect, it } from "vitest";
import { normalCdf, normalDensity, normalQuantile } from "./normal.ts";

describe("the normal law", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.1, cumulative standard normal table (area from the middle, plus ½).
  it.each([
    [0, 0.5],
    [0.5, 0.69146],
    [1, 0.84134],
    [1.96, 0.975],
    [2.58, 0.99506],
    [3.5, 0.99977],
  ])("Φ(%d) is %d as printed", (z, p) => expect(normalCdf(z)).toBeCloseTo(p, 4));

  // Symmetry of the law, and its own inverse; derived, no published source.
  it.each([0.0001, 0.025, 0.3, 0.5, 0.9, 0.999])("the quantile of %d goes back to it", (p) => {
    expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 12);
    expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 9);
  });

  it("joins its two ways of summing without a step", () =>
    expect(normalCdf(3.0001) - normalCdf(2.9999)).toBeCloseTo(0.0002 * normalDensity(3), 9));

  it("throws at what is no chance", () => expect(() => normalQuantile(1)).toThrow(RangeError));
});
