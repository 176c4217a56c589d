import type { ItemDraft } from "./item-draft.ts";

const breaks: readonly RegExp[] = [/\n/gu, /[;|] ?|[.!?] (?=\p{L}|\d|\(|$)/gu];
const connectives = / and | & | plus | also | \+ | und | et |\+/gu;
const weak = /, | - | [(]/gu;
/** A joining word with only a few words between it and the thing: those belong to the thing. */
const closeJoin = /(?:^|[ ,.])(?:and|&|plus|\+|also|und|et|y) (?:[\p{L}\d'"°.-]+ ){0,3}$/u;

const lastOf = (words: string, pattern: RegExp) => [...words.matchAll(pattern)].at(-1);

/** Where the words about one item end and those about the next begin. */
function boundary(plain: string, from: number, to: number): number {
  const between = plain.slice(from, to);
  const close = closeJoin.exec(
    between.replace(/ {2,}/gu, (blanks) => "x".repeat(blanks.length - 1).concat(" ")),
  );
  if (close) return from + close.index;
  for (const pattern of breaks) {
    const last = lastOf(between, pattern);
    if (last) return from + last.index + last[0].length;
  }
  const connective = lastOf(between, connectives);
  if (connective) return from + connective.index;
  const comma = lastOf(between, weak);
  return comma ? from + comma.index + 1 : to;
}

/** Sets the stretch of words that is about each item; items of one noun share theirs. */
export function setStretches({
  items,
  plain,
}: {
  readonly items: readonly ItemDraft[];
  readonly plain: string;
}): void {
  items.forEach((item, at) => {
    const before = items[at - 1];
    item.end = plain.length;
    if (!before) {
      item.start = 0;
      return;
    }
    if (before.first === item.first) {
      item.start = before.start;
      return;
    }
    item.start = boundary(plain, Math.min(before.last, item.first), item.first);
    for (const other of items.slice(0, at)) if (other.first === before.first) other.end = item.start;
  });
}
