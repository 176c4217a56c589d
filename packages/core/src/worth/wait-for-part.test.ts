import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logNormalPrices } from "./price-law.ts";
import { discountPerWeekOf, type PartWait, waitForPart } from "./wait-for-part.ts";
import { reservationValue } from "./waiting-value.ts";

// Printed figures stand in data/reference/money-waiting.json, a dynamic programme in wait-by-dynamic-programme.test.ts; here is
// what has to hold of every answer. Derived, no published source.

const prices = logNormalPrices({ medianMinor: 6000, sigmaLog: 0.4 });
const wait = {
  valueMinor: 15_000,
  ratePerWeek: 0.25,
  prices,
  holdingPerWeekMinor: 20,
  discountPerYearPercent: 5,
  outsideMinor: 4000,
  deadlineWeeks: null,
} satisfies PartWait;

const waits: fc.Arbitrary<PartWait> = fc.record({
  valueMinor: fc.integer({ min: 0, max: 60_000 }),
  ratePerWeek: fc.double({ min: 0, max: 5, noNaN: true }),
  prices: fc
    .record({
      medianMinor: fc.integer({ min: 100, max: 40_000 }),
      sigmaLog: fc.double({ min: 0.02, max: 1.5, noNaN: true }),
    })
    .map(logNormalPrices),
  holdingPerWeekMinor: fc.integer({ min: 0, max: 500 }),
  discountPerYearPercent: fc.double({ min: 0, max: 60, noNaN: true }),
  outsideMinor: fc.integer({ min: 0, max: 50_000 }),
  deadlineWeeks: fc.option(fc.double({ min: 0.1, max: 500, noNaN: true })),
});

describe("waiting for a part", () => {
  it("takes no part that leaves less than waiting for the next one", () => {
    const { takeAtOrUnderMinor, valueMinor } = waitForPart(wait);
    expect(takeAtOrUnderMinor + valueMinor).toBe(wait.valueMinor);
  });

  it("takes less long, and pays more, the dearer the wait", () => {
    const dear = waitForPart({ ...wait, holdingPerWeekMinor: 200 });
    const cheap = waitForPart(wait);
    expect(dear.takeAtOrUnderMinor).toBeGreaterThan(cheap.takeAtOrUnderMinor);
    expect(dear.expectedWaitWeeks).toBeLessThan(cheap.expectedWaitWeeks ?? 0);
    expect(dear.valueMinor).toBeLessThan(cheap.valueMinor);
  });

  it.each([
    ["no part ever turns up", { ratePerWeek: 0 }],
    ["what is outside is worth more than the club", { outsideMinor: 16_000 }],
    ["the wait is too dear", { holdingPerWeekMinor: 5000 }],
  ])("is not worth it where %s, and then nobody waits", (_what, change) => {
    const answer = waitForPart({ ...wait, ...change });
    expect(answer).toMatchObject({
      waits: false,
      valueMinor: { ...wait, ...change }.outsideMinor,
      expectedWaitWeeks: null,
    });
    expect(answer.chanceWithin(52)).toBe(0);
    expect(answer.takeAtOrUnderMinor).toBeGreaterThanOrEqual(0);
  });

  it("is worth taking what is left over where nobody waits but a part is offered now", () =>
    expect(waitForPart({ ...wait, ratePerWeek: 0 }).takeAtOrUnderMinor).toBe(15_000 - 4000));

  it("has no expected end where it is free and has no deadline", () => {
    const free = { ...wait, holdingPerWeekMinor: 0, discountPerYearPercent: 0 };
    expect(waitForPart(free)).toMatchObject({ waits: true, takeAtOrUnderMinor: 0, expectedWaitWeeks: null });
    expect(waitForPart({ ...free, deadlineWeeks: 26 }).expectedWaitWeeks).toBeLessThan(26);
  });

  it("pays more as a deadline nears, up to what leaves no more than is outside", () => {
    const { thresholds = [], takeAtOrUnderMinor } = waitForPart({ ...wait, deadlineWeeks: 26 });
    expect(thresholds.map(({ weeks }) => weeks)).toEqual([26, 19.5, 13, 6.5, 0]);
    const limits = thresholds.map((threshold) => threshold.takeAtOrUnderMinor);
    expect(limits[0]).toBe(takeAtOrUnderMinor);
    expect(limits.at(-1)).toBe(15_000 - 4000);
    expect([...limits].sort((one, other) => one - other)).toEqual(limits);
    expect(new Set(limits).size).toBe(5);
  });

  it("comes to waiting for ever when the deadline is far off", () => {
    const [far, never] = [waitForPart({ ...wait, deadlineWeeks: 1000 }), waitForPart(wait)];
    expect(far.takeAtOrUnderMinor).toBe(never.takeAtOrUnderMinor);
    expect(far.expectedWaitWeeks).toBeCloseTo(never.expectedWaitWeeks ?? 0, 4);
    expect(far.chanceWithin(12)).toBeCloseTo(never.chanceWithin(12), 9);
  });

  it("has given up after the deadline, so that chances rise no more", () => {
    const answer = waitForPart({ ...wait, deadlineWeeks: 8 });
    expect(answer.chanceWithin(80)).toBe(answer.chanceWithin(8));
    expect(answer.chanceWithin(8)).toBeLessThan(1);
    expect(answer.chanceWithin(-1)).toBe(0);
  });

  it("holds to its bounds whatever it is asked", () => {
    fc.assert(
      fc.property(waits, (asked) => {
        const { outsideMinor, valueMinor, deadlineWeeks } = asked;
        const answer = waitForPart(asked);
        expect(answer.valueMinor).toBeGreaterThanOrEqual(outsideMinor);
        expect(answer.valueMinor).toBeLessThanOrEqual(Math.max(outsideMinor, valueMinor));
        expect(Number.isSafeInteger(answer.takeAtOrUnderMinor) && answer.takeAtOrUnderMinor >= 0).toBe(true);
        const chances = [0, 1, 5, 50, 500].map(answer.chanceWithin);
        expect(chances.every((chance, at) => chance >= (chances[at - 1] ?? 0) - 1e-9 && chance <= 1)).toBe(
          true,
        );
        if (deadlineWeeks !== null && answer.expectedWaitWeeks !== null)
          expect(answer.expectedWaitWeeks).toBeLessThanOrEqual(deadlineWeeks * (1 + 1e-9));
      }),
      { numRuns: 300 },
    );
  });

  it("is worth no less with a later deadline, more sightings, or a better way out", () => {
    fc.assert(
      fc.property(waits, (asked) => {
        const { valueMinor } = waitForPart(asked);
        const later = asked.deadlineWeeks === null ? null : asked.deadlineWeeks * 2;
        const better = [
          { deadlineWeeks: later },
          { ratePerWeek: asked.ratePerWeek * 1.5 },
          { outsideMinor: asked.outsideMinor + 100 },
        ];
        for (const change of better)
          expect(waitForPart({ ...asked, ...change }).valueMinor).toBeGreaterThanOrEqual(valueMinor - 1);
      }),
      { numRuns: 200 },
    );
  });

  it("discounts a year as it is told to, week by week", () =>
    expect(Math.exp(discountPerWeekOf(8) * (365.25 / 7))).toBeCloseTo(1.08, 12));
});

describe("the reservation value", () => {
  it("throws where waiting is paid for and nothing is discounted, for then it has none", () => {
    const paid = {
      ratePerWeek: 1,
      holdingPerWeek: -1,
      discountPerWeek: 0,
      expectedGain: () => 0,
      takeChance: () => 0,
    };
    expect(() => reservationValue(paid, 0)).toThrow(RangeError);
  });
});
