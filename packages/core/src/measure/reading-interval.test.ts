import { expect, test } from "vitest";
import { differenceInterval, readingInterval } from "./reading-interval.ts";

test("a 95 % interval reaches 1.96 standard uncertainties to each side (JCGM 100:2008 table G.1)", () => {
  const { low, high } = readingInterval({ value: 10, plusMinus: 0.5, source: "stated" });
  expect(low).toBeCloseTo(9.02, 12);
  expect(high).toBeCloseTo(10.98, 12);
});

test("an exact reading has an interval of no width", () => {
  expect(readingInterval({ value: 3, plusMinus: 0, source: "measured" })).toEqual({ low: 3, high: 3 });
});

// Independent uncertainties add as the root of the sum of their squares: JCGM 100:2008, 5.1.2.
test("gives the interval of a difference from both uncertainties", () => {
  const { low, high } = differenceInterval(
    { value: 5, plusMinus: 0.3, source: "measured" },
    { value: 3, plusMinus: 0.4, source: "measured" },
  );
  expect(low).toBeCloseTo(2 - 1.96 * 0.5);
  expect(high).toBeCloseTo(2 + 1.96 * 0.5);
});
