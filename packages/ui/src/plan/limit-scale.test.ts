import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { limitAt, limitScale, positionOf } from "./limit-scale.ts";

describe("the scale of a limit", () => {
  it("reaches what limits nothing in round steps, and then no limit", () => {
    const scale = limitScale(1470, 100);
    expect(scale).toEqual({ step: 100, end: 16 });
    expect(limitAt(15, scale)).toBe(1500);
    expect(limitAt(16, scale)).toBeNull();
    expect(limitScale(858, 15)).toEqual({ step: 15, end: 59 });
    expect(limitScale(250_000, 100)).toEqual({ step: 5000, end: 51 });
  });

  it("lets nothing be chosen even where nothing is needed", () => {
    const scale = limitScale(0, 100);
    expect([0, 1, 2].map((at) => limitAt(at, scale))).toEqual([0, 100, null]);
  });

  it("leads from a position to its limit and back, never far too fine to move along", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5_000_000 }), fc.constantFrom(15, 100), (top, unit) => {
        const scale = limitScale(top, unit);
        expect(scale.end).toBeLessThanOrEqual(62);
        expect(limitAt(scale.end - 1, scale)).toBeGreaterThanOrEqual(top);
        for (const at of [0, 1, scale.end - 1, scale.end])
          expect(positionOf(limitAt(at, scale), scale)).toBe(at);
      }),
    );
  });
});
