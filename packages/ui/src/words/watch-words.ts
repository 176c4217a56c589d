import { moneyText } from "../format/money.ts";
import type { WatchEntry } from "../watch-api.ts";

/** How a price stands to the cap. */
export function overText(overMinor: number | null, currency: string): string {
  if (overMinor === null) return "No price for it alone, or no cap to hold it against";
  if (overMinor === 0) return "At the cap";
  const by = moneyText(Math.abs(overMinor), currency);
  return overMinor < 0 ? `${by} under the cap` : `${by} over the cap`;
}

/** What is typed where listings are searched, on one line: any of the phrases, without the words that tell it is not it. */
export function searchLine({ any, without }: WatchEntry["search"]): string {
  const quoted = (word: string) => (word.includes(" ") ? `"${word}"` : word);
  return [any.map(quoted).join(" OR "), ...without.map((word) => `-${quoted(word)}`)].join(" ");
}

/**
 * The chance that one turns up within so many weeks, where they come at random and one is to be expected in `meanWeeks`: the
 * first arrival of a Poisson process.
 */
export function chanceWithin(weeks: number, meanWeeks: number): number {
  return 1 - Math.exp(-weeks / meanWeeks);
}
