import { fileURLToPath } from "node:url";
import type { Build, Grip } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { readTables } from "../reference-files.ts";
import { tuneCautions } from "./tune-cautions.ts";

const reference = readTables(fileURLToPath(new URL("../../../../data", import.meta.url)));
const grip: Grip = { id: "g1", kind: "grip" };

const codesOf = (build: Build, { gripped = false, to = "g1" } = {}) =>
  tuneCautions({ grip, gripped }, [{ build, grip: to }], reference).map(({ code }) => code);

const codesOfStep = (name: string) => reference.work.find(({ step }) => step === name)?.cautions;

describe("the cautions of tuning", () => {
  it.each([
    ["butt-trim", { buttTrimIn: 0.5 }],
    ["butt-extension", { buttTrimIn: -0.5 }],
    ["head-weight", { extraHeadMassG: 4 }],
    ["counterweight", { counterweightG: 10 }],
    ["tip-trim", { tipTrimIn: 1 }],
  ])("are those of the step %s where it is taken", (step, build) => {
    expect(codesOf(build).length).toBeGreaterThan(0);
    expect(codesOf(build)).toEqual(codesOfStep(step));
  });

  it("are none where nothing is done", () => {
    expect(codesOf({ buttTrimIn: 0, extraHeadMassG: 0, counterweightG: 0 }, { gripped: true })).toEqual([]);
  });

  it("tell of the blade where a grip comes off, and of the solvent where one goes on", () => {
    expect(codesOf({ buttTrimIn: 0.5 }, { gripped: true })).toContain("blades");
    expect(codesOf({}, { to: "g2" })).toContain("solvent-fumes");
    expect(codesOf({}, { to: "g2" })).not.toContain("blades");
  });

  it("are each told once, in words", () => {
    const both = [
      { build: { extraHeadMassG: 4 }, grip: "g1" },
      { build: { counterweightG: 4 }, grip: "g1" },
    ];
    const told = tuneCautions({ grip }, both, reference);
    expect(told.map(({ code }) => code)).toEqual(["added-mass-flies", "within-the-rules"]);
    expect(told.every(({ text }) => text.length > 20)).toBe(true);
  });
});
