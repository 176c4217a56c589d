import type { ClubType } from "../parts/part.ts";
import type { ItemKind } from "./catalogue.ts";
import type { Stretch } from "./clauses.ts";
import { type Anchor, type ItemSource, itemAnchors } from "./item-anchors.ts";
import { type ItemDraft, isHeadLike, modelNameOf, type NumberFound } from "./item-draft.ts";
import type { NounPhrase } from "./item-nouns.ts";
import { findNumberLists } from "./number-lists.ts";
import { readQuantity } from "./read-quantity.ts";

/** Words about what an item fits, comes from or lacks: their facts are not the item's own. */
export interface Absorbed extends Stretch {
  readonly type: ClubType | null;
  /** The item they are said of, by its place in the list; null where none had been named yet. */
  readonly by: ItemDraft | null;
}

export interface ItemsRead {
  readonly items: readonly ItemDraft[];
  readonly absorbed: readonly Absorbed[];
}

interface State extends ItemSource {
  readonly items: ItemDraft[];
  readonly absorbed: Absorbed[];
  /** The kind of a heading such as "Heads:", which the things listed under it are. */
  heading: ItemKind | null;
}

const accessories: ReadonlySet<ItemKind> = new Set(["cover", "wrench", "adapter", "grip"]);

/** The digits of a club's number in a noun phrase. */
const numberIn = (words: string): string | null => /(?<!\d)(\d{1,2})(?!\d)/u.exec(words)?.[1] ?? null;

const numberOfItem = ({ plain }: ItemSource, item: ItemDraft): string | null =>
  item.number?.value ?? (item.typeAt ? numberIn(plain.slice(item.typeAt.start, item.typeAt.end)) : null);

function itemFrom(state: State, anchor: Anchor): ItemDraft {
  const { phrase, name, start, end, cues } = anchor;
  const previous = state.items.at(-1)?.last ?? 0;
  const kind = phrase && !phrase.part && state.heading !== null ? state.heading : anchor.kind;
  return {
    kind,
    kindAt: phrase ?? { start, end },
    type: phrase?.type ?? null,
    typeAt: phrase?.type ? phrase : null,
    number: null,
    quantity: phrase ? readQuantity(state.plain, phrase, previous, nextOf(state, anchor)) : null,
    names: name ? [name] : [],
    first: start,
    last: end,
    start,
    end,
    own: cues.priced || cues.numbered || cues.another,
    named: phrase !== null,
    outright: phrase?.part ?? false,
    plural: phrase?.plural ?? false,
  };
}

const nextOf = ({ phrases, plain }: State, { end }: Stretch) =>
  phrases.find(({ start }) => start >= end)?.start ?? plain.length;

function begin(state: State, anchor: Anchor): void {
  const item = itemFrom(state, anchor);
  const { phrase } = anchor;
  // "Heads for sale:" names the kind of all that follows; the first of them is this very item.
  if (phrase?.part && phrase.plural && phrase.type === null && isHeading(state, phrase))
    state.heading = phrase.kind;
  state.items.push(item);
}

const isHeading = ({ plain }: State, { end }: NounPhrase) =>
  /^(?: for sale| available| only| to clear| to sell| zu verkaufen| a vendre)? ?(?:[:\n-]|$)/u.test(
    plain.slice(end, end + 30),
  );

/** Adds to an item what another anchor says of it. */
function join(state: State, item: ItemDraft, anchor: Anchor): void {
  const { phrase, name, start, end } = anchor;
  item.last = Math.max(item.last, end);
  item.first = Math.min(item.first, start);
  if (name) item.names.push(name);
  if (!phrase) return;
  item.plural ||= phrase.plural;
  item.quantity ??= readQuantity(state.plain, phrase, Math.min(item.last, start), nextOf(state, anchor));
  if (item.type === null && phrase.type) {
    item.type = phrase.type;
    item.typeAt = phrase;
  }
  if (!item.named || (phrase.part && !item.outright)) {
    if (phrase.part || !item.outright) {
      item.kind = phrase.part || !item.named ? kindUnder(state, phrase) : item.kind;
      item.kindAt = phrase;
    }
    item.named = true;
    item.outright ||= phrase.part;
  }
}

const kindUnder = (state: State, phrase: NounPhrase): ItemKind =>
  !phrase.part && state.heading !== null ? state.heading : phrase.kind;

