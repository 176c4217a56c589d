import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FeeTable } from "./cost-settings.ts";
import { feesOn } from "./fee-bill.ts";

// The printed fee examples stand in data/reference/money-fees.json; here is what has to hold of every table.

const free: FeeTable = {
  id: "counter",
  name: "own counter",
  listingMinor: 0,
  tiers: [{ upToMinor: null, percent: 0 }],
  fixedMinor: 0,
  capMinor: null,
  onPostage: false,
  paymentPercent: 0,
  paymentFixedMinor: 0,
  cashOutPercent: 0,
};

const percents = fc.integer({ min: 0, max: 3000 }).map((hundredths) => hundredths / 100);
const minors = fc.integer({ min: 0, max: 5_000_000 });
const tables: fc.Arbitrary<FeeTable> = fc.record({
  id: fc.constant("any"),
  name: fc.constant("any place"),
  listingMinor: fc.integer({ min: 0, max: 500 }),
  tiers: fc
    .tuple(fc.uniqueArray(fc.integer({ min: 1, max: 400_000 }), { maxLength: 4 }), percents, percents)
    .map(([bounds, first, others]) => [
      ...bounds.sort((one, other) => one - other).map((upToMinor) => ({ upToMinor, percent: first })),
      { upToMinor: null, percent: others },
    ]),
  fixedMinor: fc.integer({ min: 0, max: 500 }),
  capMinor: fc.option(fc.integer({ min: 0, max: 50_000 })),
  onPostage: fc.boolean(),
  paymentPercent: percents,
  paymentFixedMinor: fc.integer({ min: 0, max: 100 }),
  cashOutPercent: percents,
});

describe("the fees on a sale", () => {
  it("are nothing, and no lines, where nothing is charged", () =>
    expect(feesOn(12_345, 690, free)).toEqual({ lines: [], totalMinor: 0, soldOnlyMinor: 0 }));

  // Common practice, no source: plain arithmetic on the shapes of the table.
  it.each([
    ["nothing over the last bound", { tiers: [{ upToMinor: 10_000, percent: 10 }] }, 30_000, 0, 1000],
    ["the fixed part with no price", { fixedMinor: 35 }, 0, 0, 35],
    [
      "the cap on tiers and fixed part together",
      { tiers: [{ upToMinor: null, percent: 10 }], fixedMinor: 500, capMinor: 1200 },
      10_000,
      0,
      1200,
    ],
    [
      "no percent on postage unless the table says so",
      { tiers: [{ upToMinor: null, percent: 10 }] },
      10_000,
      1000,
      1000,
    ],
    [
      "percent on postage where it does",
      { tiers: [{ upToMinor: null, percent: 10 }], onPostage: true },
      10_000,
      1000,
      1100,
    ],
    ["the payment on postage always", { paymentPercent: 2 }, 10_000, 1000, 220],
    ["half a unit away from nothing, once", { paymentPercent: 2.5, paymentFixedMinor: 1 }, 100, 0, 4],
    ["drawing out of what is left", { fixedMinor: 1000, cashOutPercent: 10 }, 10_000, 1000, 1000 + 1000],
    [
      "drawing out of what is left after the payment too",
      { paymentFixedMinor: 1000, cashOutPercent: 10 },
      10_000,
      0,
      1900,
    ],
    ["no drawing out where nothing is left", { fixedMinor: 1000, cashOutPercent: 10 }, 500, 0, 1000],
  ])("charge %s", (_what, table, priceMinor, postageMinor, totalMinor) =>
    expect(feesOn(priceMinor, postageMinor, { ...free, ...table }).totalMinor).toBe(totalMinor),
  );

  it("say each line once, in the order in which it is charged", () => {
    const all = { ...free, listingMinor: 35, fixedMinor: 10, paymentFixedMinor: 10, cashOutPercent: 1 };
    expect(feesOn(10_000, 0, all).lines.map(({ code }) => code)).toEqual([
      "listing",
      "selling",
      "payment",
      "cash-out",
    ]);
  });

  it("lose no minor unit: lines are whole and add up to the total, sold and not", () => {
    fc.assert(
      fc.property(minors, minors, tables, (priceMinor, postageMinor, table) => {
        const { lines, totalMinor, soldOnlyMinor } = feesOn(priceMinor, postageMinor, table);
        const sum = lines.reduce((total, { amountMinor }) => total + amountMinor, 0);
        expect(lines.every(({ amountMinor }) => Number.isSafeInteger(amountMinor) && amountMinor > 0)).toBe(
          true,
        );
        expect(sum).toBe(totalMinor);
        expect(totalMinor - soldOnlyMinor).toBe(table.listingMinor);
      }),
    );
  });

  it("never fall when the price rises, as long as drawing out costs no more than was left", () => {
    fc.assert(
      fc.property(minors, minors, tables, (one, other, table) => {
        const uncharged = { ...table, cashOutPercent: 0 };
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(feesOn(high, 0, uncharged).totalMinor).toBeGreaterThanOrEqual(
          feesOn(low, 0, uncharged).totalMinor,
        );
      }),
    );
  });
});
