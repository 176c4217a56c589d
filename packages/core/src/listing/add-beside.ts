import { begin, beginOrRepeat, join, startsAgain } from "./begin-item.ts";
import type { Anchor } from "./item-anchors.ts";
import { type ItemDraft, isHeadLike } from "./item-draft.ts";
import {
  absorb,
  accessories,
  gapBefore,
  isClubType,
  itemFrom,
  mention,
  noteExtra,
  numberAt,
  quantityAt,
  type State,
} from "./items-state.ts";
import { clubNumberIn } from "./number-lists.ts";

/** A shaft named beside a club is the club's; beside a head it is a thing of its own unless it is on it. */
export function addShaft(state: State, current: ItemDraft, anchor: Anchor) {
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
export function addAccessory(state: State, current: ItemDraft, anchor: Anchor) {
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
  // "Driver with cover and tool £190" prices the driver; "shaft £40, tool £5" each of the two.
  const pricedBefore = state.money.some(
    ({ start, role }) => role === "asking" && start >= current.first && start < anchor.start,
  );
  const priced = cues.priced && pricedBefore && (cues.listed || cues.lineStart) && !on;
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
  beginOrRepeat(state, anchor);
}

/** A head or a club: the same thing said again, its head spoken of, or the next thing. */
export function addHeadLike(state: State, current: ItemDraft, anchor: Anchor) {
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
export function addDenied(state: State, current: ItemDraft | undefined, anchor: Anchor) {
  if (anchor.kind === "shaft" && current?.kind === "club" && anchor.phrase) {
    current.kind = "head";
    current.kindAt = anchor.phrase;
    current.outright = true;
  }
  absorb(state, current ?? null, { start: anchor.start, end: anchor.start });
  noteExtra(state, anchor, false);
}

/** Covers are told apart by the club each is for: "set of three: driver, 3 wood and hybrid". */
export function addCoverFor(state: State, current: ItemDraft, anchor: Anchor) {
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
