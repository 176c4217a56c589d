import { describe, expect, test } from "vitest";
import * as units from "./units.ts";

/**
 * [there, back, one side, other side]; the decimals are exact products of the definitions in NIST SP 811 (2008) appendix B.8
 * and B.9, or its printed factor to all the digits shown there.
 */
const pairs: readonly [keyof typeof units, keyof typeof units, number, number, number][] = [
  // there, back, source, target, relative tolerance
  ["mmFromIn", "inFromMm", 0.335, 8.509, 1e-14],
  ["mmFromIn", "inFromMm", 48, 1219.2, 1e-14],
  ["mmFromIn", "inFromMm", 1.75, 44.45, 1e-14],
  ["cmFromIn", "inFromCm", 48, 121.92, 1e-14],
  ["mFromIn", "inFromM", 40, 1.016, 1e-14],
  ["gFromOz", "ozFromG", 1, 28.349523125, 1e-15],
  ["gFromLb", "lbFromG", 1, 453.59237, 0],
  ["gFromOz", "ozFromG", 16, 453.59237, 1e-15],
  ["kgFromG", "gFromKg", 205, 0.205, 1e-15],
  ["gInFromOzIn", "ozInFromGIn", 1.75, 49.61166546875, 1e-14],
  ["gInFromOzIn", "ozInFromGIn", 213.5, 6052.6231871875, 1e-14],
  ["kgCm2FromGIn2", "gIn2FromKgCm2", 1, 0.0064516, 1e-14],
  ["nFromLbf", "lbfFromN", 1, 4.4482216152605, 1e-14],
  ["paFromPsi", "psiFromPa", 1, 6894.757, 1e-7],
  ["paFromPsi", "psiFromPa", 4000, 27579029.17, 1e-9],
  ["mpsFromMph", "mphFromMps", 100, 44.704, 1e-14],
  ["radFromDeg", "degFromRad", 180, Math.PI, 1e-15],
  ["radFromDeg", "degFromRad", 60, 1.0471975511965976, 1e-15],
  ["hzFromCpm", "cpmFromHz", 250, 250 / 60, 1e-15],
  ["radPerSFromCpm", "cpmFromRadPerS", 60, 2 * Math.PI, 1e-15],
];

function call(name: keyof typeof units, argument: number): number {
  const convert = units[name];
  if (typeof convert !== "function") throw new Error(`${name} is not a conversion`);
  return convert(argument);
}

describe("units", () => {
  test.each(pairs)("%s and %s turn %d into %d and back", (there, back, source, target, rel) => {
    expect(Math.abs(call(there, source) - target)).toBeLessThanOrEqual(rel * target);
    expect(Math.abs(call(back, target) - source)).toBeLessThanOrEqual(Math.max(rel, 1e-14) * source);
  });

  test("every conversion appears in the table, in both directions", () => {
    const conversions = Object.keys(units).filter((name) => /From/.test(name));
    const covered = new Set(pairs.flatMap(([there, back]) => [there as string, back as string]));
    expect(conversions.filter((name) => !covered.has(name))).toEqual([]);
  });

  test("the standard acceleration of gravity is that of the 3rd CGPM", () => {
    expect(units.gravityMps2).toBe(9.80665);
  });
});
