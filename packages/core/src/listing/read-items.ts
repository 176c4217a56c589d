import type { ClubType } from "../parts/part.ts";
import type { ItemKind } from "./catalogue.ts";
import type { Stretch } from "./clauses.ts";
import { type Anchor, type ItemSource, itemAnchors } from "./item-anchors.ts";
import { type ItemDraft, isHeadLike, modelNameOf } from "./item-draft.ts";
import { setStretches } from "./item-stretches.ts";
import { clubNumberIn } from "./number-lists.ts";
import { type QuantityFound, readQuantity } from "./read-quantity.ts";
import { spreadItems } from "./spread-items.ts";

/** Words about what an item fits, comes from or lacks: their facts are not the item's own. */
export interface Absorbed extends Stretch {
  readonly type: ClubType | null;
  /** The item they are said of; null where none had been named yet. */
  readonly by: ItemDraft | null;
}

/** A cover or a wrench spoken of beside the item that it comes with. */
export interface ExtraFound extends Stretch {
  readonly field: "cover" | "wrench";
  readonly value: boolean;
}

export interface ItemsRead {
  readonly items: readonly ItemDraft[];
  readonly extras: readonly ExtraFound[];
  readonly absorbed: readonly Absorbed[];
}

interface State extends ItemSource {
  readonly items: ItemDraft[];
  readonly absorbed: Absorbed[];
  readonly extras: ExtraFound[];
}

const accessories: ReadonlySet<ItemKind> = new Set(["cover", "wrench", "adapter", "grip"]);

const nextPhrase = ({ phrases, plain }: State, { end }: Stretch) =>
  phrases.find(({ start }) => start >= end)?.start ?? plain.length;

/** How many of the thing at an anchor, reading back no further than `from`. */
function quantityAt(state: State, anchor: Anchor, from: number): QuantityFound | null {
  const { start, end, phrase } = anchor;
  const whole = { start, end, plural: phrase ? phrase.plural : !isHeadLike(anchor.kind) };
  const before = readQuantity(state.plain, whole, from, end);
  return before ?? readQuantity(state.plain, phrase ?? whole, from, nextPhrase(state, anchor));
}

function numberAt({ plain }: ItemSource, { phrase }: Anchor): string | null {
  if (!phrase?.type) return null;
  // "3 or 5 wood" says neither.
  if (/\d ?(?:or|oder|ou|o) $/u.test(plain.slice(Math.max(0, phrase.start - 6), phrase.start))) return null;
  const number = clubNumberIn(plain.slice(phrase.start, phrase.end));
  return number !== null && Number(number) > 11 ? null : number;
}

function itemFrom(state: State, anchor: Anchor): ItemDraft {
  const item = bareItemFrom(state, anchor);
  // The number of "lot of 5 wood heads" is no club's.
  if (!item.quantity?.insideNoun) item.numberSaid = numberAt(state, anchor);
  return item;
}

function bareItemFrom(state: State, anchor: Anchor): ItemDraft {
  const { phrase, name, start, end, cues, kind } = anchor;
  return {
    kind,
    kindAt: phrase ?? { start, end },
    type: phrase?.type ?? null,
    typeAt: phrase?.type ? phrase : null,
    numberSaid: null,
    number: null,
    loft: null,
    quantity: quantityAt(state, anchor, state.items.at(-1)?.last ?? 0),
    names: name ? [name] : [],
    first: start,
    last: end,
    start,
    end,
    again: [],
    heading: null,
    own: cues.priced || cues.numbered || cues.another,
    named: phrase !== null,
    outright: (phrase?.part ?? false) || cues.complete,
    plural: phrase?.plural ?? false,
  };
}

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

function begin(state: State, anchor: Anchor) {
  const item = itemFrom(state, anchor);
  const above = state.items.at(-1);
  if (above) standUnder(above, item);
  state.items.push(item);
}

