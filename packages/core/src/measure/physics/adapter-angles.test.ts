import { describe, expect, test } from "vitest";
import { adapterAngles } from "./adapter-angles.ts";

const head = {
  loftDeg: 10.5,
  lieDeg: 58,
  faceAngleDeg: 0,
  tiltDeg: 1.5,
  rotationDeg: 0,
};

describe("adapterAngles", () => {
  test("a bore without tilt leaves the head as it is at every rotation", () => {
    for (const rotationDeg of [0, 37, 90, 200, 359]) {
      const { soled, squared } = adapterAngles({
        ...head,
        tiltDeg: 0,
        rotationDeg,
      });
      expect(soled.lieDeg).toBeCloseTo(58, 10);
      expect(soled.faceAngleDeg).toBeCloseTo(0, 10);
      expect(squared.loftDeg).toBeCloseTo(10.5, 10);
    }
  });

  test("soled, loft never changes; squared, closing the face adds loft and opening it takes loft away", () => {
    const closed = adapterAngles({ ...head, rotationDeg: 90 });
    const open = adapterAngles({ ...head, rotationDeg: 270 });
    expect([closed.soled.loftDeg, open.soled.loftDeg]).toEqual([10.5, 10.5]);
    expect(closed.soled.faceAngleDeg).toBeGreaterThan(0);
    expect(closed.squared.loftDeg).toBeGreaterThan(10.5);
    expect(open.soled.faceAngleDeg).toBeCloseTo(-closed.soled.faceAngleDeg, 10);
    expect(open.squared.loftDeg).toBeLessThan(10.5);
  });

  test("agrees to first order with α cosψ, α sinψ / cosΛ and α sinψ / sinΛ for a small tilt", () => {
    const tiltDeg = 0.01;
    for (const rotationDeg of [20, 110, 250]) {
      const { soled, squared } = adapterAngles({
        ...head,
        tiltDeg,
        rotationDeg,
      });
      const psi = (rotationDeg * Math.PI) / 180;
      const lie = (58 * Math.PI) / 180;
      expect(soled.lieDeg - 58).toBeCloseTo(tiltDeg * Math.cos(psi), 5);
      expect(soled.faceAngleDeg).toBeCloseTo((tiltDeg * Math.sin(psi)) / Math.cos(lie), 5);
      expect(squared.loftDeg - 10.5).toBeCloseTo((tiltDeg * Math.sin(psi)) / Math.sin(lie), 5);
    }
  });
});