/** Whether an anchor may speak of the same thing as an item: nothing that both say is different. */
function mayBeSame(state: State, item: ItemDraft, anchor: Anchor): boolean {
  const { phrase, name, kind } = anchor;
  if (phrase?.type && item.type && phrase.type !== item.type) return false;
  const number = phrase?.type ? numberIn(state.plain.slice(phrase.start, phrase.end)) : null;
  const ofItem = numberOfItem(state, item);
  if (number !== null && ofItem !== null && number !== ofItem) return false;
  const own = modelNameOf(item);
  const other = name && modelNameOf({ kind, names: [name] });
  return !own || !other || own.models.some((model) => other.models.includes(model));
}

/** A shaft named beside a club is the club's; beside a head it is a thing of its own unless it is on it. */
function addShaft(state: State, current: ItemDraft, anchor: Anchor): void {
  const { cues, phrase } = anchor;
  if (current.kind === "club") {
    const apart = cues.another || (cues.priced && cues.listed && current.own) || cues.numbered;
    if (apart) begin(state, anchor);
    else state.absorbed.push({ start: anchor.start, end: anchor.start, type: null, by: current });
    return;
  }
  if (current.kind === "head") {
    const fitted = cues.joined && !cues.another && !cues.listed;
    if (!fitted) return begin(state, anchor);
    current.kind = "club";
    current.kindAt = phrase ?? anchor;
    return;
  }
  if (current.kind === "shaft" && !startsAgain(state, current, anchor)) return join(state, current, anchor);
  begin(state, anchor);
}

/** Whether an anchor of the same kind begins another item. */
function startsAgain(state: State, current: ItemDraft, anchor: Anchor): boolean {
  if (!mayBeSame(state, current, anchor)) return true;
  const { cues, phrase } = anchor;
  if (cues.numbered || cues.another) return phrase !== null || current.named === false;
  const quantity =
    phrase && current.quantity === null
      ? readQuantity(state.plain, phrase, current.last, nextOf(state, anchor))
      : null;
  const complete = current.named && phrase?.type != null && current.type !== null;
  return (complete && cues.listed && (cues.priced || quantity !== null) && current.own) || false;
}

/** What usually only comes with another thing. */
function addAccessory(state: State, current: ItemDraft, anchor: Anchor): void {
  const { cues, phrase, kind, name } = anchor;
  const sameKind = current.kind === kind;
  if (sameKind)
    return startsAgain(state, current, anchor) ? begin(state, anchor) : join(state, current, anchor);
  const quantity = phrase ? readQuantity(state.plain, phrase, current.last, nextOf(state, anchor)) : null;
  const main = !accessories.has(current.kind) || (current.kind === "adapter" && kind === "wrench");
  const apart =
    cues.numbered || cues.another || (cues.priced && current.own && (cues.listed || cues.lineStart));
  if (!main || apart || (quantity !== null && !cues.joined)) return begin(state, anchor);
  if (name && kind === "adapter") current.names.push(name);
  if (phrase) state.absorbed.push({ start: phrase.start, end: phrase.start, type: null, by: current });
}

/** A head or a club: the same thing said again, its head spoken of, or the next thing. */
function addHeadLike(state: State, current: ItemDraft, anchor: Anchor): void {
  const { cues, phrase } = anchor;
  const bareHead = phrase?.part === true && phrase.type === null;
  if (!isHeadLike(current.kind)) {
    if (phrase?.vague) return;
    if (bareHead && (cues.described || !cues.listed) && !cues.priced) return;
    if (!current.named && current.kind !== "shaft" && !cues.listed) return join(state, current, anchor);
    return begin(state, anchor);
  }
  if (phrase?.vague) return;
  if (bareHead) {
    if (cues.another || cues.numbered) return begin(state, anchor);
    if (!current.outright && (cues.only || !cues.described) && (cues.only || !current.named))
      return join(state, current, anchor);
    return;
  }
  if (startsAgain(state, current, anchor)) return begin(state, anchor);
  join(state, current, anchor);
}

function addDenied(state: State, current: ItemDraft | undefined, anchor: Anchor): void {
  // Without its shaft a club is a head.
  if (anchor.kind === "shaft" && current?.kind === "club" && anchor.phrase) {
    current.kind = "head";
    current.kindAt = anchor.phrase;
    current.outright = true;
  }
  state.absorbed.push({ start: anchor.start, end: anchor.start, type: null, by: current ?? null });
}

