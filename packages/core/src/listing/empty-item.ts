import type { ItemKind } from "./catalogue.ts";
import type { ListingItem } from "./listing.ts";

/** A thing of a kind, of which nothing else is known but that it is there. */
export function emptyItem(kind: ItemKind): ListingItem {
  return {
    kind,
    quantity: 1,
    maker: null,
    model: null,
    modelId: null,
    year: null,
    clubType: null,
    clubNumber: null,
    loftDeg: null,
    hand: null,
    flex: null,
    shaftMaterial: null,
    shaftMassG: null,
    length: null,
    tip: null,
    adapter: null,
    adapterFamily: null,
    cover: null,
    wrench: null,
    faults: [],
    deniedFaults: [],
    price: null,
  };
}
