import { describe, expect, test } from "vitest";
import { gFromOz } from "../../units.ts";
import { momentAtPoints, swingWeight, swingWeightLabel, swingWeightPoints } from "./swing-weight.ts";

describe("swingWeightLabel", () => {
  test.each([
    [0, "A0.0"],
    [-0.04, "A0.0"],
    [-0.06, "0.1 below A0"],
    [-12.34, "12.3 below A0"],
    [9.94, "A9.9"],
    [9.96, "B0.0"],
    [29.96, "D0.0"],
    [30, "D0.0"],
    [32.3, "D2.3"],
    [60, "G0.0"],
    [69.94, "G9.9"],
    [70, "G10.0"],
    [70.04, "G10.0"],
    [70.06, "0.1 above G10"],
    [81.5, "11.5 above G10"],
  ])("%d points read %s", (points, label) => {
    expect(swingWeightLabel(points)).toBe(label);
  });
});

describe("swingWeight", () => {
  test.each([
    [0, "on-scale"],
    [70, "on-scale"],
    [-1, "below-scale"],
    [71, "above-scale"],
  ])("a club at %d points is %s", (points, range) => {
    const balanceFromButtIn = 14 + momentAtPoints(points) / 10;
    expect(swingWeight({ massG: gFromOz(10), balanceFromButtIn }).range).toBe(range);
  });

  test("points and moments are each other's inverse", () => {
    expect(swingWeightPoints(momentAtPoints(32.3))).toBeCloseTo(32.3, 12);
  });
});
