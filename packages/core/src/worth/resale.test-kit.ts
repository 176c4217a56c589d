import type { Adjustments } from "./cost-settings.ts";
import type { Evidence, Subject } from "./evidence.ts";

/** Adjustments that change nothing, and are not fitted. */
export const plainAdjustments: Adjustments = {
  asNew: 1,
  fair: 1,
  poor: 1,
  noCover: 1,
  noWrench: 1,
  askedOverSold: 1,
  season: Array.from({ length: 12 }, () => 1),
  fit: false,
};

export const plainSettings = { currency: "EUR", rates: {}, adjustments: plainAdjustments };

export const today = "2026-11-25";

/** A driver head of which everything is known that a price depends on. */
export const driverHead: Subject = {
  kind: "head",
  maker: "Northmoor",
  model: "Quillon 2",
  year: 2022,
  clubType: "driver",
  hand: "right",
  condition: "good",
  cover: true,
  wrench: true,
};

/** A price of that head that somebody paid today. */
export function price(id: string, amountMinor: number, other: Partial<Evidence> = {}): Evidence {
  return { id, on: today, what: "sold", price: { amountMinor, currency: "EUR" }, ...driverHead, ...other };
}

/** The generator of Park and Miller (1988), so that every run draws the same: numbers over 0 and under 1. */
export function parkMiller(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

/** Standard normal draws (Box and Muller, 1958). */
export function normalFrom(draw: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(draw())) * Math.cos(2 * Math.PI * draw());
}
