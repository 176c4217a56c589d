import type { Stretch } from "./clauses.ts";

/** A loft in a list of lofts. */
export interface LoftFound extends Stretch {
  readonly value: number;
}

const loft = "(?:[1-6]\\d|[6-9])(?:[.,]\\d{1,2})?";
const mark = "(?: ?(?:°|deg(?:rees?)?\\.?|\\*|grad|degres|grados))?";
const join = "(?: ?(?:and|&|\\+|und|et|y|/) ?|, ?(?:and )?| (?=[4-6]\\d(?!\\d)))";
const list = new RegExp(
  `(?<![\\p{L}\\d.,£€$/#-])${loft}${mark}(?:${join}${loft}${mark}){1,4}(?![\\p{L}\\d"%]|[.,]\\d| ?(?:inch|in\\b|cm|mm|g\\b|gr|quid|€|£|euro|x\\b|irons?|woods?|hybrids?|wood\\b|w\\b|h\\b|i\\b))`,
  "gu",
);
const each = new RegExp(loft, "gu");

export interface LoftList extends Stretch {
  readonly lofts: readonly LoftFound[];
  /** Whether the words mark them as degrees, or the list stands in brackets. */
  readonly marked: boolean;
}

/** Lists of lofts, as several heads of one noun have them: "52° and 58°", "(15 and 18)". */
export function findLoftLists(plain: string): LoftList[] {
  return Array.from(plain.matchAll(list), ({ 0: words, index }) => {
    const marked =
      /°|deg|\*|grad/u.test(words) || /[(:] ?$/u.test(plain.slice(Math.max(0, index - 2), index));
    const lofts = Array.from(words.matchAll(each), (match) => ({
      value: Number(match[0].replace(",", ".")),
      start: index + match.index,
      end: index + match.index + match[0].length,
    }));
    return { start: index, end: index + words.length, lofts, marked };
  }).filter(
    ({ lofts }) =>
      lofts.length > 1 &&
      new Set(lofts.map(({ value }) => value)).size === lofts.length &&
      lofts.some(({ value }) => value >= 9),
  );
}
