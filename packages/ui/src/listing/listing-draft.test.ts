import type { Listing } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { withItem, withoutItem } from "./change-items.ts";
import { draftFromListing, listingFromDraft } from "./listing-draft.ts";
import { subjectOfItem } from "./subject-of-item.ts";

const writing = { lengthUnit: "in", currency: "EUR" } as const;

const empty: Listing = {
  intent: null,
  asking: null,
  negotiable: null,
  postage: null,
  items: [],
  spans: [],
  doubts: [],
};

const listing: Listing = (() => {
  const [head, shaft] = withItem(withItem(empty)).items;
  return {
    ...empty,
    intent: "sell",
    asking: { amountMinor: 4550, currency: "GBP" },
    negotiable: true,
    postage: { amountMinor: 600, currency: "GBP" },
    items: [
      {
        ...head!,
        maker: "Northmoor",
        model: "Ombrel",
        clubType: "driver",
        loftDeg: 10.5,
        hand: "right",
        cover: false,
        faults: ["sky-mark"],
        deniedFaults: ["crack"],
      },
      {
        ...shaft!,
        kind: "shaft",
        quantity: 2,
        flex: "stiff",
        length: { lengthIn: 44.25, basis: "with-adapter" },
        tip: { diameterIn: 0.335, form: null },
        price: { amountMinor: 2000, currency: "GBP" },
      },
    ],
    spans: [
      { field: "asking", start: 0, end: 3, words: "£45" },
      { field: "items.0.hand", start: 4, end: 6, words: "RH" },
      { field: "items.1.flex", start: 7, end: 8, words: "S" },
    ],
    doubts: [{ field: "items.1.length", start: null, end: null, text: "No unit." }],
  };
})();

describe("the controls of a listing", () => {
  it("come back as the listing they were filled from, in inches and in centimetres", () => {
    expect(listingFromDraft(draftFromListing(listing, writing), listing, writing)).toEqual({
      listing,
      slips: {},
    });
    const inCm = { lengthUnit: "cm", currency: "EUR" } as const;
    expect(listingFromDraft(draftFromListing(listing, inCm), listing, inCm).listing).toEqual(listing);
  });

  it("left empty mean not said, never no", () => {
    const draft = {
      ...draftFromListing(listing, writing),
      "items.0.hand": "",
      asking: "",
      "items.0.cover": "",
    };
    const corrected = listingFromDraft(draft, listing, writing).listing;
    expect(corrected).toMatchObject({ asking: null, items: [{ hand: null, cover: null }, {}] });
  });

  it("take corrections as people type them", () => {
    const draft = {
      ...draftFromListing(listing, writing),
      asking: "32,50",
      "items.0.loftDeg": "9,5",
      "items.0.faults.sky-mark": "",
      "items.1.length": "114.3 cm",
      "items.1.tip": "",
      "items.1.tip:form": "parallel",
    };
    expect(listingFromDraft(draft, listing, writing)).toMatchObject({
      slips: {},
      listing: {
        asking: { amountMinor: 3250, currency: "GBP" },
        items: [
          { loftDeg: 9.5, faults: [], deniedFaults: ["crack"] },
          { length: { lengthIn: 45, basis: "with-adapter" }, tip: { diameterIn: null, form: "parallel" } },
        ],
      },
    });
  });

  it("that cannot be read keep what stood before and are named", () => {
    const draft = {
      ...draftFromListing(listing, writing),
      "items.0.loftDeg": "steep",
      "items.1.quantity": "0",
    };
    const { listing: kept, slips } = listingFromDraft(draft, listing, writing);
    expect(kept).toEqual(listing);
    expect(Object.keys(slips)).toEqual(["items.0.loftDeg", "items.1.quantity"]);
    expect(slips["items.0.loftDeg"]).toMatch(/Got "steep"/);
  });
});

describe("an item taken out of a listing", () => {
  it("takes what was read of it along, and the later ones move up", () => {
    expect(withoutItem(listing, 0)).toMatchObject({
      items: [{ kind: "shaft" }],
      spans: [{ field: "asking" }, { field: "items.0.flex" }],
      doubts: [{ field: "items.0.length" }],
    });
  });
});

describe("a price noted for an item", () => {
  it("is noted under what is known of the item, or of the club that it is part of", () => {
    expect(subjectOfItem(listing.items[0]!, "itself")).toEqual({
      kind: "head",
      maker: "Northmoor",
      model: "Ombrel",
      clubType: "driver",
      hand: "right",
      cover: false,
    });
    expect(subjectOfItem(listing.items[0]!, "club")).toMatchObject({ kind: "club", model: "Ombrel" });
  });
});
