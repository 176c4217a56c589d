import type { NameFound } from "./find-model.ts";
import type { Mention } from "./mention.ts";
import type { Words } from "./words.ts";

const ironRange =
  /(?<=(?<![\p{L}])(?:irons?|iron set|eisen|fers|hierros)(?![\p{L}])[^.\n;]{0,40}(?<![\d.,/£€$-]))(?<first>[1-9]) ?(?:-|to|thru|through|bis) ?(?<last>[4-9])(?![\d"%°]|[.,]\d| ?(?:deg|inch|in\b|days|weeks|cm|mm|years))/gu;
const hash =
  /(?<=(?<![\p{L}\d])(?:#|no\.? ?|number:? ?|nr\.? ?|club: ?))(?<number>[1-9]|1[0-2])(?![\d.,]*\d| ?(?:x|off|of|left)(?![\p{L}]))/gu;

const loftBehind =
  /^ ?[(,-]? ?(?<loft>\d{1,2}(?:[.,]\d{1,2})?)(?![\d"'%]|[.,]\d|-| ?(?:x|iron|wood|hybrid|w|h|i|g|gr|gram|in|inch|cm|mm|off|left|heads?|shafts?|clubs?|quid|euros?|pounds?|years?|times|rounds?|irons|woods|cc)(?![\p{L}])| ?[€£$])/u;

/** Heads of drivers have about 7 to 13.5 degrees, of wedges 44 to 64, others between: common practice, no source. */
const isLoft = (value: number, type: string | null | undefined) =>
  type === "wedge"
    ? value >= 44 && value <= 64
    : type === "driver"
      ? value >= 7 && value <= 13.5
      : value >= 13 && value <= 34;

/** A number right behind a head's name is its loft where it can be one: "Ombrel 9 RH". */
function loftsBehind(plain: string, names: readonly NameFound[]): Mention[] {
  return names.flatMap((name): Mention[] => {
    const match = loftBehind.exec(plain.slice(name.end, name.end + 28));
    const said = match?.groups?.["loft"];
    if (!match || said === undefined) return [];
    const value = Number(said.replace(",", "."));
    const plausible = name.models.some(({ kind, clubType }) => kind === "head" && isLoft(value, clubType));
    const start = name.end + match[0].length - said.length;
    return plausible ? [{ field: "loftDeg", value, start, end: start + said.length }] : [];
  });
}

/** A clause that is nothing but this word. */
const aloneInClause =
  /(?<=(?:^|[,.;:|(\n/-]|(?<![\p{L}])(?:rh|lh|hand|handed)) ?)(?:left|right|ladies'?|ladys|lady|womens|women's)(?= ?(?:[,.;|)\n/]|$| - ))/gu;

/** Facts said in words that may say something else too; they count only where nothing else says that fact. */
export function readFallbacks({ plain }: Words, names: readonly NameFound[]): Mention[] {
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
  const words = Array.from(plain.matchAll(aloneInClause), ({ 0: said, index }): Mention => {
    const at = { start: index, end: index + said.length };
    if (/^(?:ladies|ladys|womens|lady|women's|ladies')$/u.test(said))
      return { field: "flex", value: "ladies", ...at };
    return { field: "hand", value: said.startsWith("l") ? "left" : "right", ...at };
  });
  return [...words, ...ranges, ...numbers, ...loftsBehind(plain, names)];
}
