const letter = "[a-z]";

/** What follows the first letter, with one slip at a place: a letter left out, swapped, wrong, or typed over. */
function slipsAt(rest: string, place: number): string[] {
  const before = rest.slice(0, place);
  const here = rest.charAt(place);
  const after = rest.slice(place + 1);
  const swapped = after === "" ? [] : [before + after.charAt(0) + here + after.slice(1)];
  return [before + after, ...swapped, before + letter + after, before + letter + here + after];
}

/**
 * The source of a pattern for a word with at most one slip of the fingers, its first letter right: "stiif", "regualr".
 * `others` are other words that near, which are not this word: "staff" and "stuff" are not "stiff".
 */
export function withTypos(word: string, others: readonly string[] = []): string {
  const rest = word.slice(1);
  const slips = Array.from(rest, (_, place) => slipsAt(rest, place)).flat();
  const not = others.length === 0 ? "" : `(?!(?:${others.join("|")})\\b)`;
  return `${not}${word.charAt(0)}(?:${[...new Set([rest, ...slips, rest + letter])].join("|")})`;
}
