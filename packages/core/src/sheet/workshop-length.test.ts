import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { workshopLength } from "./workshop-length.ts";

// Worked out by hand from the exact inch of 25.4 mm (NIST SP 811, appendix B).
describe("a length at the bench", () => {
  it.each<[number, number, number]>([
    [0, 0, 0],
    [45, 45, 1143],
    [44.52, 44 + 17 / 32, 1131],
    [1 / 64, 1 / 32, 0.5],
    [1 / 64 - 1e-9, 0, 0.5],
    [0.63, 20 / 32, 16],
    [-0.63, -20 / 32, -16],
    [1.125, 1.125, 28.5],
  ])("of %f in is %f in and %f mm", (lengthIn, nearestIn, nearestMm) => {
    expect(workshopLength(lengthIn)).toEqual({ nearestIn, nearestMm });
  });

  it("is never further off than half a division of either rule", () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (lengthIn) => {
        const { nearestIn, nearestMm } = workshopLength(lengthIn);
        expect(Math.abs(nearestIn - lengthIn)).toBeLessThanOrEqual(1 / 64 + 1e-12);
        expect(Math.abs(nearestMm - lengthIn * 25.4)).toBeLessThanOrEqual(0.25 + 1e-9);
        expect(Number.isInteger(nearestIn * 32)).toBe(true);
        expect(Number.isInteger(nearestMm * 2)).toBe(true);
      }),
    );
  });
});
