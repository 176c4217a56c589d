import type { Anchor } from "./item-anchors.ts";
import { type ItemDraft, isHeadLike, modelNameOf } from "./item-draft.ts";
import { gapBefore, itemFrom, nextPhrase, numberAt, quantityAt, type State } from "./items-state.ts";

/** Puts an item under the heading of the one before it: "Two heads: …", "Wedges, all steel: …". */
function standUnder(above: ItemDraft, item: ItemDraft) {
  const { heading } = above;
  if (item.quantity) return;
  const differs = item.outright && item.kind !== above.kind;
  if (heading === null || differs || (!isHeadLike(item.kind) && item.kind !== above.kind)) return;
  item.heading = heading;
  if (item.type === null) {
    item.type = above.type;
    item.typeAt = above.typeAt;
  }
  if (!item.outright) item.kind = above.kind;
  if (modelNameOf(item) === null) item.names.push(...above.names.filter(({ end }) => end <= heading));
  // The count of the heading is the count of what stands under it.
  if (above.quantity && above.quantity.end <= heading) above.quantity = null;
}

export function begin(state: State, anchor: Anchor) {
  const item = itemFrom(state, anchor);
  const above = state.items.at(-1);
  if (above) standUnder(above, item);
  state.items.push(item);
}

const opensList =
  /[:\n(]| - |(?:^|[ ,])(?:one|1|(?:the )?(?:first|1st)(?: one| shaft| head| club)?|a)(?: is| being| an?)* *$/u;

/** Adds to an item what another anchor says of it. */
export function join(state: State, item: ItemDraft, anchor: Anchor) {
  const { phrase, name, start, end } = anchor;
  const gap = state.plain.slice(item.last, start);
  const opening = opensList.exec(gap) ?? (item.quantity && /[.,](?: \p{L}+){0,2} *$/u.exec(gap));
  if (opening && item.heading === null && item.named && item.plural && (phrase?.type || name))
    item.heading = item.last + opening.index + opening[0].trimEnd().length;
  item.quantity ??= quantityAt(state, anchor, state.items.at(-2)?.last ?? 0);
  item.own ||= anchor.cues.priced;
  item.last = Math.max(item.last, end);
  item.first = Math.min(item.first, start);
  if (name) item.names.push(name);
  if (!phrase) return;
  item.plural ||= phrase.plural;
  item.numberSaid ??= numberAt(state, anchor);
  if (item.type === null && phrase.type) {
    item.type = phrase.type;
    item.typeAt = phrase;
  }
  if (!item.named || (phrase.part && !item.outright)) {
    item.kind = phrase.kind;
    item.kindAt = phrase;
    item.named = true;
    item.outright = phrase.part;
  }
}

/** Whether an anchor may speak of the same thing as an item: nothing that both say is different. */
function mayBeSame(state: State, item: ItemDraft, anchor: Anchor): boolean {
  const { phrase, name, kind } = anchor;
  if (phrase?.type && item.type && phrase.type !== item.type) return false;
  const number = numberAt(state, anchor);
  if (number !== null && item.numberSaid !== null && number !== item.numberSaid) return false;
  const own = modelNameOf(item);
  const other = name && modelNameOf({ kind: isHeadLike(kind) ? kind : item.kind, names: [name] });
  return !own || !other || own.models.some((model) => other.models.includes(model));
}

/** Whether an anchor of the same kind begins another item. */
export function startsAgain(state: State, current: ItemDraft, anchor: Anchor): boolean {
  if (!mayBeSame(state, current, anchor)) return true;
  const { cues, phrase } = anchor;
  // "Two wedges, plus a PW".
  const oneMore = /(?<![\p{L}])(?:plus|and|&|\+|also) (?:an?|one|my|the) *$/u;
  if (current.plural && phrase && !phrase.plural && oneMore.test(gapBefore(state, current, anchor)))
    return current.heading === null || !/:/u.test(gapBefore(state, current, anchor));
  // "Tarnlock adapter .335, Tarnlock adapter .370".
  if (
    !isHeadLike(current.kind) &&
    current.named &&
    phrase &&
    anchor.name &&
    cues.listed &&
    modelNameOf(current)
  )
    if (
      /\d[^\n]*[,;&+\n]/u.test(gapBefore(state, current, anchor)) &&
      /^ ?[(,]? ?[.0]\d/u.test(state.plain.slice(anchor.end))
    )
      return true;
  if (cues.numbered)
    return (
      state.plain.slice(current.last, anchor.start).includes("\n") && current.heading === null && current.own
    );
  // "Driver heads: Ombrel 9° £60; Ombrel 10.5° £55".
  if (current.heading !== null && current.own && cues.priced && cues.listed && anchor.name) return true;
  if (cues.another) return phrase !== null;
  const counted = cues.counted || quantityAt(state, anchor, current.last) !== null;
  const complete =
    current.named && phrase !== null && (phrase.type !== null || phrase.part) && current.type === phrase.type;
  return complete && cues.listed && counted && current.heading === null && modelNameOf(current) !== null;
}

/** An earlier item that an anchor with a price right behind it names again: "Driver 110 €, Holz 3 70 €". */
function namedBefore(state: State, anchor: Anchor): ItemDraft | undefined {
  const { cues, phrase } = anchor;
  if (!phrase || !cues.pricedClose) return undefined;
  const bare = phrase.part && phrase.type === null;
  const model = anchor.name?.models;
  return state.items
    .slice(0, -1)
    .find(
      (item) =>
        !item.own &&
        (item.kind === anchor.kind || (isHeadLike(item.kind) && isHeadLike(anchor.kind))) &&
        (bare ? item.kind === anchor.kind : item.type === phrase.type) &&
        item.numberSaid === numberAt(state, anchor) &&
        (!model || modelNameOf(item)?.models.some((one) => model.includes(one)) === true),
    );
}

export function beginOrRepeat(state: State, anchor: Anchor) {
  const earlier = namedBefore(state, anchor);
  if (!earlier) return begin(state, anchor);
  earlier.again.push({ start: anchor.start, end: nextPhrase(state, anchor) });
}
