import type { ClubType } from "../parts/part.ts";
import type { ItemKind } from "./catalogue.ts";
import type { Stretch } from "./clauses.ts";
import type { NameFound } from "./find-model.ts";
import type { LoftFound } from "./loft-lists.ts";
import type { QuantityFound } from "./read-quantity.ts";

/** The number of a club and the words that say it. */
export interface NumberFound extends Stretch {
  readonly value: string;
}

/** An item as the words set it out: its kind, the names said of it, and the stretch of words that is about it. */
export interface ItemDraft {
  kind: ItemKind;
  /** The words that say the kind. */
  kindAt: Stretch;
  type: ClubType | null;
  typeAt: Stretch | null;
  /** The number of the club as its noun has it, to tell it from others: "3 wood". */
  numberSaid: string | null;
  /** Where a list of numbers makes several items of one noun: "irons 5, 7 and 9". */
  number: NumberFound | null;
  /** Where a list of lofts makes several items of one noun: "wedges 52° and 58°". */
  loft: LoftFound | null;
  quantity: QuantityFound | null;
  names: NameFound[];
  /** The first and the last place that names it. */
  first: number;
  last: number;
  /** Where the words about it begin and end. */
  start: number;
  end: number;
  /** Other stretches about it: a line of prices that names it again. */
  again: Stretch[];
  /** Where the heading ends that this item and those after it stand under: "Two heads: …"; null where it is under none. */
  heading: number | null;
  /** Whether it is set out as an entry of its own, so that it is never only something that comes with another. */
  own: boolean;
  /** Whether a noun named it; else only a model did. */
  named: boolean;
  /** Whether the noun said its kind outright: "head", not only "driver". */
  outright: boolean;
  plural: boolean;
}

/** Whether a kind may be the same thing said once as a club and once as its head. */
export const isHeadLike = (kind: ItemKind): boolean => kind === "head" || kind === "club";

/** The name that says an item's own model, if any does. */
export function modelNameOf(item: { kind: ItemKind; names: readonly NameFound[] }): NameFound | null {
  const own = (kind: ItemKind) => (isHeadLike(item.kind) ? isHeadLike(kind) : kind === item.kind);
  return item.names.find((name) => name.models.some(({ kind }) => own(kind))) ?? null;
}

const isWithin = ({ start, end }: Stretch, at: number) => at >= start && at < end;

/** The items that a place in the words is about; where one is named again, the words are about that one alone. */
export function itemsAbout(items: readonly ItemDraft[], at: number): ItemDraft[] {
  const again = items.find((other) => other.again.some((stretch) => isWithin(stretch, at)));
  return again ? [again] : items.filter((item) => isWithin(item, at));
}
