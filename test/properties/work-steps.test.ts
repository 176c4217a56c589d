import { type Part, resolveBench, rules } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { reference } from "../reference-tables.ts";

const parts = [
  {
    id: "H",
    kind: "head",
    clubType: "iron",
    hand: "right",
    socket: { type: "bore", diameterIn: 0.37, form: "parallel", depthIn: 1.25, bbgmIn: 1 },
  },
  {
    id: "S",
    kind: "shaft",
    suits: "iron",
    material: "steel",
    length: { lengthIn: 37, basis: "shaft-alone" },
    tip: { diameterIn: 0.37, form: "parallel", parallelSectionIn: 4 },
    buttDiameterIn: 0.6,
  },
  { id: "G", kind: "grip", coreDiameterIn: 0.6, capThicknessIn: 0.125 },
] as Part[];

function stepsOf(playingLengthIn: number): string[] {
  const joints = [
    { type: "bonded" as const, parts: ["H", "S"] as [string, string] },
    { type: "gripped" as const, parts: ["S", "G"] as [string, string] },
  ];
  const result = resolveBench({ parts, joints, goal: { playingLengthIn, skill: "bond" } }, rules, reference);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.resolution.clubs[0]?.work.map(({ step }) => step) ?? [];
}

describe("the work of a club", () => {
  it("takes a grip off before the butt is cut and puts it on again after", () => {
    expect(stepsOf(37)).toEqual(["grip-off", "butt-trim", "grip-on"]);
  });

  it("does the same before the butt is lengthened", () => {
    expect(stepsOf(39)).toEqual(["grip-off", "butt-extension", "grip-on"]);
  });

  it("leaves the grip alone when the length is right", () => {
    expect(stepsOf(38.125)).toEqual([]);
  });
});
