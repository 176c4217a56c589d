import type { Stretch } from "./clauses.ts";
import type { NameFound } from "./find-model.ts";

const either =
  /^ ?(?:flex |shaft |adapter |sleeve )?(?:or|oder|ou|eller|or else) ?(?:an? |the |maybe |perhaps |even )?$/iu;

/** Whether only an "or" stands between two places in the words: one of them holds, and nobody says which. */
export const isEither = (plain: string, one: Stretch, other: Stretch): boolean =>
  one.end <= other.start && other.start - one.end < 40 && either.test(plain.slice(one.end, other.start));

/** Names joined by "or", which leave open what the thing is: "a Quillon 1 or Quillon 2". */
export function eitherNames(plain: string, names: readonly NameFound[]): ReadonlySet<NameFound> {
  const pairs = names.flatMap((name, at) => {
    const next = names[at + 1];
    return next && isEither(plain, name, next) ? [name, next] : [];
  });
  return new Set(pairs);
}

const lofts =
  /(?<![\d.,£€$])\d{1,2}(?:[.,]5)?(?: ?(?:°|deg(?:rees?)?|grad))? (?:or|oder|ou|eller) \d{1,2}(?:[.,]5(?!\d)| ?(?:°|deg|grad))/gu;

/** "9.5 or 10.5": two lofts of which one holds. */
export const eitherLofts = (plain: string): Stretch[] =>
  Array.from(plain.matchAll(lofts), ({ 0: words, index }) => ({ start: index, end: index + words.length }));
