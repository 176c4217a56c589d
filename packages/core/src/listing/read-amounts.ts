import { minorDigits, roundMinor } from "../money.ts";
import type { Words } from "./words.ts";

/** A sum of money in the words; without a currency it is only a number that may be one. */
export interface Amount {
  /** In whole units, as the words give it: 12.5 for "12.50". */
  readonly units: number;
  readonly currency: string | null;
  readonly start: number;
  readonly end: number;
  /** A word that can only be a sum: "a tenner". */
  readonly slang?: boolean;
}

/** Signs and words of currencies, the longer before the shorter. */
const currencyWords: readonly (readonly [currency: string, words: string])[] = [
  ["AUD", "a\\$|au\\$|aud\\$?|aus\\$|aussie dollars?|australian dollars?"],
  ["CAD", "\\$ ?c(?:ad?)?(?![\\p{L}])|c\\$|ca\\$|cad\\$?|canadian dollars?"],
  ["NZD", "nz\\$|nzd\\$?"],
  ["USD", "us\\$|usd\\$?|\\$us|\\$|dollars?|bucks?"],
  ["GBP", "£|gbp|quid|pounds?(?! *(?:weight|in))|sterling|ukp"],
  ["EUR", "€|euros?|eur|eu(?=\\d)"],
  ["CHF", "chf|fr\\.|sfr\\.?|franken"],
  ["SEK", "sek|kr\\.? ?\\(?sek\\)?|kronor"],
  ["NOK", "nok|kr\\.? ?\\(?nok\\)?"],
  ["DKK", "dkk|kr\\.? ?\\(?dkk\\)?"],
];

const anyCurrency = currencyWords.map(([, words]) => words).join("|");
const whole = currencyWords.map(
  ([currency, words]) => [currency, new RegExp(`^(?:${words})$`, "u")] as const,
);

const currencyOf = (words: string): string | null =>
  whole.find(([, pattern]) => pattern.test(words))?.[0] ?? null;

/** "1,250.00", "1.250,00", "1'250", "1 250", "45,50", "12.50", "40"; never inside a longer word or number. */
const number = "\\d{1,3}(?:[.,' ]\\d{3})+(?:[.,]\\d{1,2})?|\\d{1,6}(?:[.,]\\d{1,2})?";
const notInsideNumber = "(?<![\\p{L}\\d]|[\\d][.,/-])";
const ends = "(?![\\d]|[.,]\\d|[/]\\d)";

const before = new RegExp(
  `(?<![\\p{L}$£€])(${anyCurrency})(?: ?)(${number})( ?k(?![\\p{L}\\d]))?${ends}(?:[.,]?-+(?! ?[\\d£€$]))?`,
  "gu",
);
const after = new RegExp(
  `${notInsideNumber}(${number})( ?k(?= ?(?:${anyCurrency})))?(?:,-+|[.]-+)? ?(${anyCurrency})(?![\\p{L}\\d])`,
  "gu",
);
const bare = new RegExp(`${notInsideNumber}(${number})(k(?![\\p{L}\\d]))?${ends}(,-+)?`, "gu");

/** What a number says, where a dot and a comma may each be the decimal sign or stand between thousands. */
export function numberOf(words: string): number {
  const plain = words.replace(/[' ]/gu, "");
  const grouped = /^\d{1,3}(?:[.,]\d{3})+(?:([.,])(\d{1,2}))?$/u.exec(plain);
  if (!grouped) return Number(plain.replace(",", "."));
  const decimals = grouped[2];
  const digits = plain.replace(/[.,]/gu, "");
  return decimals === undefined ? Number(digits) : Number(digits) / 10 ** decimals.length;
}

/** The amount in whole minor units. */
export const minorOf = (units: number, currency: string): number =>
  roundMinor(units * 10 ** minorDigits(currency));

const _overlaps = (one: { start: number; end: number }, other: { start: number; end: number }) =>
  one.start < other.end && other.start < one.end;

/** What everyday words for sums are worth, in the currency of the others. */
const slang: readonly (readonly [RegExp, number])[] = [
  [/(?<![\p{L}])(?:a |another )?tenner(?![\p{L}])/gu, 10],
  [/(?<![\p{L}])(?:a |another )?fiver(?![\p{L}])/gu, 5],
];

/** Every number that may be money: those with a currency first found, then bare ones. In the order of the words. */
export function readAmounts({ plain }: Words): Amount[] {
  const found: Amount[] = [];
  const claimed = new Uint8Array(plain.length);
  const add = (amount: Amount) => {
    if (claimed.subarray(amount.start, amount.end).includes(1)) return;
    claimed.fill(1, amount.start, amount.end);
    found.push(amount);
  };
  const unitsOf = (digits: string, thousands: string | undefined) =>
    numberOf(digits) * (thousands ? 1000 : 1);
  for (const match of plain.matchAll(before)) {
    const [words, sign = "", digits = "", thousands] = match;
    add({
      units: unitsOf(digits, thousands),
      currency: currencyOf(sign),
      start: match.index,
      end: match.index + words.length,
    });
  }
  for (const match of plain.matchAll(after)) {
    const [words, digits = "", thousands, sign = ""] = match;
    add({
      units: unitsOf(digits, thousands),
      currency: currencyOf(sign),
      start: match.index,
      end: match.index + words.length,
    });
  }
  for (const [pattern, units] of slang)
    for (const { 0: words, index } of plain.matchAll(pattern))
      add({ units, currency: null, start: index, end: index + words.length, slang: true });
  for (const match of plain.matchAll(bare)) {
    const [words, digits = "", thousands] = match;
    add({
      units: unitsOf(digits, thousands),
      currency: null,
      start: match.index,
      end: match.index + words.length,
    });
  }
  return found.sort((one, other) => one.start - other.start);
}
