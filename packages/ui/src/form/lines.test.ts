import { describe, expect, it } from "vitest";
import { rateLines, ratesFromLines } from "./rate-lines.ts";
import { tierLines, tiersFromLines } from "./tier-lines.ts";

describe("fee tiers as lines", () => {
  const tiers = [
    { upToMinor: 2500, percent: 5 },
    { upToMinor: 10_000, percent: 2.5 },
    { upToMinor: null, percent: 1 },
  ];

  it("read as somebody would say them, and come back", () => {
    expect(tierLines(tiers, "EUR")).toBe("5 % up to 25.00\n2.5 % up to 100.00\n1 % of the rest");
    expect(tiersFromLines(tierLines(tiers, "EUR"), "EUR")).toEqual(tiers);
  });

  it("are taken with a comma and without a sign, a bare share being the rest", () => {
    expect(tiersFromLines("2,5% up to 100\n1", "EUR")).toEqual([
      { upToMinor: 10_000, percent: 2.5 },
      { upToMinor: null, percent: 1 },
    ]);
  });

  it.each(["five", "5 % up to much", "120 %", ""])("written as “%s” are none", (text) => {
    expect(tiersFromLines(text, "EUR")).toBeUndefined();
  });
});

describe("rates of exchange as lines", () => {
  it("come back as they were, however they were spaced", () => {
    expect(rateLines({ GBP: 1.17, USD: 0.92 })).toBe("GBP 1.17\nUSD 0.92");
    expect(ratesFromLines("gbp: 1,17\n\nUSD 0.92")).toEqual({ GBP: 1.17, USD: 0.92 });
  });

  it("that are no rate are refused", () => {
    expect(ratesFromLines("GBP nothing")).toBeUndefined();
    expect(ratesFromLines("GBP 0")).toBeUndefined();
  });
});
