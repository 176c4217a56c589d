import { describe, expect, it } from "vitest";
import { studentQuantile } from "./student-t.ts";

describe("studentQuantile", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t, printed to three decimals.
  it.each([
    [1, 0.975, 12.706],
    [2, 0.975, 4.303],
    [5, 0.975, 2.571],
    [10, 0.975, 2.228],
    [30, 0.975, 2.042],
    [1, 0.95, 6.314],
    [5, 0.95, 2.015],
  ])("with %d degrees of freedom is under t at %d, t = %d", (degreesOfFreedom, chance, t) =>
    expect(Math.abs(studentQuantile(chance, degreesOfFreedom) - t)).toBeLessThan(0.00051),
  );

  it("has closed forms at one and two degrees of freedom", () => {
    // tan(π(p − 1/2)) and (2p − 1)·√(2 / (4p(1 − p))): derived, no published source.
    for (const p of [0.6, 0.75, 0.9, 0.99]) {
      expect(studentQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 7);
      expect(studentQuantile(p, 2)).toBeCloseTo((2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p))), 7);
    }
  });

  it("falls towards the normal value as degrees of freedom rise, whole or not", () => {
    const degrees = [1, 1.5, 2, 3.3, 4, 8, 20, 100, 1000];
    const values = degrees.map((degreesOfFreedom) => studentQuantile(0.975, degreesOfFreedom));
    expect(values).toEqual([...values].sort((one, other) => other - one));
    // The normal value, 1.960, from the last row of the same table.
    expect(Math.abs(studentQuantile(0.975, 1e6) - 1.96)).toBeLessThan(0.00051);
  });

  it("throws at what no caller of ours may ask", () => {
    expect(() => studentQuantile(1, 3)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0)).toThrow(RangeError);
  });
});
