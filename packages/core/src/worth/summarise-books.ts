import { convertMinor, roundMinor } from "../money.ts";
import type { BooksLine, BooksSummary } from "./books-summary.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { Entry } from "./entry.ts";
import { type ConvertedEntry, outcomeTrust } from "./outcome-trust.ts";

type BooksSettings = Pick<CostSettings, "currency" | "rates">;

/** The rate of the day where the entry has one, else the one typed in; undefined where there is neither. */
function rateOf(entry: Entry, { currency, rates }: BooksSettings): number | undefined {
  return entry.amount.currency === currency ? 1 : (entry.rate ?? rates[entry.amount.currency]);
}

/** Each entry is converted and rounded here, once, so that every sum of it agrees with every other. */
export function convertedEntries(entries: readonly Entry[], settings: BooksSettings) {
  const converted: ConvertedEntry[] = [];
  const unconverted: { entry: string; currency: string }[] = [];
  for (const entry of entries) {
    const { amountMinor, currency } = entry.amount;
    const rate = rateOf(entry, settings);
    if (rate === undefined) unconverted.push({ entry: entry.id, currency });
    else converted.push({ entry, amountMinor: convertMinor(amountMinor, currency, settings.currency, rate) });
  }
  return { converted, unconverted };
}

function sum(entries: readonly ConvertedEntry[], of: (entry: ConvertedEntry) => number): number {
  return entries.reduce((total, entry) => total + of(entry), 0);
}

function ofType(entries: readonly ConvertedEntry[], type: Entry["type"]): number {
  return sum(entries, ({ entry, amountMinor }) => (entry.type === type ? amountMinor : 0));
}

/** Over less than a second nobody has worked. */
const minutesLeast = 1 / 60;

function lineOf(entries: readonly ConvertedEntry[]): BooksLine {
  const netMinor = sum(entries, ({ amountMinor }) => amountMinor);
  const minutes = sum(entries, ({ entry }) => entry.minutes ?? 0);
  return {
    inMinor: sum(entries, ({ amountMinor }) => Math.max(0, amountMinor)),
    outMinor: sum(entries, ({ amountMinor }) => Math.min(0, amountMinor)),
    feesMinor: ofType(entries, "fee"),
    postageMinor: ofType(entries, "postage"),
    tripsMinor: ofType(entries, "trip"),
    materialsMinor: ofType(entries, "material"),
    netMinor,
    km: sum(entries, ({ entry }) => entry.km ?? 0),
    minutes,
    profitPerHourMinor: minutes >= minutesLeast ? roundMinor((netMinor * 60) / minutes) : null,
    sales: entries.filter(({ entry }) => entry.type === "sale").length,
  };
}

/** One line for each value that entries have, in order, with null last. */
function grouped<Key extends string | number | null>(
  entries: readonly ConvertedEntry[],
  keyOf: (entry: Entry) => Key,
): (readonly [Key, BooksLine])[] {
  const groups = new Map<Key, ConvertedEntry[]>();
  for (const one of entries) {
    const key = keyOf(one.entry);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups]
    .sort(([one], [other]) => (one === null || (other !== null && one > other) ? 1 : -1))
    .map(([key, group]) => [key, lineOf(group)] as const);
}

/**
 * What the books come to, in whole minor units of the bench's currency: altogether, by club, month and year, and what was expected
 * of sales against what came. An entry in a currency without a rate is left out of all of it, and named.
 */
export function summariseBooks(entries: readonly Entry[], costs: BooksSettings): BooksSummary {
  const { converted, unconverted } = convertedEntries(entries, costs);
  const byClub = grouped(converted, (entry) => entry.club || null);
  const byMonth = grouped(converted, (entry) => entry.on.slice(0, 7));
  const byYear = grouped(converted, (entry) => Number(entry.on.slice(0, 4)));
  return {
    currency: costs.currency,
    totals: lineOf(converted),
    byClub: byClub.map(([club, line]) => ({ club, ...line })),
    byMonth: byMonth.map(([month, line]) => ({ month, ...line })),
    byYear: byYear.map(([year, line]) => ({ year, ...line })),
    trust: outcomeTrust(converted, costs.currency),
    unconverted,
  };
}
