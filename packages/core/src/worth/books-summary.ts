/**
 * One line of the books' summary, in whole minor units of the bench's currency. Money in is positive, money out is negative,
 * so `inMinor + outMinor` is `netMinor`, and `feesMinor`, `postageMinor`, `tripsMinor` and `materialsMinor` are (negative) parts of
 * it. What buyers paid for postage is taken off `postageMinor`.
 */
export interface BooksLine {
  readonly inMinor: number;
  readonly outMinor: number;
  readonly feesMinor: number;
  readonly postageMinor: number;
  readonly tripsMinor: number;
  readonly materialsMinor: number;
  readonly netMinor: number;
  readonly km: number;
  readonly minutes: number;
  /** Net, own hours unpaid, per hour spent. Null where no time is written down. */
  readonly profitPerHourMinor: number | null;
  /** How many sales. */
  readonly sales: number;
}

/** A sale set against what was expected of it. */
export interface TrustRow {
  /** Id of the sale entry. */
  readonly entry: string;
  readonly on: string;
  readonly club: string | null;
  readonly expectedMinor: number;
  readonly lowMinor: number;
  readonly highMinor: number;
  readonly outcomeMinor: number;
  readonly expectedDays: number | null;
  readonly days: number | null;
  /** Whether the outcome lay inside the interval that was given, ends included. */
  readonly inside: boolean;
}

/** How far estimates could be trusted so far. */
export interface OutcomeTrust {
  /** How many sales had an expectation. */
  readonly count: number;
  /** Share of outcomes inside their 95 % interval, from 0 to 1; null where nothing was expected of any sale. */
  readonly pricesInside: number | null;
  /** Median of outcome over expectation: over 1, things sold for more than was expected. */
  readonly priceBias: number | null;
  /** Standard deviation of the logarithm of outcome over expectation; null under two sales. */
  readonly priceSpread: number | null;
  /** Median of days to sell over those expected; null where no sale has both. */
  readonly daysBias: number | null;
  /** Oldest first. */
  readonly rows: readonly TrustRow[];
}

/** What the books come to. Every list adds up to `totals`. */
export interface BooksSummary {
  readonly currency: string;
  readonly totals: BooksLine;
  /** By name; lines that are for no club come last, as `club: null`. */
  readonly byClub: readonly (BooksLine & { readonly club: string | null })[];
  /** Oldest first; months as "2026-11". */
  readonly byMonth: readonly (BooksLine & { readonly month: string })[];
  readonly byYear: readonly (BooksLine & { readonly year: number })[];
  readonly trust: OutcomeTrust;
  /** Entries in a currency that has no rate: left out of everything above. */
  readonly unconverted: readonly { readonly entry: string; readonly currency: string }[];
}
