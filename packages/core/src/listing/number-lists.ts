import type { Stretch } from "./clauses.ts";
import type { NumberFound } from "./item-draft.ts";

/** Numbers of clubs as a list joins them: "5, 7 and 9", "3/5". */
export interface NumberList extends Stretch {
  readonly numbers: readonly NumberFound[];
}

const one = "(?:[1-9]|1[0-2]|pw|sw|lw|gw|aw)(?:[iwh])?";
const join = "(?:,? ?(?:and|&|\\+|und|et|y) ?|, ?|/)";
const the = "(?:the )?";
/** A bag holds fourteen clubs at most (Rules of Golf, 4.1b), and a list without an end takes the square of its length to read. */
const list = `${the}${one}(?:${join}${the}${one}){1,13}`;
const nouns =
  "(?:irons?|woods?|hybrids?|rescues?|wedges?|fairways?(?: woods?)?|eisen|fers?|hierros?|holz(?:er)?|bois|maderas?)";
const parts = "(?:[ ,-]*(?:heads?|shafts?|covers?|headcovers?|clubs?|sets?))?(?:[ ,(]*only\\)?)?";

const patterns = [
  new RegExp(`(?<![\\p{L}\\d.,£€$/-])${list}(?= ${nouns}(?![\\p{L}]))`, "gu"),
  new RegExp(
    `(?<=(?<![\\p{L}])${nouns}${parts}(?: ?[:(=-] ?|, ?| (?:no\\.?|nos\\.?|numbers?|#) ?| ))${list}(?![\\p{L}\\d°"/%-]|[.]\\d| ?(?:x|deg|inch|"|°|quid|€|£|euro))`,
    "gu",
  ),
  // "Irons: 5 6 7 8 9 PW".
  new RegExp(
    `(?<=(?<![\\p{L}])irons?(?: ?[:(=-] ?|, ?| ))${one}(?: ${one}){2,13}(?![\\p{L}\\d°"/%-]|[.,]\\d| ?(?:x|deg|inch|"|°|quid|€|£|euro))`,
    "gu",
  ),
  /(?<![\p{L}])the [1-9](?:, the [1-9]){0,12}(?:,? and|,) the [1-9](?![\p{L}\d°"/%-]|[.]\d)/gu,
];

const each = new RegExp(one, "gu");

/** Every list of at least two different numbers of clubs. */
export function findNumberLists(plain: string): NumberList[] {
  return patterns.flatMap((pattern) =>
    Array.from(plain.matchAll(pattern), ({ 0: words, index }) => ({
      start: index,
      end: index + words.length,
      numbers: Array.from(words.matchAll(each), (match) => ({
        value: match[0].length > 1 ? match[0].replace(/(?<=\d)[iwh]$/u, "").toUpperCase() : match[0],
        start: index + match.index,
        end: index + match.index + match[0].length,
      })),
    })).filter(({ numbers }) => new Set(numbers.map(({ value }) => value)).size === numbers.length),
  );
}

const wedgeLetters: readonly (readonly [RegExp, string])[] = [
  [/^(?:pitching|pw)/u, "PW"],
  [/^(?:sand|sw)/u, "SW"],
  [/^(?:lob|lw)/u, "LW"],
  [/^(?:gap|gw)/u, "GW"],
  [/^(?:approach|attack|aw)/u, "AW"],
];

/** The one number that a noun has: "3" of "3 wood", "SW" of "sand wedge"; null for none, and for a range or several. */
export function clubNumberIn(noun: string): string | null {
  const letters = wedgeLetters.find(([pattern]) => pattern.test(noun));
  if (letters) return letters[1];
  const digits = noun.match(/\d+/gu) ?? [];
  return digits.length === 1 && !/(?:-|to|thru) ?(?:[pslagu]w|p$)|\d ?[pslagu]w|pitching/u.test(noun)
    ? (digits[0] ?? null)
    : null;
}
