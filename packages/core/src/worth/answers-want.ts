import type { CatalogueModel } from "../listing/catalogue.ts";
import type { ListingItem } from "../listing/listing.ts";
import type { Want } from "../resolve/result.ts";

/** Diameters as sellers give them are nominal; sizes of the trade are 0.015 in and more apart. */
const sameSizeIn = 0.004;

const kindsOfTypes: Readonly<Record<string, string>> = {
  driver: "wood",
  fairway: "wood",
  hybrid: "hybrid",
  iron: "iron",
  wedge: "iron",
  putter: "putter",
};

/**
 * Whether an item that was seen for sale would have been what is wanted, as far as its words go: an adapter family has to be
 * named, everything else counts against it only where it is said to differ. A complete club is no shaft for sale: its price
 * is that of a head too.
 */
export function answersWant(item: ListingItem, model: CatalogueModel | undefined, want: Want): boolean {
  if (!isOfKind(item, want)) return false;
  const facts = factsOf(item, model);
  return Object.entries(want.needs).every(([field, wanted]) => meets(field, facts[field], wanted));
}

function isOfKind(item: ListingItem, { kind, needs }: Want): boolean {
  if (item.kind !== kind) return false;
  const throughAdapter = kind === "shaft" && needs["adapter.family"] !== undefined;
  return (
    !throughAdapter || item.adapter === "fitted" || (item.adapter === null && item.adapterFamily !== null)
  );
}

function factsOf(item: ListingItem, model: CatalogueModel | undefined): Readonly<Record<string, unknown>> {
  const clubType = item.clubType ?? model?.clubType ?? undefined;
  const family = item.adapterFamily ?? model?.adapterFamily ?? undefined;
  const hand = item.hand ?? undefined;
  const lengthIn = item.kind === "shaft" ? item.length?.lengthIn : undefined;
  const diameterIn = item.tip?.diameterIn ?? undefined;
  const form = item.tip?.form ?? undefined;
  return {
    clubType,
    hand,
    suits: clubType && kindsOfTypes[clubType],
    family,
    "adapter.family": family,
    "socket.family": family,
    "adapter.hand": hand,
    "length.lengthIn": lengthIn,
    "tip.diameterIn": diameterIn,
    "tip.form": form,
    "bore.diameterIn": diameterIn,
    "bore.form": form,
    "socket.diameterIn": diameterIn,
    "socket.form": form,
  };
}

function meets(field: string, said: unknown, wanted: unknown): boolean {
  if (said === undefined) return !field.endsWith("family");
  if (Array.isArray(wanted)) return wanted.includes(said);
  if (typeof wanted === "object" && wanted !== null)
    return meetsObject(said, wanted as Record<string, unknown>);
  if (typeof wanted === "number") return typeof said === "number" && Math.abs(said - wanted) <= sameSizeIn;
  return said === wanted || (field.endsWith("hand") && wanted === "either");
}

/** A bound, or a reading. */
function meetsObject(said: unknown, wanted: Record<string, unknown>): boolean {
  if (typeof said !== "number") return false;
  const { atLeast, value } = wanted;
  if (typeof atLeast === "number") return said >= atLeast;
  return typeof value !== "number" || Math.abs(said - value) <= sameSizeIn;
}
