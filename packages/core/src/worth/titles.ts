import type { ListingItem } from "../listing/listing.ts";
import type { ClubType, Part } from "../parts/part.ts";
import { setNumbers } from "./set-numbers.ts";

const words = (...pieces: readonly (string | number | null | undefined | false)[]) =>
  pieces
    .filter((piece) => piece !== null && piece !== undefined && piece !== false && piece !== "")
    .join(" ");

/** "3 wood" for a fairway wood with its number, as the trade says it; a driver's number says nothing. */
function typeWords(clubType: ClubType | null | undefined, clubNumber: string | null | undefined): string {
  if (clubType === "driver" || !clubNumber) return clubType ?? "";
  return words(clubNumber, clubType === "fairway" ? "wood" : clubType);
}

const saysAlready = (model: string | null | undefined, kind: string) =>
  model?.toLowerCase().endsWith(kind) ?? false;

/** More than one of what the last word names; a shaft's flex and the like come after it. */
const plural = (name: string) => (name.endsWith("h") ? `${name}es` : `${name}s`);

/** What an item is called in a sentence: only what is known of it. */
export function titleOfItem(item: ListingItem): string {
  const { clubType, clubNumber, kind, quantity } = item;
  const own = kind === "club" ? (clubType ? null : "club") : kind;
  const type = typeWords(clubType, clubNumber);
  const main = words(item.maker, item.model, type, own && saysAlready(item.model, own) && !type ? null : own);
  const isSet = kind === "club" && clubNumber !== null && setNumbers(clubNumber).length > 1;
  const details = [
    item.loftDeg !== null && `${item.loftDeg}°`,
    item.hand && `${item.hand}-handed`,
    item.flex,
  ];
  const title = [quantity > 1 || isSet ? plural(main) : main, ...details.filter(Boolean)].join(", ");
  if (quantity === 1) return title;
  return isSet || /^\d/u.test(title) ? `${quantity} × ${title}` : `${quantity} ${title}`;
}

/** What a loose part is called in a sentence. A model's name that says the kind already is enough. */
export function titleOfPart(part: Part): string {
  const type = part.kind === "head" || part.kind === "cover" ? part.clubType : undefined;
  const number = part.kind === "head" ? part.clubNumber : undefined;
  return words(
    part.maker,
    part.model,
    typeWords(type, number),
    saysAlready(part.model, part.kind) ? undefined : part.kind,
  );
}

/** What a club of these two is called in a sentence. */
export function titleOfClub(head: Part, shaft: Part): string {
  const isHead = head.kind === "head";
  const type = isHead ? typeWords(head.clubType, head.clubNumber) : "";
  const flex = shaft.kind === "shaft" ? shaft.flex : undefined;
  const main = words(head.maker, head.model, type, isHead && head.clubType ? undefined : "club");
  const shaftName = words(shaft.maker, shaft.model, flex);
  return shaftName ? `${main} with ${shaftName} shaft` : main;
}
