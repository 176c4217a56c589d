import type { NameFound } from "./find-model.ts";
import type { Mention } from "./mention.ts";
import type { Words } from "./words.ts";

/** The year in short before a name: "'21 Ombrel". */
export function shortYears(names: readonly NameFound[], { plain }: Words): Mention[] {
  return names.flatMap(({ start }): Mention[] => {
    const match = /(?<![\d\p{L}])'(?<year>[0-4]\d) ?$/u.exec(plain.slice(Math.max(0, start - 5), start));
    const year = match?.groups?.["year"];
    return match && year
      ? [{ field: "year", value: 2000 + Number(year), start: start - match[0].length, end: start }]
      : [];
  });
}

/** The adapter families that the names say. */
export function familyMentions(names: readonly NameFound[], { plain }: Words): Mention[] {
  return names.flatMap(({ family, start, end }): Mention[] => {
    if (family === null) return [];
    const said: Mention = { field: "adapterFamily", value: family, start, end };
    // "Quillon 2 on it" speaks of an adapter without the word.
    const on =
      /^ ?(?:tip |end |sleeve |adapt[eo]r )?(?:(?:is |already |still )?on(?: it| (?:the )?(?:end|tip))?|fitted|installed|attached|already on)(?= ?(?:$|[.,;)|\n]))/u.exec(
        plain.slice(end, end + 20),
      );
    const tip =
      /(?:with|w\/|has|inc|c\/w|mit|avec|con|plus|\+)(?: an?| the| a new)? ?$/u.test(
        plain.slice(Math.max(0, start - 20), start),
      ) && /^ tip(?![\p{L}])/u.test(plain.slice(end, end + 6));
    if (tip) return [said, { field: "adapter", value: "fitted", start, end: end + 4 }];
    return on ? [said, { field: "adapter", value: "fitted", start, end: end + on[0].length }] : [said];
  });
}
