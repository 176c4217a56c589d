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
  suits: "clubType",
};

/** Facts that a part and an item call by the same name. */
const sameNames: ReadonlySet<string> = new Set([
  "maker",
  "model",
  "year",
  "clubType",
  "clubNumber",
  "loftDeg",
  "hand",
  "flex",
  "length",
  "tip",
  "faults",
  "deniedFaults",
]);

/**
 * Where in a listing a fact of one of its parts stands, such as `items.0.hand`; the item as a whole, `items.0`, for a fact that
 * a listing has no place for. Nothing for a part that is not of the listing.
 */
export function listingField(
  part: string,
  field: string,
  { itemOf, parts }: Pick<ListingParts, "itemOf" | "parts">,
): string | undefined {
  const item = itemOf.get(part);
  if (item === undefined) return undefined;
  const isShaft = parts.some(({ id, kind }) => id === part && kind === "shaft");
  const name = field === "massG" && isShaft ? "shaftMassG" : flatNames[field];
  const known = name ?? (sameNames.has(field) ? field : undefined);
  return known === undefined ? `items.${item}` : `items.${item}.${known}`;
}
