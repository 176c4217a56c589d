import { describe, expect, it } from "vitest";
import { buildClub } from "./built-club.ts";
import { adapter, driver, receiverHead, shippedTypical, woodShaft } from "./club.test-kit.ts";
import { clubFacts } from "./club-facts.ts";
import { quantities } from "./estimates.ts";
import { jointEstimates } from "./joint-estimates.ts";
import { propagate } from "./uncertainty.ts";

const parts = {
  ...driver,
  head: receiverHead,
  adapter,
  shaft: { ...woodShaft, length: { lengthIn: 44.5 }, frequency: { cpm: 250 } },
};
const facts = clubFacts(parts, { playingLengthIn: 45, extraHeadMassG: 2 }, shippedTypical);

describe("jointEstimates", () => {
  it.each(quantities)("agrees with propagate on $name", (quantity) => {
    const [joint] = jointEstimates(
      (at, out) => {
        out[0] = quantity.of(buildClub(at, facts.shape));
      },
      facts.numbers,
      facts.inputs,
      1,
    );
    const inputs = facts.inputs.map(({ key, value, plusMinus }) => ({
      name: key,
      value,
      standardUncertainty: plusMinus,
    }));
    const alone = propagate((at) => quantity.of(buildClub({ ...facts.numbers, ...at }, facts.shape)), inputs);
    expect(joint?.value).toBeCloseTo(alone.value, 9);
    expect((joint!.high - joint!.low) / (2 * 1.96)).toBeCloseTo(alone.standardUncertainty, 6);
    expect(joint?.basis[0]?.share).toBeCloseTo(alone.contributions[0]!.share, 6);
  });

  it("leaves the figures as they were", () => {
    const before = { ...facts.numbers };
    jointEstimates(
      (at, out) => {
        out[0] = at.headMassG;
      },
      facts.numbers,
      facts.inputs,
      1,
    );
    expect(facts.numbers).toEqual(before);
  });

  it("gives null for a result that is no number and keeps the others", () => {
    const results = jointEstimates(
      (at, out) => {
        out[0] = Number.NaN;
        out[1] = at.headMassG;
      },
      facts.numbers,
      facts.inputs,
      2,
    );
    expect(results[0]).toBeNull();
    expect(results[1]?.value).toBe(198);
  });

  it.each(quantities.filter(({ still }) => still !== undefined))(
    "has nothing among what leaves $name still that moves it",
    ({ of, still }) => {
      const value = of(buildClub(facts.numbers, facts.shape));
      expect(still?.size).toBeGreaterThan(0);
      expect(Number.isFinite(value)).toBe(true);
      for (const key of still ?? [])
        expect(of(buildClub({ ...facts.numbers, [key]: facts.numbers[key] + 1 }, facts.shape)), key).toBe(
          value,
        );
    },
  );
});
