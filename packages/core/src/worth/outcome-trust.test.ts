import { describe, expect, it } from "vitest";
import type { Entry } from "./entry.ts";
import { type ConvertedEntry, outcomeTrust as trustIn } from "./outcome-trust.ts";

const outcomeTrust = (entries: readonly ConvertedEntry[]) => trustIn(entries, "EUR");

function sale(id: string, amountMinor: number, other: Partial<Entry> = {}) {
  const expected = { priceMinor: 10_000, lowMinor: 7000, highMinor: 14_000, daysToSell: 20 };
  const entry: Entry = {
    id,
    on: "2026-11-02",
    type: "sale",
    amount: { amountMinor, currency: "EUR" },
    expected,
    ...other,
  };
  return { entry, amountMinor };
}

// Worked by hand: derived, no published source.
describe("outcomeTrust", () => {
  it("says how many outcomes fell inside, ends included, and how far off they were", () => {
    const trust = outcomeTrust([
      sale("a", 7000, { daysToSell: 10 }),
      sale("b", 8000, { daysToSell: 30 }),
      sale("c", 14_001),
      sale("d", 12_000, { daysToSell: 60 }),
    ]);
    expect(trust.count).toBe(4);
    expect(trust.pricesInside).toBe(0.75);
    // The middle of 0.7, 0.8, 1.2 and 1.4001; and of ½, 1½ and 3.
    expect(trust.priceBias).toBeCloseTo(1, 12);
    expect(trust.daysBias).toBe(1.5);
    const logs = [0.7, 0.8, 1.2, 1.4001].map(Math.log);
    const mean = logs.reduce((sum, log) => sum + log, 0) / 4;
    const variance = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / 3;
    expect(trust.priceSpread).toBeCloseTo(Math.sqrt(variance), 12);
  });

  it("looks at sales of which something was expected, oldest first", () => {
    const trust = outcomeTrust([
      sale("later", 9000, { on: "2026-11-20", club: "Junior driver 4" }),
      sale("sooner", 9000),
      sale("unexpected", 9000, { expected: undefined }),
      sale("bought", -9000, { type: "buy" }),
    ]);
    expect(trust.rows.map(({ entry, club }) => [entry, club])).toEqual([
      ["sooner", null],
      ["later", "Junior driver 4"],
    ]);
  });

  it("has no spread of one sale, and no ratio to a price of nothing", () => {
    const expected = { priceMinor: 0, lowMinor: 0, highMinor: 0 };
    expect(outcomeTrust([sale("one", 9000)])).toMatchObject({
      priceBias: 0.9,
      priceSpread: null,
      daysBias: null,
    });
    expect(outcomeTrust([sale("one", 9000, { expected })])).toMatchObject({
      count: 1,
      pricesInside: 0,
      priceBias: null,
    });
  });

  it("leaves out what was expected in another currency, and what may have been", () => {
    const expected = { priceMinor: 10_000, lowMinor: 7000, highMinor: 14_000 };
    const inEuros = sale("euros", 9000, { expected: { ...expected, currency: "EUR" } });
    const inPounds = sale("pounds", 9000, { expected: { ...expected, currency: "GBP" } });
    const rowsOf = (...entries: ConvertedEntry[]) => outcomeTrust(entries).rows.map(({ entry }) => entry);
    expect(rowsOf(inEuros, inPounds, sale("unsaid", 9000))).toEqual(["euros", "unsaid"]);
    const paidInPounds = sale("bought", -900, {
      type: "buy",
      amount: { amountMinor: -800, currency: "GBP" },
    });
    expect(rowsOf(inEuros, inPounds, sale("unsaid", 9000), paidInPounds)).toEqual(["euros"]);
  });
});
