import { describe, expect, it } from "vitest";
import { driver, estimated } from "../measure/club.test-kit.ts";
import { shaftAfterBuild } from "./after-build.ts";

const shaft = {
  ...driver.shaft,
  balanceFromTipIn: 23,
  frequency: { cpm: 250, clampIn: 5 },
  tip: { diameterIn: 0.335, form: "parallel" as const, parallelSectionIn: 3, trimmedIn: 0.5 },
};
const parts = { ...driver, shaft };
const build = { tipTrimIn: 0.5, buttTrimIn: 1 };
const estimates = estimated(parts, build);

describe("the shaft after a build", () => {
  it("has the measured playing length as its own, and nothing else where it was not cut", () => {
    const patch = shaftAfterBuild({
      parts,
      build: {},
      estimates,
      playingLengthIn: { value: 45, plusMinus: 0.06 },
      buttTrimIn: 0,
    });
    expect(patch).toEqual({
      length: { lengthIn: { value: 45, plusMinus: 0.06, source: "measured" }, basis: "playing" },
    });
  });

  it("has lost its old mass, balance and frequency where it was cut, and as much of its tip", () => {
    const patch = shaftAfterBuild({ parts, build, estimates, playingLengthIn: undefined, buttTrimIn: 1 });
    expect(patch).toMatchObject({
      // 44.5 in less half an inch at the tip and one at the butt: by hand.
      length: { lengthIn: { value: 43, source: "stated" }, basis: "shaft-alone" },
      frequency: null,
      tip: { parallelSectionIn: { value: 2.5 }, trimmedIn: { value: 1 } },
    });
    const { massG } = patch as { massG: { value: number; plusMinus: number } };
    expect(massG.value).toBeCloseTo(estimates.shaftMassG?.value ?? Number.NaN, 9);
    expect(massG.plusMinus).toBeGreaterThan(0);
  });

  it("stays as it was where nothing was cut and no length was read", () => {
    const given = { parts, build: {}, estimates, playingLengthIn: undefined, buttTrimIn: 0 };
    expect(shaftAfterBuild(given)).toEqual({});
  });
});
