import { type ItemDraft, isHeadLike } from "./item-draft.ts";
import { findLoftLists, type LoftList } from "./loft-lists.ts";
import { findNumberLists } from "./number-lists.ts";

interface Offered {
  readonly items: ItemDraft[];
  readonly plain: string;
}

interface Priced extends Offered {
  /** The words with "¤" where a sum of money stands. */
  readonly marked: string;
}

const pricedLoft =
  /(?<![\p{L}\d.,/-])(?<loft>[1-6]\d(?:[.,]\d)?|[89](?:[.,]\d)?)(?: ?(?:°|deg(?:rees?)?\.?|\*|grad))? ?[-:=@]? ?(?:for |at )?(?=¤)/gu;
/** "One RH 9°", where a hand, a loft or a flex tells the one from the other. */
const oneOf =
  /(?<=[ ,:(-])one (?:is |in |a )?(?=(?:rh|lh|right|left|\d|stiff|regular|reg|senior|x-stiff|graphite|steel)(?![\p{L}]))/gu;

const copyOf = (item: ItemDraft, own: Partial<ItemDraft>): ItemDraft => ({
  ...item,
  names: [...item.names],
  again: [],
  ...own,
});

/** "Irons 5, 7 and 9" are three items. */
function spreadNumbers({ items, plain }: Offered): void {
  for (const { numbers, start, end } of findNumberLists(plain)) {
    const at = items.findIndex(
      ({ type, last, first }) => type !== null && end >= first - 30 && start <= last + 40,
    );
    const item = items[at];
    if (!item || item.number) continue;
    // "Two woods, 3w and 5w": named as things of their own already.
    if (items.some((other) => other !== item && other.first >= start && other.first < end)) continue;
    const quantity = item.quantity?.value === numbers.length ? null : item.quantity;
    items.splice(at, 1, ...numbers.map((number) => copyOf(item, { number, quantity })));
  }
}

/** Whether a list of lofts may be one of the things named: they are several, and not another number of them. */
const mayBeSeveral = ({ kind, plural, quantity, number }: ItemDraft, { lofts, marked }: LoftList) =>
  isHeadLike(kind) &&
  number === null &&
  (quantity === null ? plural && marked : quantity.value === lofts.length);

/** "Wedges 52° and 58°" are two items; where there are as many items already, each has its loft in the same order. */
function spreadLofts({ items, plain }: Offered): void {
  for (const list of findLoftLists(plain)) {
    const { lofts, start, end } = list;
    const before = items.filter(({ first, kind }) => first <= start && isHeadLike(kind));
    if (before.length === lofts.length && before.every(({ type }) => type === before[0]?.type)) {
      for (const [at, item] of before.entries()) item.loft = lofts[at] ?? null;
      continue;
    }
    const at = items.findIndex(
      (item) => mayBeSeveral(item, list) && end >= item.first - 30 && start <= item.last + 40,
    );
    const item = items[at];
    if (item) items.splice(at, 1, ...lofts.map((loft) => copyOf(item, { loft, quantity: null })));
  }
}

/** "52° - £25, 56° - £20": lofts with a price behind each are an item each. */
function spreadPricedLofts({ items, marked }: Priced): void {
  const found = Array.from(marked.matchAll(pricedLoft), ({ groups, index }) => ({
    value: Number(groups?.["loft"]?.replace(",", ".")),
    start: index,
    end: index + (groups?.["loft"]?.length ?? 0),
  }));
  const at = items.findLastIndex(({ first }) => first <= (found[0]?.start ?? 0));
  const item = items[at];
  const next = items[at + 1]?.first ?? marked.length;
  const lofts = found.filter(({ start }) => start < next);
  if (new Set(lofts.map(({ value }) => value)).size !== lofts.length || lofts.length < 2) return;
  if (!item || !isHeadLike(item.kind) || !item.plural || item.number || item.loft) return;
  splitUp(
    items,
    item,
    lofts.map((loft) => ({ loft, first: loft.start, last: loft.end, quantity: null })),
  );
}

/** "Two heads, one right handed, one left handed": things told apart by "one …, one …". */
function spreadOnes({ items, plain }: Offered): void {
  for (const item of [...items]) {
    if (!item.plural || item.number || item.loft) continue;
    const at = items.indexOf(item);
    const rest = plain.slice(item.last, Math.min(items[at + 1]?.first ?? plain.length, item.last + 120));
    const clause = /^[^\n;]*/u.exec(rest)?.[0] ?? "";
    const ones = Array.from(clause.matchAll(oneOf), ({ index }) => item.last + index + 1);
    const asMany = item.quantity === null || item.quantity.value === ones.length;
    if (ones.length < 2 || !asMany) continue;
    splitUp(
      items,
      item,
      ones.map((start) => ({ first: start, last: start + 3, quantity: null })),
    );
  }
}

/** Puts several items in place of one, under it as a heading. */
function splitUp(items: ItemDraft[], item: ItemDraft, parts: readonly Partial<ItemDraft>[]): void {
  const heading = parts[0]?.first ?? item.last;
  const names = item.names.filter(({ end }) => end <= heading);
  items.splice(
    items.indexOf(item),
    1,
    ...parts.map((part) => copyOf(item, { heading, names: [...names], ...part })),
  );
}

/** Makes several items of a noun that has a list of numbers or of lofts. */
export function spreadItems(offered: Priced): void {
  spreadPricedLofts(offered);
  spreadOnes(offered);
  spreadNumbers(offered);
  spreadLofts(offered);
}
