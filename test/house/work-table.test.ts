import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { CautionRow, WorkRow } from "../../packages/core/src/parts/reference.ts";

const read = <Row>(name: string): Row[] =>
  JSON.parse(readFileSync(new URL(`../../data/reference/${name}`, import.meta.url), "utf8"));
const work = read<WorkRow>("work.json");
const cautions = read<CautionRow>("cautions.json");

/** Where each kind of step stands in the order of the bench. */
const ranges: Readonly<Record<string, readonly [number, number]>> = {
  "pull-head": [10, 19],
  "clean-bore": [20, 29],
  "ream-bore": [30, 39],
  "tip-trim": [40, 49],
  "bond-tip": [50, 59],
  "screw-in": [60, 69],
  "butt-trim": [70, 79],
  "grip-on": [80, 89],
  "check-club": [90, 99],
};

it("names every step once, and stands in the order of the bench", () => {
  expect(new Set(work.map(({ step }) => step)).size).toBe(work.length);
  expect(work.map(({ order }) => order)).toEqual(work.map(({ order }) => order).sort((a, b) => a - b));
  for (const [step, [from, to]] of Object.entries(ranges)) {
    const order = work.find((row) => row.step === step)?.order;
    expect(order, step).toBeGreaterThanOrEqual(from);
    expect(order, step).toBeLessThanOrEqual(to);
  }
});

it("has words and a source for every caution that a step names, and names every caution", () => {
  const named = new Set(work.flatMap((row) => row.cautions));
  expect([...named].sort()).toEqual(cautions.map(({ code }) => code).sort());
  expect(cautions.filter(({ text, source }) => text === "" || source === "")).toEqual([]);
});

it("warns where heat, glue, dust, blades or a first swing can hurt", () => {
  const cautionsOf = (step: string) => work.find((row) => row.step === step)?.cautions;
  expect(cautionsOf("pull-head")).toEqual(
    expect.arrayContaining(["graphite-heat-window", "pull-straight", "hot-epoxy-fumes"]),
  );
  expect(cautionsOf("bond-tip")).toEqual(
    expect.arrayContaining(["epoxy-skin", "composite-dust", "cure-fully"]),
  );
  expect(cautionsOf("ream-bore")).toEqual(expect.arrayContaining(["clamp-and-goggles", "cannot-be-undone"]));
  expect(cautionsOf("grip-cut-off")).toContain("blades");
  expect(cautionsOf("screw-in")).toContain("first-swings");
});

it("states the heat window in words as published: 250 to 300 °F (blog.myostrichgolf.com, 2006-10-15)", () => {
  expect(cautions.find(({ code }) => code === "graphite-heat-window")?.text).toMatch(/250 °F .*300 °F/);
});
