import { describe, expect, test } from "vitest";
import { bondArea, bondCapacity, bondShear, swingPull } from "./bond-shear.ts";

const bond = { tipDiameterIn: 0.335, insertionIn: 1.125 };

describe("bondShear", () => {
  test("at the pull of its capacity is the strength", () => {
    const pullN = bondCapacity({ ...bond, strengthPa: 27.6e6 });
    expect(bondShear({ ...bond, pullN }).shearPa).toBeCloseTo(27.6e6, 3);
  });

  test("doubles when half as much of the tip is in the bore", () => {
    const full = bondShear({ ...bond, pullN: 450 }).shearPa;
    expect(bondShear({ ...bond, insertionIn: 0.5625, pullN: 450 }).shearPa / full).toBeCloseTo(2, 12);
    expect(bondArea({ ...bond, insertionIn: 0.5625 }) / bondArea(bond)).toBeCloseTo(0.5, 12);
  });
});

test("swingPull grows with the square of the speed and falls with the radius", () => {
  const base = { massG: 200, speedMps: 45, radiusM: 1.6 };
  expect(swingPull({ ...base, speedMps: 90 }) / swingPull(base)).toBeCloseTo(4, 12);
  expect(swingPull({ ...base, radiusM: 3.2 }) / swingPull(base)).toBeCloseTo(0.5, 12);
});
