import type { Evidence } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { priceDomain, pricePoints, priceTicks, sizePx, swarm } from "./price-plot.ts";

const resale = {
  known: true,
  currency: "EUR",
  valueMinor: 10_000,
  lowMinor: 7000,
  highMinor: 14_000,
  sigmaLog: 0.2,
  daysToSell: null,
  effectiveCount: 2,
  basis: [
    { evidence: "V1", closeness: "same-model", share: 0.6, adjustedMinor: 9000 },
    { evidence: "V2", closeness: "same-class", share: 0.3, adjustedMinor: 12_000 },
    { evidence: "E5", closeness: "same-model", share: 0.1, adjustedMinor: 11_000 },
  ],
  adjustments: [],
} as const;
const row = (id: string, on: string, what: "sold" | "asked", own?: boolean): [string, Evidence] => [
  id,
  { id, on, what, own, kind: "head", price: { amountMinor: 1, currency: "EUR" } } as Evidence,
];

describe("pricePoints", () => {
  it("tells asked from sold from own, and how old each is", () => {
    const evidence = new Map([row("V1", "2025-11-25", "asked"), row("V2", "2026-11-26", "sold", true)]);
    const points = pricePoints(resale, evidence, "2026-11-25");
    expect(points.map(({ priced }) => priced)).toEqual(["asked", "own", "own"]);
    expect(points[0]?.ageMonths).toBeCloseTo(11.99, 2);
    expect(points[1]?.ageMonths).toBe(0);
    expect(points[2]?.ageMonths).toBeUndefined();
    expect(points.map(({ amountMinor }) => amountMinor)).toEqual([9000, 12_000, 11_000]);
  });
});

it("draws the newer larger, and the oldest still to be seen", () => {
  expect(sizePx(0)).toBeGreaterThan(sizePx(6));
  expect(sizePx(600)).toBeGreaterThanOrEqual(2.5);
});

it("holds the estimate's interval and every price", () => {
  const [low, high] = priceDomain(resale, pricePoints(resale, new Map(), "2026-11-25"));
  expect(low).toBeLessThan(7000);
  expect(high).toBeGreaterThan(14_000);
});

it("ticks at round amounts that have room for their labels", () => {
  const toPx = (amount: number) => 100 * Math.log10(amount);
  expect(priceTicks([3000, 25_000], toPx, 20)).toEqual([3000, 5000, 10_000, 20_000]);
  expect(priceTicks([3000, 25_000], toPx, 45)).toEqual([3000, 10_000]);
});

it("lets no point of a lane cover another", () => {
  const point = fc.record({ xPx: fc.integer({ min: 0, max: 300 }), sizePx: fc.integer({ min: 2, max: 6 }) });
  fc.assert(
    fc.property(fc.array(point, { maxLength: 30 }), (points) => {
      const offsets = swarm(points);
      for (const [at, one] of points.entries())
        for (let other = at + 1; other < points.length; other++) {
          const two = points[other] ?? one;
          const apart = Math.hypot(one.xPx - two.xPx, (offsets[at] ?? 0) - (offsets[other] ?? 0));
          expect(apart).toBeGreaterThanOrEqual(one.sizePx + two.sizePx);
        }
    }),
  );
});
