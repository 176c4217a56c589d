import type { OutcomeTrust, TrustRow } from "./books-summary.ts";
import type { Entry } from "./entry.ts";

/** An entry with its amount in whole minor units of the bench's currency. */
export interface ConvertedEntry {
  readonly entry: Entry;
  readonly amountMinor: number;
}

function rowOf({ entry, amountMinor }: ConvertedEntry): TrustRow | null {
  if (entry.type !== "sale" || !entry.expected) return null;
  const { priceMinor, lowMinor, highMinor, daysToSell } = entry.expected;
  return {
    entry: entry.id,
    on: entry.on,
    club: entry.club ?? null,
    expectedMinor: priceMinor,
    lowMinor,
    highMinor,
    outcomeMinor: amountMinor,
    expectedDays: daysToSell ?? null,
    days: entry.daysToSell ?? null,
    inside: lowMinor <= amountMinor && amountMinor <= highMinor,
  };
}

function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((one, other) => one - other);
  const [below, above] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[Math.floor(sorted.length / 2)]];
  return below === undefined || above === undefined ? null : (below + above) / 2;
}

/** Sample standard deviation; null under two values. */
function spreadOf(values: readonly number[]): number | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

/** Outcome over expectation, where both are over nothing: a price of nothing has no ratio. */
function ratio(outcome: number | null, expected: number | null): number[] {
  return outcome !== null && expected !== null && outcome > 0 && expected > 0 ? [outcome / expected] : [];
}

/**
 * Sales set against what was expected of them, in the bench's currency, so that the user sees how far to trust the estimates.
 * What was expected in another currency is left out; so is what does not say in which, where the books know more than one.
 */
export function outcomeTrust(entries: readonly ConvertedEntry[], currency: string): OutcomeTrust {
  const isOneCurrency = entries.every(({ entry }) => entry.amount.currency === currency);
  const presumed = isOneCurrency ? currency : undefined;
  const rows = entries
    .filter(({ entry }) => (entry.expected?.currency ?? presumed) === currency)
    .map(rowOf)
    .filter((row) => row !== null)
    .sort((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1));
  const prices = rows.flatMap((row) => ratio(row.outcomeMinor, row.expectedMinor));
  const days = rows.flatMap((row) => ratio(row.days, row.expectedDays));
  return {
    count: rows.length,
    pricesInside: rows.length > 0 ? rows.filter(({ inside }) => inside).length / rows.length : null,
    priceBias: medianOf(prices),
    priceSpread: spreadOf(prices.map(Math.log)),
    daysBias: medianOf(days),
    rows,
  };
}

const keyOf = ({ on, entry }: TrustRow) => `${on} ${entry}`;
