import { describe, expect, test } from "vitest";
import { adapterAngles } from "../../packages/core/src/measure/physics/adapter-angles.ts";
import { carriedFrequency } from "../../packages/core/src/measure/physics/carried-frequency.ts";
import { rulesLength } from "../../packages/core/src/measure/physics/rules-length.ts";
import { shaftAfterTrim } from "../../packages/core/src/measure/physics/shaft-after-trim.ts";
import { swingWeight } from "../../packages/core/src/measure/physics/swing-weight.ts";
import { interval95, type Point, propagate } from "../../packages/core/src/measure/uncertainty.ts";
import { drawModel } from "./monte-carlo.ts";

const names = ["a", "b", "c", "d", "e"] as const;
type Name = (typeof names)[number];
type Model = (at: Point<Name>) => number;

function trimmedMass({ a, b, c, d, e }: Point<Name>): number {
  const left = shaftAfterTrim({ massG: a, lengthIn: b, balanceFromTipIn: c, tipTrimIn: d, buttTrimIn: e });
  return left.ok ? left.massG : Number.NaN;
}

function carriedCpm({ a, b, c, d, e }: Point<Name>): number {
  const reading = { cpm: a, beamLengthIn: b, beamMassG: 53, tipMassG: 205 };
  return carriedFrequency({ reading, target: { beamLengthIn: c, beamMassG: d, tipMassG: e } }).cpm;
}

function squaredLoft({ a, b, c, d, e }: Point<Name>): number {
  return adapterAngles({ loftDeg: a, lieDeg: b, faceAngleDeg: c, tiltDeg: d, rotationDeg: e }).squared
    .loftDeg;
}

/** A model of the club and, for each of its five inputs, the value and standard uncertainty a bench would give. */
const cases: readonly [string, Model, readonly (readonly [number, number])[]][] = [
  [
    "swing weight",
    ({ a, b, c, d, e }) => swingWeight({ massG: a + b, balanceFromButtIn: c + d + e }).points,
    [
      [200, 2],
      [110, 1],
      [33, 0.1],
      [0.2, 0.03],
      [0.1, 0.02],
    ],
  ],
  [
    "mass of a trimmed shaft",
    trimmedMass,
    [
      [60, 1],
      [46, 0.06],
      [24, 0.25],
      [1, 0.06],
      [1.5, 0.06],
    ],
  ],
  [
    "frequency carried to another beam",
    carriedCpm,
    [
      [250, 3],
      [40, 0.125],
      [39, 0.1],
      [52, 1],
      [198, 2],
    ],
  ],
  [
    "loft with the face squared",
    squaredLoft,
    [
      [10.5, 0.6],
      [58, 0.6],
      [-1, 0.6],
      [1.5, 0.25],
      [120, 2],
    ],
  ],
  [
    "length by the Rules",
    ({ a, b, c, d, e }) =>
      rulesLength({ playingLengthIn: a + e, lieDeg: b, soleRadiusIn: c, contactFromAxisIn: d }),
    [
      [45.5, 0.06],
      [58, 0.6],
      [10, 1],
      [1.5, 0.2],
      [0.1, 0.03],
    ],
  ],
];

describe("the law of propagation agrees with drawing from the distributions (JCGM 101:2008, clause 8)", () => {
  test.each(cases)("%s", (_name, model, values) => {
    const inputs = names.map((name, k) => ({
      name,
      value: values[k]?.[0] ?? Number.NaN,
      standardUncertainty: values[k]?.[1] ?? Number.NaN,
    }));
    const linear = propagate(model, inputs);
    const drawn = drawModel(
      ([a = 0, b = 0, c = 0, d = 0, e = 0]) => model({ a, b, c, d, e }),
      inputs.map(({ value, standardUncertainty }) => ["normal", value, standardUncertainty] as const),
      { draws: 100_000, seed: 20 },
    );
    // 100,000 draws: a standard deviation is good to 0.22 %, a mean to 0.3 % and an end to 0.9 % of it, one standard error.
    const u = linear.standardUncertainty;
    expect(drawn.standardDeviation / u).toBeGreaterThan(0.985);
    expect(drawn.standardDeviation / u).toBeLessThan(1.015);
    expect(Math.abs(drawn.mean - linear.value)).toBeLessThan(0.03 * u);
    const { low, high } = interval95(linear);
    expect(Math.abs(drawn.low - low)).toBeLessThan(0.05 * u);
    expect(Math.abs(drawn.high - high)).toBeLessThan(0.05 * u);
  });

  test("the same seed draws the same, another seed does not", () => {
    const draw = (seed: number) => drawModel(([x = 0]) => x, [["normal", 0, 1]], { draws: 1000, seed });
    expect(draw(5)).toEqual(draw(5));
    expect(draw(5).mean).not.toBe(draw(6).mean);
  });
});
