import { describe, expect, it } from "vitest";
import { driver, estimated } from "../measure/club.test-kit.ts";
import { blanksOf, comparisonsOf, estimatedOf } from "./measured-back.ts";
import type { Measurement } from "./measurement.ts";

const estimates = estimated(driver);
const measurement = (more: Partial<Measurement> = {}): Measurement => ({
  id: "m",
  on: "2026-11-25",
  club: "H1+-+S1+G1",
  parts: ["H1", "S1", "G1"],
  clubType: "driver",
  measured: { massG: { value: 320, plusMinus: 0.5 } },
  estimated: { massG: { value: 316, plusMinus: 1 } },
  ...more,
});

describe("estimate against measured", () => {
  it("is the difference, surprising where it is past 1.96 of both uncertainties together (JCGM 100:2008, G.1)", () => {
    // 1.96 × √(0.5² + 1²) = 2.19: by hand.
    const at = (value: number) =>
      comparisonsOf(measurement({ measured: { massG: { value, plusMinus: 0.5 } } }))[0];
    expect(at(318.1)).toMatchObject({ isSurprising: false });
    expect(at(318.3)).toMatchObject({ isSurprising: true });
    expect(at(313.7)).toMatchObject({ isSurprising: true });
    expect(at(318)?.difference).toBeCloseTo(2, 9);
  });

  it("is nothing where nothing was estimated", () => {
    expect(comparisonsOf(measurement({ estimated: {} }))).toMatchObject([
      { quantity: "massG", estimated: null, difference: null, isSurprising: false },
    ]);
  });
});

describe("what a bench expects", () => {
  const massBlank = (measurements: readonly Measurement[]) =>
    blanksOf(estimates, "driver", measurements).find(({ quantity }) => quantity === "massG");

  it("is nothing before a club was measured, and nothing of what was not estimated then", () => {
    expect(massBlank([])?.experience).toBeNull();
    expect(massBlank([measurement({ estimated: {} })])?.experience).toBeNull();
  });

  it("comes nearer to what is measured with every club, and counts its clubs", () => {
    const bias = (count: number) =>
      massBlank(Array.from({ length: count }, () => measurement()))?.experience?.bias.value ?? 0;
    expect(bias(1)).toBeGreaterThan(0);
    expect(bias(5)).toBeGreaterThan(bias(1));
    expect(bias(5)).toBeLessThan(4);
    const iron = measurement({ clubType: "iron" });
    expect(massBlank([measurement(), iron, iron])?.experience).toMatchObject({ clubs: 1, clubsOfAll: 3 });
  });

  it("is never surer than the estimate", () => {
    const many = Array.from({ length: 40 }, () => measurement());
    const { estimate, experience } = massBlank(many) ?? {};
    if (!estimate || !experience) throw new Error("both are there");
    const { low, high } = experience.expected;
    expect(high - low).toBeGreaterThanOrEqual(estimate.high - estimate.low);
  });

  it("takes the uncertainty of an estimate from its interval", () => {
    const mass = estimatedOf(estimates, "massG");
    expect(mass?.value).toBe(estimates.massG?.value);
    expect(mass?.plusMinus).toBeCloseTo(
      ((estimates.massG?.high ?? 0) - (estimates.massG?.low ?? 0)) / 3.92,
      9,
    );
  });
});
