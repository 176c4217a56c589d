import { type ItemDraft, isHeadLike } from "./item-draft.ts";
import { findLoftLists, type LoftList } from "./loft-lists.ts";
import { findNumberLists } from "./number-lists.ts";

interface Offered {
  readonly items: ItemDraft[];
  readonly plain: string;
}

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

/** Makes several items of a noun that has a list of numbers or of lofts. */
export function spreadItems(offered: Offered): void {
  spreadNumbers(offered);
  spreadLofts(offered);
}
