import { describe, expect, it } from "vitest";
import { predictNext, type WeighedRow } from "./predict-level.ts";

const prior = { spread: 0.2, degreesOfFreedom: 4, extraSpread: 0 };
const own = (id: string, value: number, weight = 1): WeighedRow => ({
  id,
  value,
  weight,
  group: null,
  levelSpread: 0,
});
const other = (id: string, group: string, value: number): WeighedRow => ({
  id,
  value,
  weight: 1,
  group,
  levelSpread: 0.4,
});

// Every figure below is worked by hand: derived, no published source. Student's t from NIST/SEMATECH e-Handbook 1.3.6.7.2.
describe("predictNext", () => {
  it("is nothing without a row", () => expect(predictNext([], prior)).toBeNull());

  it("weighs the thing's own rows, and adds their residuals to the prior's spread", () => {
    const prediction = predictNext([own("a", 0), own("b", 3), own("c", 1, 0.5)], { ...prior, spread: 1 });
    // Mean (0 + 3 + ½) / 2½ = 1.4; squares 1.96 + 2.56 + ½ × 0.16 = 4.6; variance (4 × 1 + 4.6) / (4 + 1½).
    expect(prediction?.middle).toBeCloseTo(1.4, 12);
    expect(prediction?.effectiveCount).toBeCloseTo(2.5, 12);
    expect([...(prediction?.shares ?? [])]).toEqual([
      ["a", expect.closeTo(0.4, 12)],
      ["c", expect.closeTo(0.2, 12)],
      ["b", expect.closeTo(0.4, 12)],
    ]);
    // Its t has 5½ degrees of freedom: between the table's 2.571 for 5 and 2.447 for 6.
    const scale = Math.sqrt((8.6 / 5.5) * (1 + 1 / 2.5));
    expect(prediction!.halfWidth / scale).toBeGreaterThan(2.447);
    expect(prediction!.halfWidth / scale).toBeLessThan(2.571);
  });

  it("takes the plain t interval of the next value when there are many rows", () => {
    // 26 rows of ±1 about 5 and a prior of 4 at spread 1: variance (4 + 26) / (4 + 25), 29 degrees of freedom, t 2.045.
    const rows = Array.from({ length: 26 }, (_, at) => own(`row ${at}`, at % 2 === 0 ? 4 : 6));
    const prediction = predictNext(rows, { ...prior, spread: 1 });
    expect(prediction?.middle).toBeCloseTo(5, 12);
    expect(prediction!.halfWidth).toBeCloseTo(2.045 * Math.sqrt((30 / 29) * (1 + 1 / 26)), 3);
  });

  it("pulls the thing's own rows towards its class by precision", () => {
    const prediction = predictNext([own("a", 1), other("x", "X", 0), other("y", "Y", 0)], prior);
    // Two levels of variance 1 + 4, mean's variance 2½, and the thing's own distance 4 more: precision 1/6½. With two equal
    // levels the inflation is 4/5, so each 4 is 3.2: 4.2 / 2 + 3.2 = 5.3.
    const pull = 1 / 5.3;
    expect(prediction?.effectiveCount).toBeCloseTo(1 + pull, 12);
    expect(prediction?.middle).toBeCloseTo(1 / (1 + pull), 12);
    expect(prediction?.shares.get("x")).toBeCloseTo(pull / 2 / (1 + pull), 12);
  });

  it("adds what is not known to the spread", () => {
    const sure = predictNext([own("a", 1)], prior)!.halfWidth;
    const unsure = predictNext([own("a", 1)], { ...prior, extraSpread: 0.1 })!.halfWidth;
    // Variances add: 0.2² × 2 and 0.1².
    expect(unsure / sure).toBeCloseTo(Math.sqrt(0.09 / 0.08), 9);
  });
});
