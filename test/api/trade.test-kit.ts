import { emptyItem, type Listing, type ListingItem } from "@ferrule/core";

/** A model, a noted price, a sighting and a line of the books, each as it is kept. */
export const model = {
  id: "m1",
  kind: "head",
  maker: "Northmoor",
  model: "Ombrel",
  aliases: ["NM Ombrel", "Ombrell, the first"],
  clubType: "driver",
  adapterFamily: "Quillon 2",
  year: 2021,
} as const;

export const asked = {
  id: "p1",
  on: "2026-11-02",
  what: "asked",
  price: { amountMinor: 7000, currency: "EUR" },
  kind: "head",
  maker: "Northmoor",
  model: "Ombrel",
  clubType: "driver",
} as const;

export const emptyListing: Listing = {
  intent: "sell",
  asking: null,
  negotiable: null,
  postage: null,
  items: [],
  spans: [],
  doubts: [],
};

/** An item of which nothing is said but what is given. */
export function itemOf(said: Partial<ListingItem> & Pick<ListingItem, "kind">): ListingItem {
  return { ...emptyItem(said.kind), ...said };
}

/** A right-handed driver head asked 40 euros for, and a loose grip with it. */
export const headListing: Listing = {
  ...emptyListing,
  asking: { amountMinor: 4000, currency: "EUR" },
  items: [
    itemOf({
      kind: "head",
      maker: "Northmoor",
      model: "Ombrel",
      modelId: "m1",
      clubType: "driver",
      loftDeg: 10.5,
      hand: "right",
      adapterFamily: "Quillon 2",
    }),
    itemOf({ kind: "grip" }),
  ],
};

/** A complete driver with its cover. */
export const clubListing: Listing = {
  ...emptyListing,
  asking: { amountMinor: 10000, currency: "EUR" },
  items: [
    itemOf({
      kind: "club",
      maker: "Northmoor",
      model: "Ombrel",
      clubType: "driver",
      hand: "right",
      flex: "stiff",
      adapterFamily: "Quillon 2",
      adapter: "fitted",
      cover: true,
    }),
  ],
};

export const sighting = {
  id: "s1",
  seenOn: "2026-11-20",
  text: "Northmoor Ombrel driver head 10.5 RH and a grip, 40 euros",
  read: headListing,
  listing: headListing,
  outcome: "open",
} as const;

export const entry = {
  id: "e1",
  on: "2026-11-20",
  type: "buy",
  amount: { amountMinor: -4200, currency: "EUR" },
  parts: ["head-1", "grip; the worn one"],
  club: "the first driver",
} as const;
