import { describe, expect, it } from "vitest";
import { chanceWithin, overText, searchLine } from "./watch-words.ts";

describe("words of the watchlist", () => {
  it("say how far a price is from the cap", () => {
    expect(overText(-550, "EUR")).toBe("€5.50 under the cap");
    expect(overText(1200, "EUR")).toBe("€12.00 over the cap");
    expect(overText(0, "EUR")).toBe("At the cap");
    expect(overText(null, "EUR")).toMatch(/no cap/);
  });

  it("put what to search for on one line", () => {
    expect(searchLine({ any: ["Quillon 2 shaft", ".335"], without: ["LH", "head only"] })).toBe(
      '"Quillon 2 shaft" OR .335 -LH -"head only"',
    );
  });

  // The distribution function of the exponential law at its mean is 1 − 1/e (any textbook of probability).
  it("give the chance of waiting no longer than the mean as 1 − 1/e", () => {
    expect(chanceWithin(7, 7)).toBeCloseTo(0.632_120_558_8, 9);
    expect(chanceWithin(0, 7)).toBe(0);
  });
});
