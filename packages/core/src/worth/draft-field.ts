import type { ListingParts } from "./parts-of-listing.ts";

/** Facts of a part under the flat names of a listing's item. */
const flatNames: Readonly<Record<string, string>> = {
  "socket.family": "adapterFamily",
  "socket.type": "adapter",
  "socket.diameterIn": "tip",
  "socket.form": "tip",
  "tip.diameterIn": "tip",
  "tip.form": "tip",
  "bore.diameterIn": "tip",
  "bore.form": "tip",
  "length.lengthIn": "length",
  "length.basis": "length",
  family: "adapterFamily",
  material: "shaftMaterial",
  massG: "shaftMassG",
};

/** Where in a listing a fact of one of its parts stands, such as `items.0.hand`; nothing for a part that is not of it. */
export function listingField(part: string, field: string, { itemOf }: ListingParts): string | undefined {
  const item = itemOf.get(part);
  return item === undefined ? undefined : `items.${item}.${flatNames[field] ?? field}`;
}