const opensList =
  /[:\n(]| - |(?:^|[ ,])(?:one|1|(?:the )?(?:first|1st)(?: one| shaft| head| club)?|a)(?: is| being| an?)* *$/u;

/** Adds to an item what another anchor says of it. */
function join(state: State, item: ItemDraft, anchor: Anchor) {
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
function startsAgain(state: State, current: ItemDraft, anchor: Anchor): boolean {
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
  const model = anchor.name?.models;
  return state.items
    .slice(0, -1)
    .find(
      (item) =>
        !item.own &&
        (item.kind === anchor.kind || (isHeadLike(item.kind) && isHeadLike(anchor.kind))) &&
        item.type === phrase.type &&
        item.numberSaid === numberAt(state, anchor) &&
        (!model || modelNameOf(item)?.models.some((one) => model.includes(one)) === true),
    );
}

function beginOrRepeat(state: State, anchor: Anchor) {
  const earlier = namedBefore(state, anchor);
  if (!earlier) return begin(state, anchor);
  earlier.again.push({ start: anchor.start, end: nextPhrase(state, anchor) });
}

const absorb = (
  state: State,
  by: ItemDraft | null,
  { start, end }: Stretch,
  type: ClubType | null = null,
) => {
  state.absorbed.push({ start, end, type, by });
};

/** A part spoken of takes no words away from the thing: an empty stretch. */
const mention = (state: State, by: ItemDraft, { start }: Stretch) => absorb(state, by, { start, end: start });

const gapBefore = ({ plain }: State, { last }: ItemDraft, { start }: Anchor) => plain.slice(last, start);

/** A shaft named beside a club is the club's; beside a head it is a thing of its own unless it is on it. */
function addShaft(state: State, current: ItemDraft, anchor: Anchor) {
  const { cues, phrase } = anchor;
  if (current.kind === "club") {
    const apart = cues.another || (cues.priced && cues.listed && current.own) || cues.numbered;
    return apart ? begin(state, anchor) : mention(state, current, anchor);
  }
  if (current.kind === "head") {
    // "Ombrel shaft": the shaft that comes in an Ombrel.
    if (
      !current.named &&
      anchor.phrase &&
      anchor.name === null &&
      gapBefore(state, current, anchor).trim() === ""
    ) {
      absorb(state, null, { start: current.first, end: current.last });
      state.items.pop();
      return begin(state, anchor);
    }
    // Only a model named, and a shaft described: "Ombrel 10.5, regular shaft".
    const ofUnnamed =
      !current.named &&
      anchor.name === null &&
      !/[\n+&]|(?<![\p{L}])(?:and|plus)(?![\p{L}])/u.test(gapBefore(state, current, anchor));
    // "Head: … Shaft: … Grip: …" are the parts of one club.
    const labels = cues.labelled && /^ ?:/u.test(state.plain.slice(current.kindAt.end));
    const fitted = (cues.joined || ofUnnamed || labels) && !cues.another && !cues.counted && phrase !== null;
    if (!fitted) return begin(state, anchor);
    current.kind = "club";
    current.kindAt = phrase;
    return;
  }
  if (current.kind !== "shaft") return begin(state, anchor);
  if (startsAgain(state, current, anchor)) beginOrRepeat(state, anchor);
  else join(state, current, anchor);
}

/** What usually only comes with another thing. */
function addAccessory(state: State, current: ItemDraft, anchor: Anchor) {
  const { cues, phrase, kind, name } = anchor;
  if (current.kind === kind) {
    if (startsAgain(state, current, anchor)) beginOrRepeat(state, anchor);
    else join(state, current, anchor);
    return;
  }
  const main =
    !accessories.has(current.kind) ||
    (current.kind === "adapter" && kind === "wrench" && (cues.joined || cues.included));
  const on = kind === "adapter" && cues.included;
  const priced = cues.priced && current.own && (cues.listed || cues.lineStart) && !on;
  const counted = (cues.counted || quantityAt(state, anchor, current.last) !== null) && !cues.joined;
  const apart =
    (cues.numbered && !on) || cues.another || priced || (counted && !cues.described && !cues.included);
  if (!main || apart) return begin(state, anchor);
  if (name && kind === "adapter") current.names.push(name);
  if (!phrase) return;
  mention(state, current, phrase);
  // A price behind what comes with a thing is the thing's.
  current.own ||= cues.priced;
  noteExtra(state, anchor, true);
}

/** What comes with a thing is a fact of it. */
function noteExtra({ extras }: State, { kind, phrase }: Anchor, value: boolean) {
  if (phrase && (kind === "cover" || kind === "wrench"))
    extras.push({ field: kind, value, start: phrase.start, end: phrase.end });
}

/** After a shaft, a cover or the like: what it is for, or a club of its own. */
function addHeadBeside(state: State, current: ItemDraft, anchor: Anchor) {
  const { cues, phrase, name } = anchor;
  // "Iron shafts, 3-PW".
  const again =
    isClubType(anchor) &&
    current.type === phrase?.type &&
    phrase !== null &&
    clubNumberIn(state.plain.slice(phrase.start, phrase.end)) === null;
  if (again && !cues.pricedClose) return mention(state, current, anchor);
  if (phrase?.part === true && phrase.type === null && (cues.described || !cues.listed) && !cues.priced)
    return;
  if (cues.between && isClubType(anchor) && !cues.pricedClose)
    return absorb(state, current, { start: anchor.start, end: anchor.start }, phrase?.type ?? null);
  const qualifies =
    phrase !== null && !phrase.part && name === null && !(cues.priced && current.own) && !cues.listed;
  if (qualifies && current.kind !== "cover") return absorb(state, current, anchor, phrase.type);
  begin(state, anchor);
}

/** A head or a club: the same thing said again, its head spoken of, or the next thing. */
function addHeadLike(state: State, current: ItemDraft, anchor: Anchor) {
  const { cues, phrase } = anchor;
  if (!isHeadLike(current.kind)) return addHeadBeside(state, current, anchor);
  const bareHead = phrase?.part === true && phrase.type === null && anchor.name === null;
  if (bareHead) {
    if (cues.within) return;
    if (cues.another || cues.numbered || cues.counted) return begin(state, anchor);
    // "Breaking my driver: head £50, shaft £40".
    if (
      cues.priced &&
      !cues.described &&
      !current.own &&
      !current.outright &&
      (cues.lineStart || cues.listed)
    )
      return join(state, current, anchor);
    const close =
      /^ ?(?:\d+(?:[.,]\d+)?)?[°*"]?(?: ?(?:deg(?:rees?)?|rh|lh|right|left|hand(?:ed)?|golf|club))* $/u;
    const behind = close.test(gapBefore(state, current, anchor)) && !current.outright;
    if (behind) return join(state, current, anchor);
    if (!current.outright && !cues.described && (cues.only || !current.named || phrase.plural))
      join(state, current, anchor);
    return;
  }
  if (startsAgain(state, current, anchor)) beginOrRepeat(state, anchor);
  else join(state, current, anchor);
}

/** Without its shaft a club is a head. */
function addDenied(state: State, current: ItemDraft | undefined, anchor: Anchor) {
  if (anchor.kind === "shaft" && current?.kind === "club" && anchor.phrase) {
    current.kind = "head";
    current.kindAt = anchor.phrase;
    current.outright = true;
  }
  absorb(state, current ?? null, { start: anchor.start, end: anchor.start });
  noteExtra(state, anchor, false);
}

/** Covers are told apart by the club each is for: "set of three: driver, 3 wood and hybrid". */
function addCoverFor(state: State, current: ItemDraft, anchor: Anchor) {
  const { phrase } = anchor;
  if (current.type === null && phrase?.type) {
    current.type = phrase.type;
    current.typeAt = phrase;
    current.numberSaid = numberAt(state, anchor);
    current.last = anchor.end;
    current.heading ??= anchor.start;
    return;
  }
  const item = { ...itemFrom(state, anchor), kind: "cover" as const, kindAt: current.kindAt, outright: true };
  item.heading = current.heading;
  if (current.quantity && current.heading !== null && current.quantity.end <= current.heading)
    current.quantity = null;
  state.items.push(item);
}

/** "The irons need grips": an item named before, spoken of again. */
function refersBack(state: State, anchor: Anchor): boolean {
  const number = numberAt(state, anchor);
  const earlier = state.items.find(
    ({ type, numberSaid }) =>
      type === anchor.phrase?.type && (number === null || numberSaid === null || number === numberSaid),
  );
  if (!earlier || (earlier === state.items.at(-1) && state.items.length === 1)) return false;
  earlier.again.push({ start: anchor.start, end: nextPhrase(state, anchor) });
  return true;
}

/** "For drivers and fairways": the second is what it fits, too. */
function continuesForeign({ absorbed, plain }: State, anchor: Anchor): boolean {
  const last = absorbed.at(-1);
  if (!last || last.end <= last.start || anchor.cues.pricedClose) return false;
  return /^ ?(?:,|and|&|\+|\/|or|und|et|y|oder|ou) ?$/u.test(plain.slice(last.end, anchor.start));
}

const isClubType = ({ phrase, name }: Anchor) =>
  phrase !== null && !phrase.part && phrase.type !== null && name === null;

function add(state: State, anchor: Anchor) {
  const current = state.items.at(-1);
  const { cues, kind, phrase } = anchor;
  if (cues.denied && (kind !== "head" || phrase?.type == null)) return addDenied(state, current, anchor);
  if (!current) return begin(state, anchor);
  if (
    current.kind === "cover" &&
    isClubType(anchor) &&
    !cues.priced &&
    (current.plural || current.heading !== null)
  )
    return addCoverFor(state, current, anchor);
  const ofSameKind =
    phrase === null && anchor.name?.models.some((model) => model.kind === current.kind) === true;
  if (ofSameKind && !cues.foreign && modelNameOf(current) === null) return join(state, current, anchor);
  if (cues.the && !cues.priced && isClubType(anchor) && refersBack(state, anchor)) return;
  if (cues.foreign && anchor.name?.family != null) return mention(state, current, anchor);
  if (continuesForeign(state, anchor)) return absorb(state, current, anchor, phrase?.type ?? null);
  if (
    (cues.foreign || (cues.bracketed && isClubType(anchor) && !isHeadLike(current.kind))) &&
    !(cues.pricedClose && current.own)
  )
    return absorb(state, current, anchor, cues.from && !cues.bracketed ? null : (phrase?.type ?? null));
  // "4h or 5h" wants one of them.
  if (/^[ ,]*(?:or|oder|ou|o)(?: an?)? *$/u.test(gapBefore(state, current, anchor)))
    return absorb(state, current, anchor);
  if (kind === "shaft") return addShaft(state, current, anchor);
  if (accessories.has(kind)) return addAccessory(state, current, anchor);
  addHeadLike(state, current, anchor);
}

const listGap = /^ ?(?:,|and|&|\+|\/|, and|und|et|y)? ?(?:an? )?$/u;

/** "3 wood and 5 wood heads": the first is a head too; "Ombrel driver and 3 wood": the second is an Ombrel too. */
function shareParts({ items, plain }: State) {
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
function dropEarlyAccessories({ items, plain }: State) {
  const [first, ...others] = items;
  if (!first || first.own || first.quantity || (first.kind !== "cover" && first.kind !== "wrench")) return;
  const main = others.find(({ kind }) => !accessories.has(kind));
  if (
    !main ||
    !/(?<![\p{L}])(?:with|included|inc|for|comes|and|&|\+)(?![\p{L}])/u.test(
      plain.slice(first.last, main.first),
    )
  )
    return;
  items.shift();
}

/** "3 driver heads, 4 hybrid heads": among things that are counted, the number before a plural counts too. */
function countLikeOthers({ items, plain }: State) {
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

/** The things that the words offer, each with the stretch of words that is about it. */
export function readItems(source: ItemSource): ItemsRead {
  const state: State = { ...source, items: [], absorbed: [], extras: [] };
  const anchors = itemAnchors(source);
  const meaningful = anchors.some(({ phrase }) => phrase === null || !phrase.vague);
  for (const anchor of anchors) if (!meaningful || !anchor.phrase?.vague) add(state, anchor);
  dropEarlyAccessories(state);
  countLikeOthers(state);
  shareParts(state);
  spreadItems(state);
  setStretches({ items: state.items, plain: source.solid });
  return { items: state.items, absorbed: state.absorbed, extras: state.extras };
}
