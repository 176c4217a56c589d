import type { Mention } from "./mention.ts";
import type { Words } from "./words.ts";

const ironRange =
  /(?<=(?<![\p{L}])(?:irons?|iron set|eisen|fers|hierros)(?![\p{L}])[^.\n;]{0,40}(?<![\d.,/£€$-]))(?<first>[1-9]) ?(?:-|to|thru|through|bis) ?(?<last>[4-9])(?![\d"%°]|[.,]\d| ?(?:deg|inch|in\b|days|weeks|cm|mm|years))/gu;
const hash =
  /(?<=(?<![\p{L}\d])(?:#|no\.? ?|number |nr\.? ?))(?<number>[1-9]|1[0-2])(?![\d.,]*\d| ?(?:x|off|of|left)(?![\p{L}]))/gu;

/** Facts said in words that may say something else too; they count only where nothing else says that fact. */
export function readFallbacks({ plain }: Words): Mention[] {
  const ranges = Array.from(
    plain.matchAll(ironRange),
    ({ 0: words, index, groups }): Mention => ({
      field: "clubNumber",
      value: `${groups?.["first"]}-${groups?.["last"]}`,
      start: index,
      end: index + words.length,
    }),
  );
  const numbers = Array.from(
    plain.matchAll(hash),
    ({ 0: words, index, groups }): Mention => ({
      field: "clubNumber",
      value: groups?.["number"] ?? words,
      start: index,
      end: index + words.length,
    }),
  );
  return [...ranges, ...numbers];
}
