import type { Entry } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { moneyMonths } from "./money-months.ts";

const euros = { currency: "EUR", rates: { GBP: 1.2 } };
const line = (
  on: string,
  type: Entry["type"],
  amountMinor: number,
  parts?: string[],
  currency = "EUR",
): Entry => ({
  id: `${on} ${type} ${amountMinor}`,
  on,
  type,
  amount: { amountMinor, currency },
  ...(parts && { parts }),
});

// Sums by hand; derived, no published source.
describe("moneyMonths", () => {
  it("adds up month by month, quiet months included, whatever the order of the lines", () => {
    const months = moneyMonths(
      [
        line("2026-01-20", "sale", 9000, ["H1", "S1"]),
        line("2025-11-03", "buy", -4000, ["H1"]),
        line("2025-11-30", "buy", -2000, ["S1"]),
        line("2026-01-20", "fee", -900, ["H1", "S1"]),
      ],
      euros,
    );
    expect(months).toEqual([
      { month: "2025-11", inMinor: 0, outMinor: -6000, netMinor: -6000, stockMinor: 6000 },
      { month: "2025-12", inMinor: 0, outMinor: -6000, netMinor: -6000, stockMinor: 6000 },
      { month: "2026-01", inMinor: 9000, outMinor: -6900, netMinor: 2100, stockMinor: 0 },
    ]);
  });

  it("shares a purchase among its parts, and keeps what is not sold", () => {
    const [, sold] = moneyMonths(
      [line("2026-02-01", "buy", -1000, ["A", "B", "C"]), line("2026-03-01", "sale", 700, ["A"])],
      euros,
    );
    expect(sold?.stockMinor).toBe(667);
  });

  it("converts at the rate of the day, else the one typed in, and leaves out what has neither", () => {
    const pounds = { ...line("2026-02-01", "buy", -1000, ["A"], "GBP"), rate: 1.5 };
    const typed = line("2026-02-02", "buy", -1000, ["B"], "GBP");
    const unknown = line("2026-02-03", "buy", -1000, ["C"], "USD");
    expect(moneyMonths([pounds, typed, unknown], euros)[0]).toMatchObject({
      outMinor: -2700,
      stockMinor: 2700,
    });
  });

  it("counts no stock for what is not a thing, and is empty for empty books", () => {
    expect(moneyMonths([line("2026-02-01", "material", -300)], euros)[0]?.stockMinor).toBe(0);
    expect(moneyMonths([], euros)).toEqual([]);
  });
});
