import { expect, test } from "vitest";
import { readingInterval } from "./reading-interval.ts";

test("a 95 % interval reaches 1.96 standard uncertainties to each side (JCGM 100:2008 table G.1)", () => {
  const { low, high } = readingInterval({ value: 10, plusMinus: 0.5, source: "stated" });
  expect(low).toBeCloseTo(9.02, 12);
  expect(high).toBeCloseTo(10.98, 12);
});

test("an exact reading has an interval of no width", () => {
  expect(readingInterval({ value: 3, plusMinus: 0, source: "measured" })).toEqual({ low: 3, high: 3 });
});
