import type { Flex } from "../parts/part.ts";
import type { NameFound } from "./find-model.ts";
import type { Mention } from "./mention.ts";
import type { Words } from "./words.ts";

const flexLetters: ReadonlyMap<string, Flex> = new Map([
  ["l", "ladies"],
  ["a", "senior"],
  ["r2", "senior"],
  ["r", "regular"],
  ["r+", "regular-plus"],
  ["sr", "regular-plus"],
  ["s", "stiff"],
  ["x", "x-stiff"],
  ["xs", "x-stiff"],
  ["tx", "x-stiff"],
]);

const letters =
  /^ ?[-(/,]? ?(r\+|r2|sr|xs|tx|[larsx])(?![\p{L}\d+'&/°"-]| ?(?:x|hand|h)(?![\p{L}])|(?<=x) ?\d| (?:\d{1,3}) ?(?:x|off))/u;

/** The flex that a letter behind a shaft's name says: "Reedlace 60 S". Behind no other words does a letter alone say it. */
export function readModelFlex({ plain }: Words, names: readonly NameFound[]): Mention[] {
  return names.flatMap((name): Mention[] => {
    if (!name.models.some(({ kind }) => kind === "shaft")) return [];
    const match = letters.exec(plain.slice(name.end, name.end + 10));
    const value = match?.[1] && flexLetters.get(match[1]);
    if (!match?.[1] || !value) return [];
    const start = name.end + match[0].length - match[1].length;
    // "a" is mostly an article.
    if (match[1] === "a" && /^ \p{L}/u.test(plain.slice(start + 1, start + 3))) return [];
    return [{ field: "flex", value, start, end: start + match[1].length }];
  });
}
