import { type ItemDraft, isHeadLike } from "./item-draft.ts";
import { accessories, type State } from "./items-state.ts";

const listGap = /^ ?(?:,|and|&|\+|\/|, and|und|et|y)? ?(?:an? )?$/u;

/** "3 wood and 5 wood heads": the first is a head too; "Ombrel driver and 3 wood": the second is an Ombrel too. */
export function shareParts({ items, plain }: State) {
  for (const [at, item] of items.entries()) {
    const before = items[at - 1];
    if (!before || item.names.length > 0 || !isHeadLike(item.kind) || !isHeadLike(before.kind)) continue;
    if (/^ ?(?:and|&|\+|und|et|y|,)? ?(?:an? |the )?$/u.test(plain.slice(before.last, item.first)))
      item.names.push(...before.names);
  }
  for (let at = items.length - 1; at > 0; at -= 1) {
    const item = items[at] as ItemDraft;
    const before = items[at - 1] as ItemDraft;
    const between = plain.slice(before.last, item.first).replace(/ {2,}/gu, " ");
    const shares = item.outright && item.plural && before.kind === "club" && before.named && !before.outright;
    // "Ombrel & Skerrick driver heads".
    if (
      !before.named &&
      isHeadLike(before.kind) &&
      item.plural &&
      item.type &&
      between.trim() !== "" &&
      listGap.test(between)
    ) {
      before.type = item.type;
      before.typeAt = item.typeAt;
      before.kind = item.kind;
      before.named = true;
    }
    if (!shares || between.trim() === "" || !listGap.test(between)) continue;
    before.kind = item.kind;
    before.kindAt = item.kindAt;
    before.outright = true;
    before.plural = true;
  }
}

/** A cover or a wrench named before the thing that it comes with is no thing of its own. */
export function dropEarlyAccessories({ items, plain }: State) {
  const [first, ...others] = items;
  if (!first || first.own || first.quantity || (first.kind !== "cover" && first.kind !== "wrench")) return;
  const main = others.find(({ kind }) => !accessories.has(kind));
  const broughtAlong = /(?<![\p{L}])(?:with|comes|has|includes|including) (?:an? |the |its |original )*$/u;
  if (
    !main ||
    (!broughtAlong.test(plain.slice(Math.max(0, first.first - 30), first.first)) &&
      !/(?<![\p{L}])(?:with|included|inc|for|comes|and|&|\+)(?![\p{L}])/u.test(
        plain.slice(first.last, main.first),
      ))
  )
    return;
  items.shift();
}

/** "3 driver heads, 4 hybrid heads": among things that are counted, the number before a plural counts too. */
export function countLikeOthers({ items, plain }: State) {
  const counted = items.filter(
    ({ quantity, plural, kindAt }) =>
      plural && quantity && kindAt.start - quantity.end <= 12 && quantity.start < kindAt.start,
  );
  if (counted.length === 0) return;
  for (const item of items) {
    const said =
      /^(\d{1,2}) (?=\p{L}{2,} (?:heads|shafts|covers)|(?:irons|hybrids|drivers|putters|wedges)(?!\p{L}))/u.exec(
        plain.slice(item.kindAt.start),
      );
    if (item.quantity || !item.plural || !said?.[1] || Number(said[1]) < 2) continue;
    const { start } = item.kindAt;
    item.quantity = { value: Number(said[1]), start, end: start + said[1].length, insideNoun: true };
    item.numberSaid = null;
  }
}
