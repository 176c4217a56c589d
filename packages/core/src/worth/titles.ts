import type { ListingItem } from "../listing/listing.ts";
import type { Part } from "../parts/part.ts";

const words = (...pieces: readonly (string | number | null | undefined | false)[]) =>
  pieces
    .filter((piece) => piece !== null && piece !== undefined && piece !== false && piece !== "")
    .join(" ");

/** What an item is called in a sentence: only what is known of it. */
export function titleOfItem(item: ListingItem): string {
  const number = item.clubType === "driver" ? null : item.clubNumber;
  const kind = item.kind === "club" ? (item.clubType ? null : "club") : item.kind;
  const main = words(item.maker, item.model, number, item.clubType, kind);
  const details = [
    item.loftDeg !== null && `${item.loftDeg}°`,
    item.hand && `${item.hand}-handed`,
    item.flex,
  ];
  const title = [main, ...details.filter(Boolean)].join(", ");
  return item.quantity > 1 ? `${item.quantity} × ${title}` : title;
}

/** What a loose part is called in a sentence. A model's name that says the kind already is enough. */
export function titleOfPart(part: Part): string {
  const type = part.kind === "head" || part.kind === "cover" ? part.clubType : undefined;
  const number = part.kind === "head" && type !== "driver" ? part.clubNumber : undefined;
  const saysKind = part.model?.toLowerCase().endsWith(part.kind);
  return words(part.maker, part.model, number, type, saysKind ? undefined : part.kind);
}

/** What a club of these two is called in a sentence. */
export function titleOfClub(head: Part, shaft: Part): string {
  const clubType = head.kind === "head" ? head.clubType : undefined;
  const number = head.kind === "head" && clubType !== "driver" ? head.clubNumber : undefined;
  const flex = shaft.kind === "shaft" ? shaft.flex : undefined;
  const main = words(head.maker, head.model, number, clubType ?? "club");
  const shaftName = words(shaft.maker, shaft.model, flex);
  return shaftName ? `${main} with ${shaftName} shaft` : main;
}
