import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convertMinor } from "../money.ts";
import type { BooksLine } from "./books-summary.ts";
import { type Entry, entrySchema, entryTypes } from "./entry.ts";
import { summariseBooks } from "./summarise-books.ts";

const costs = { currency: "EUR", rates: { GBP: 1.15 } };

function line(id: string, type: Entry["type"], amountMinor: number, other: Partial<Entry> = {}): Entry {
  return { id, on: "2026-11-02", type, amount: { amountMinor, currency: "EUR" }, ...other };
}

describe("summariseBooks", () => {
  // Sums by hand: derived, no published source.
  it("sums up one club from buying to selling", () => {
    const club = "Junior driver 4";
    const summary = summariseBooks(
      [
        line("1", "buy", -4000, { club, on: "2026-10-03" }),
        line("2", "trip", -900, { club, on: "2026-10-03", km: 30, minutes: 45 }),
        line("3", "material", -350, { club, minutes: 30 }),
        line("4", "sale", 9900, { club, minutes: 15 }),
        line("5", "fee", -990, { club }),
        line("6", "postage", -660, { club }),
        line("7", "other", -1200),
      ],
      costs,
    );
    const ofClub = {
      inMinor: 9900,
      outMinor: -6900,
      feesMinor: -990,
      postageMinor: -660,
      tripsMinor: -900,
      materialsMinor: -350,
      netMinor: 3000,
      km: 30,
      minutes: 90,
      profitPerHourMinor: 2000,
      sales: 1,
    };
    expect(summary.byClub[0]).toEqual({ club, ...ofClub });
    expect(summary.byClub[1]).toMatchObject({ club: null, netMinor: -1200, profitPerHourMinor: null });
    expect(summary.totals).toEqual({
      ...ofClub,
      outMinor: -8100,
      netMinor: 1800,
      profitPerHourMinor: 1200,
    });
    expect(summary.byMonth.map(({ month, netMinor }) => [month, netMinor])).toEqual([
      ["2026-10", -4900],
      ["2026-11", 6700],
    ]);
    expect(summary.byYear.map(({ year, netMinor }) => [year, netMinor])).toEqual([[2026, 1800]]);
  });

  it("goes by the rate of the day, else by the rate typed in, else leaves the entry out and names it", () => {
    const pounds = { amountMinor: -1000, currency: "GBP" };
    const summary = summariseBooks(
      [
        line("day", "buy", 0, { amount: pounds, rate: 1.2 }),
        line("typed", "buy", 0, { amount: pounds }),
        line("none", "buy", 0, { amount: { amountMinor: -1000, currency: "SEK" } }),
        line("yen", "buy", 0, { amount: { amountMinor: -1000, currency: "JPY" }, rate: 0.006 }),
      ],
      costs,
    );
    // 10.00 at 1.2 and at 1.15, and 1,000 yen (which has no minor unit, ISO 4217) at 0.006.
    expect(summary.totals.netMinor).toBe(-1200 - 1150 - 600);
    expect(summary.unconverted).toEqual([{ entry: "none", currency: "SEK" }]);
  });

  it("is empty for empty books", () => {
    const summary = summariseBooks([], costs);
    expect(summary.totals).toMatchObject({ netMinor: 0, sales: 0, profitPerHourMinor: null });
    expect([summary.byClub, summary.byMonth, summary.byYear]).toEqual([[], [], []]);
    expect(summary.trust).toEqual({
      count: 0,
      pricesInside: null,
      priceBias: null,
      priceSpread: null,
      daysBias: null,
      rows: [],
    });
  });
});

const entries = fc.array(
  fc.record({
    on: fc.constantFrom("2024-12-31", "2025-01-01", "2025-06-30", "2026-06-01", "2026-11-25"),
    type: fc.constantFrom(...entryTypes),
    amount: fc.record({
      amountMinor: fc.integer({ min: -10_000_000, max: 10_000_000 }),
      currency: fc.constantFrom("EUR", "GBP", "SEK", "JPY"),
    }),
    rate: fc.option(fc.double({ min: 0.001, max: 1000, noNaN: true }), { nil: undefined }),
    club: fc.constantFrom("A", "B", "", undefined),
    km: fc.option(fc.integer({ min: 0, max: 500 }), { nil: undefined }),
    minutes: fc.option(fc.integer({ min: 0, max: 500 }), { nil: undefined }),
  }),
  { maxLength: 30 },
);
const added = [
  "inMinor",
  "outMinor",
  "feesMinor",
  "postageMinor",
  "tripsMinor",
  "materialsMinor",
  "netMinor",
  "km",
  "minutes",
  "sales",
] as const;

function totalOf(lines: readonly BooksLine[]): number[] {
  // A sum that starts from nothing has no negative zero.
  return added.map((field) => lines.reduce((sum, one) => sum + one[field], 0));
}

describe("summariseBooks, whatever the entries", () => {
  const summaries = entries.map((drawn) => {
    const books = drawn.map((entry, at) => ({ id: `entry ${at}`, ...entry }));
    return { books, summary: summariseBooks(books, costs) };
  });

  it("adds up to the same by club, by month and by year, to the minor unit", () => {
    fc.assert(
      fc.property(summaries, ({ books, summary }) => {
        expect(books.every((entry) => entrySchema.safeParse(entry).success)).toBe(true);
        const totals = totalOf([summary.totals]);
        expect(totalOf(summary.byClub)).toEqual(totals);
        expect(totalOf(summary.byMonth)).toEqual(totals);
        expect(totalOf(summary.byYear)).toEqual(totals);
        expect(summary.totals.inMinor + summary.totals.outMinor).toBe(summary.totals.netMinor);
      }),
    );
  });

  it("is the sum of entries that are each converted and rounded once", () => {
    fc.assert(
      fc.property(summaries, ({ books, summary }) => {
        const left = new Set(summary.unconverted.map(({ entry }) => entry));
        const net = books
          .filter(({ id }) => !left.has(id))
          .reduce((sum, { amount, rate }) => {
            const { amountMinor, currency } = amount;
            const atRate = currency === "EUR" ? 1 : (rate ?? 1.15);
            return sum + convertMinor(amountMinor, currency, "EUR", atRate);
          }, 0);
        expect(summary.totals.netMinor).toBe(net);
      }),
    );
  });

  it("counts every entry in one club, one month and one year, or names it as left out", () => {
    fc.assert(
      fc.property(summaries, ({ books, summary }) => {
        const sales = books.filter(({ type }) => type === "sale");
        const left = new Set(summary.unconverted.map(({ entry }) => entry));
        expect(summary.totals.sales + sales.filter(({ id }) => left.has(id)).length).toBe(sales.length);
        expect(new Set(summary.byClub.map(({ club }) => club)).size).toBe(summary.byClub.length);
        const months = summary.byMonth.map(({ month }) => month);
        expect(months).toEqual([...new Set(months)].sort());
      }),
    );
  });
});
