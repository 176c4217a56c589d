import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entriesOfPurchase, entriesOfSale, sharePerPart } from "./entries-of.ts";
import { entrySchema } from "./entry.ts";
import { summariseBooks } from "./summarise-books.ts";

const costs = { currency: "EUR", rates: { GBP: 1.15 }, perKmMinor: 30, buyerPaysPostage: false };
const eur = (amountMinor: number) => ({ amountMinor, currency: "EUR" });
const gbp = (amountMinor: number) => ({ amountMinor, currency: "GBP" });

describe("entriesOfPurchase", () => {
  it("writes what was paid, what sending cost and the trip as money out", () => {
    const { entries, paidPerPart } = entriesOfPurchase(
      {
        paid: eur(5000),
        on: "2026-11-25",
        partIds: ["H31", "S31"],
        weights: [3, 1],
        club: "Junior driver 4",
        sighting: "s1",
        roundTripKm: 24.5,
        minutes: 40,
        postage: eur(590),
      },
      costs,
    );
    const common = { on: "2026-11-25", parts: ["H31", "S31"], club: "Junior driver 4", sighting: "s1" };
    expect(entries).toEqual([
      { ...common, type: "buy", amount: eur(-5000) },
      { ...common, type: "postage", amount: eur(-590) },
      // 24.5 km at 0.30: derived, no published source.
      { ...common, type: "trip", amount: eur(-735), km: 24.5, minutes: 40 },
    ]);
    expect(paidPerPart).toEqual([
      { part: "H31", share: eur(3750) },
      { part: "S31", share: eur(1250) },
    ]);
  });

  it("keeps the rate of the day, or else the rate typed in, on what is in another currency, and no rate on the bench's own", () => {
    const purchase = { paid: gbp(4000), on: "2026-11-25", partIds: ["H31"], roundTripKm: 10 };
    const rates = (rate: number | undefined) =>
      entriesOfPurchase({ ...purchase, rate, postage: gbp(500) }, costs).entries.map((entry) => entry.rate);
    expect(rates(1.2)).toEqual([1.2, 1.2, undefined]);
    expect(rates(undefined)).toEqual([1.15, 1.15, undefined]);
  });

  it("writes no line for nothing, but does for something given away", () => {
    const { entries } = entriesOfPurchase(
      { paid: eur(0), on: "2026-11-25", partIds: ["H31"], postage: eur(0), roundTripKm: 0 },
      costs,
    );
    expect(entries).toEqual([{ on: "2026-11-25", type: "buy", amount: eur(0), parts: ["H31"] }]);
  });

  it("buys something without a part", () => {
    const bought = entriesOfPurchase({ paid: eur(900), on: "2026-11-25", partIds: [] }, costs);
    expect(bought.paidPerPart).toEqual([]);
    expect(bought.entries).toHaveLength(1);
  });
});

describe("entriesOfSale", () => {
  const sale = { parts: ["H31", "S31"], price: eur(9900), on: "2026-11-25" };

  it("writes the price in, fees and postage out", () => {
    const expected = { priceMinor: 9000, lowMinor: 6000, highMinor: 13_000 };
    const entries = entriesOfSale(
      { ...sale, club: "Junior driver 4", daysToSell: 12, postage: eur(690), expected },
      costs,
      990,
    );
    const common = { on: "2026-11-25", parts: ["H31", "S31"], club: "Junior driver 4" };
    expect(entries).toEqual([
      { ...common, type: "sale", amount: eur(9900), daysToSell: 12, expected },
      { ...common, type: "fee", amount: eur(-990) },
      { ...common, type: "postage", amount: eur(-690) },
    ]);
  });

  it("writes the postage in as well as out where the buyer pays it, so that it comes to nothing", () => {
    const posted = entriesOfSale(
      { ...sale, postage: gbp(690), rate: 1.2 },
      { ...costs, buyerPaysPostage: true },
      990,
    );
    expect(posted.slice(2)).toMatchObject([
      { type: "postage", amount: gbp(-690) },
      { type: "postage", amount: gbp(690) },
    ]);
    const unposted = entriesOfSale(sale, costs, 990);
    const netOf = (lines: typeof posted) =>
      summariseBooks(
        lines.map((line, at) => ({ id: `${at}`, ...line })),
        costs,
      ).totals.netMinor;
    expect(netOf(posted)).toBe(netOf(unposted));
  });

  it("takes the fees that the sale says over those of the table, and writes none for nothing", () => {
    const fees = (given: ReturnType<typeof eur> | undefined, feesMinor: number) =>
      entriesOfSale({ ...sale, fees: given }, costs, feesMinor).flatMap(({ type, amount }) =>
        type === "fee" ? [amount] : [],
      );
    expect(fees(gbp(500), 990)).toEqual([gbp(-500)]);
    expect(fees(eur(0), 990)).toEqual([]);
    expect(fees(undefined, 0)).toEqual([]);
  });
});

const amount = fc.record({
  amountMinor: fc.integer({ min: 0, max: 10_000_000 }),
  currency: fc.constantFrom("EUR", "GBP", "SEK"),
});
const parts = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 12 });

describe("whatever is bought and sold", () => {
  it("loses no minor unit when it is shared over parts, whatever the weights", () => {
    const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(amount, parts, weights, (paid, ids, drawn) => {
        const shares = sharePerPart(paid, ids, drawn.slice(0, ids.length));
        expect(shares.map(({ part }) => part)).toEqual(ids);
        expect(shares.reduce((sum, { share }) => sum + share.amountMinor, 0)).toBe(paid.amountMinor);
        expect(shares.every(({ share }) => share.amountMinor >= 0 && share.currency === paid.currency)).toBe(
          true,
        );
      }),
    );
  });

  it("makes lines that the books can hold, and that come to what went in less what went out", () => {
    const minor = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(parts, minor, minor, minor, minor, (ids, paid, price, fees, postage) => {
        const on = "2026-11-25";
        const lines = [
          ...entriesOfPurchase({ paid: eur(paid), on, partIds: ids, roundTripKm: 7 }, costs).entries,
          ...entriesOfSale({ parts: ids, price: eur(price), on, postage: eur(postage) }, costs, fees),
        ].map((entry, at) => ({ id: `${at}`, ...entry }));
        expect(lines.every((entry) => entrySchema.safeParse(entry).success)).toBe(true);
        const { totals } = summariseBooks(lines, costs);
        expect(totals.netMinor).toBe(price - paid - fees - postage - 210);
      }),
    );
  });

  it("throws when a part has no weight, which is our bug", () => {
    expect(() => sharePerPart(eur(100), ["a", "b"], [1])).toThrow(RangeError);
  });
});
