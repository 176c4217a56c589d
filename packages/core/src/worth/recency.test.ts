import { describe, expect, it } from "vitest";
import { daysBetween, recencyWeight } from "./recency.ts";

describe("daysBetween", () => {
  // Gregorian calendar (ISO 8601): 2024 is a leap year.
  it.each([
    ["2024-02-28", "2024-03-01", 2],
    ["2026-02-28", "2026-03-01", 1],
    ["2026-11-25", "2026-11-25", 0],
    ["2027-01-01", "2026-12-31", -1],
    ["2026-03-28", "2026-03-30", 2],
  ])("from %s to %s are %d", (from, to, days) => expect(daysBetween(from, to)).toBe(days));
});

describe("recencyWeight", () => {
  // Half a power per half-life of 365 days: derived, no published source.
  it.each([
    ["2026-11-25", 1],
    ["2025-11-25", 0.5],
    ["2024-11-25", 0.25],
    ["2027-06-01", 1],
  ])("of a price of %s is %d", (on, weight) =>
    expect(recencyWeight(on, "2026-11-25")).toBeCloseTo(weight, 12),
  );
});
