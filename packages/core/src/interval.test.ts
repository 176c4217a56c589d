import { describe, expect, test } from "vitest";
import {
  intervalContains,
  intervalEncloses,
  intervalsOverlap,
  intervalWidth,
  makeInterval,
} from "./interval.ts";

describe("interval", () => {
  test("keeps its two ends and knows its width", () => {
    expect(makeInterval(45, 46)).toEqual({ low: 45, high: 46 });
    expect(intervalWidth(makeInterval(45, 46.25))).toBe(1.25);
  });

  test("refuses ends out of order and ends that are not numbers", () => {
    expect(() => makeInterval(46, 45)).toThrow(/low <= high, got 46 and 45/);
    expect(() => makeInterval(Number.NaN, 45)).toThrow(RangeError);
  });

  test.each([
    [44.9, false],
    [45, true],
    [45.5, true],
    [46, true],
    [46.1, false],
  ])("45 to 46 contains %d: %s", (value, contained) => {
    expect(intervalContains(makeInterval(45, 46), value)).toBe(contained);
  });

  test.each([
    [43, 44.9, false],
    [43, 45, true],
    [45.2, 45.4, true],
    [40, 50, true],
    [46, 47, true],
    [46.1, 47, false],
  ])("45 to 46 overlaps %d to %d: %s, whichever is asked", (low, high, expected) => {
    const one = makeInterval(45, 46);
    const other = makeInterval(low, high);
    expect(intervalsOverlap(one, other)).toBe(expected);
    expect(intervalsOverlap(other, one)).toBe(expected);
  });

  test("encloses another only if no part of it sticks out", () => {
    expect(intervalEncloses(makeInterval(45, 46), makeInterval(45, 45.5))).toBe(true);
    expect(intervalEncloses(makeInterval(45, 46), makeInterval(44.9, 45.5))).toBe(false);
  });
});