function add(state: State, anchor: Anchor): void {
  const current = state.items.at(-1);
  const { cues, kind } = anchor;
  if (cues.denied && (kind !== "head" || anchor.phrase?.type == null))
    return addDenied(state, current, anchor);
  if (!current) return begin(state, anchor);
  if (cues.foreign && !cues.priced) {
    const type = anchor.phrase?.type ?? null;
    state.absorbed.push({ start: anchor.start, end: anchor.end, type, by: current });
    return;
  }
  if (kind === "shaft") return addShaft(state, current, anchor);
  if (accessories.has(kind)) return addAccessory(state, current, anchor);
  addHeadLike(state, current, anchor);
}

/** "3 wood and 5 wood heads": the first is a head too. */
function shareParts(state: State): void {
  const { items, plain } = state;
  for (let at = items.length - 1; at > 0; at -= 1) {
    const item = items[at] as ItemDraft;
    const before = items[at - 1] as ItemDraft;
    const between = plain.slice(before.last, item.first);
    if (
      item.outright &&
      item.plural &&
      before.kind === "club" &&
      before.named &&
      /^ ?(?:,|and|&|\+|\/|, and) ?(?:an? )?$/u.test(between.trim() === "" ? "x" : between)
    ) {
      before.kind = item.kind;
      before.kindAt = item.kindAt;
      before.outright = true;
      before.plural = true;
    }
  }
}

/** What was named before the thing that it comes with. */
function dropEarlyAccessories(state: State): void {
  const { items } = state;
  const hasMain = items.some(({ kind }) => !accessories.has(kind));
  if (!hasMain) return;
  const kept = items.filter(({ kind, own, quantity }, at) => {
    const leads = kind === "cover" || kind === "wrench";
    const mainLater = items.slice(at + 1).some((other) => !accessories.has(other.kind));
    return !leads || own || quantity !== null || !mainLater || at > 0;
  });
  items.splice(0, items.length, ...kept);
}

/** One item per number of a list. */
function spreadNumbers(state: State): void {
  const lists = findNumberLists(state.plain);
  for (const list of lists) {
    const at = state.items.findIndex(
      ({ typeAt, last, first }) => typeAt !== null && list.end >= first - 30 && list.start <= last + 40,
    );
    const item = state.items[at];
    if (!item || item.number) continue;
    const spread = list.numbers.map(
      (number: NumberFound, place): ItemDraft => ({
        ...item,
        names: [...item.names],
        number,
        own: place > 0 || item.own,
      }),
    );
    state.items.splice(at, 1, ...spread);
  }
}

const breaks: readonly RegExp[] = [/\n/gu, /[;|] ?|[.!?] (?=\p{L}|\d|\()/gu];
const connectives = /(?: and | & | plus | also | \+ | und | et |[+])/gu;

/** Where the words about one item end and those about the next begin. */
function boundary(plain: string, from: number, to: number): number {
  const between = plain.slice(from, to);
  const close = /(?:^|[ ,.])(?:and|&|plus|\+|also|und|et|y) (?:[\p{L}\d'"°.-]+ ){0,3}$/u.exec(between);
  if (close) return from + close.index;
  for (const pattern of breaks) {
    const last = [...between.matchAll(pattern)].at(-1);
    if (last) return from + last.index + last[0].length;
  }
  const connective = [...between.matchAll(connectives)].at(-1);
  if (connective) return from + connective.index;
  const comma = [...between.matchAll(/, | - | [(]/gu)].at(-1);
  return comma ? from + comma.index + 1 : to;
}

function setStretches({ items, plain }: State): void {
  items.forEach((item, at) => {
    const before = items[at - 1];
    const sameNoun = before && before.first === item.first;
    if (!before) item.start = 0;
    else if (sameNoun) item.start = before.start;
    else {
      item.start = boundary(plain, Math.min(before.last, item.first), item.first);
      for (const other of items) if (other.first === before.first) other.end = item.start;
    }
    item.end = plain.length;
  });
}

/** The things that the words offer, each with the stretch of words that is about it. */
export function readItems(source: ItemSource): ItemsRead {
  const state: State = { ...source, items: [], absorbed: [], heading: null };
  const anchors = itemAnchors(source);
  const meaningful = anchors.some(({ phrase }) => phrase === null || !phrase.vague);
  for (const anchor of anchors) if (!meaningful || !anchor.phrase?.vague) add(state, anchor);
  dropEarlyAccessories(state);
  shareParts(state);
  spreadNumbers(state);
  setStretches(state);
  return { items: state.items, absorbed: state.absorbed };
}
