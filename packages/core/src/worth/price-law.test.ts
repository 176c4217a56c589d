import { describe, expect, it } from "vitest";
import { logNormalPrices, pricesFrom } from "./price-law.ts";

const law = logNormalPrices({ medianMinor: 4000, sigmaLog: 0.5 });

describe("prices of which bargains count as no better than a floor", () => {
  const floored = pricesFrom(law, 3000);

  it("save nothing at a limit that is not over the floor", () => {
    expect(floored.expectedSaving(3000)).toBe(0);
    expect(floored.expectedSaving(1000)).toBe(0);
    expect(floored.cdf(2999)).toBe(0);
  });

  it("save, over the floor, the area under their distribution function", () => {
    const steps = 4000;
    const width = (6000 - 3000) / steps;
    let area = 0;
    for (let at = 0; at < steps; at += 1) area += law.cdf(3000 + (at + 0.5) * width) * width;
    expect(floored.expectedSaving(6000)).toBeCloseTo(area, 1);
  });

  it("are the prices as they were where the floor is nothing", () => {
    const same = pricesFrom(law, 0);
    for (const price of [1, 2500, 4000, 9000]) {
      expect(same.cdf(price)).toBe(law.cdf(price));
      expect(same.expectedSaving(price)).toBe(law.expectedSaving(price));
    }
    expect(same.quantile(0.5)).toBeCloseTo(4000, 6);
    expect(floored.quantile(0.01)).toBe(3000);
  });
});
