import type { ClubType } from "../parts/part.ts";
import type { ItemKind } from "./catalogue.ts";
import type { Stretch } from "./clauses.ts";
import type { Anchor, ItemSource } from "./item-anchors.ts";
import { type ItemDraft, isHeadLike } from "./item-draft.ts";
import { clubNumberIn } from "./number-lists.ts";
import { type QuantityFound, readQuantity } from "./read-quantity.ts";

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

export interface State extends ItemSource {
  readonly items: ItemDraft[];
  readonly absorbed: Absorbed[];
  readonly extras: ExtraFound[];
}

export const accessories: ReadonlySet<ItemKind> = new Set(["cover", "wrench", "adapter", "grip"]);

export const nextPhrase = ({ phrases, plain }: State, { end }: Stretch) =>
  phrases.find(({ start }) => start >= end)?.start ?? plain.length;

/** How many of the thing at an anchor, reading back no further than `from`. */
export function quantityAt(state: State, anchor: Anchor, from: number): QuantityFound | null {
  const { start, end, phrase } = anchor;
  const whole = { start, end, plural: phrase ? phrase.plural : !isHeadLike(anchor.kind) };
  const before = readQuantity(state.plain, whole, from, end);
  return before ?? readQuantity(state.plain, phrase ?? whole, from, nextPhrase(state, anchor));
}

export function numberAt({ plain }: ItemSource, { phrase }: Anchor): string | null {
  if (!phrase?.type) return null;
  // "3 or 5 wood" says neither.
  if (/\d ?(?:or|oder|ou|o) $/u.test(plain.slice(Math.max(0, phrase.start - 6), phrase.start))) return null;
  const number = clubNumberIn(plain.slice(phrase.start, phrase.end));
  return number !== null && Number(number) > 11 ? null : number;
}

export function itemFrom(state: State, anchor: Anchor): ItemDraft {
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

export const absorb = (
  state: State,
  by: ItemDraft | null,
  { start, end }: Stretch,
  type: ClubType | null = null,
) => {
  state.absorbed.push({ start, end, type, by });
};

/** A part spoken of takes no words away from the thing: an empty stretch. */
export const mention = (state: State, by: ItemDraft, { start }: Stretch) =>
  absorb(state, by, { start, end: start });

export const gapBefore = ({ plain }: State, { last }: ItemDraft, { start }: Anchor) =>
  plain.slice(last, start);

/** What comes with a thing is a fact of it. */
export function noteExtra({ extras }: State, { kind, phrase }: Anchor, value: boolean) {
  if (phrase && (kind === "cover" || kind === "wrench"))
    extras.push({ field: kind, value, start: phrase.start, end: phrase.end });
}

export const isClubType = ({ phrase, name }: Anchor) =>
  phrase !== null && !phrase.part && phrase.type !== null && name === null;
