import { expect, it } from "vitest";
import { aListing, anItem } from "./deal.test-kit.ts";
import { listingField } from "./draft-field.ts";
import { partsOfListing } from "./parts-of-listing.ts";

const offered = partsOfListing(aListing([anItem(), anItem({ kind: "club" })]), []);

it.each([
  ["listing-head", "hand", "items.0.hand"],
  ["listing-head", "socket.family", "items.0.adapterFamily"],
  ["listing-head", "socket.type", "items.0.adapter"],
  ["listing-head-2", "clubType", "items.1.clubType"],
  ["listing-shaft", "suits", "items.1.clubType"],
  ["listing-shaft", "tip.diameterIn", "items.1.tip"],
  ["listing-shaft", "length.basis", "items.1.length"],
  ["listing-shaft", "massG", "items.1.shaftMassG"],
  // A listing has no place for a head's mass, nor for a bore's depth.
  ["listing-head-2", "massG", "items.1"],
  ["listing-head", "socket.depthIn", "items.0"],
  ["H01", "hand", undefined],
])("the fact of %s called %s stands in %s", (part, field, expected) => {
  expect(listingField(part, field, offered)).toBe(expected);
});

it("names fields that an item has", () => {
  const item = anItem();
  for (const field of ["hand", "family", "material", "socket.type", "tip.form", "length.basis", "faults"])
    expect(item).toHaveProperty((listingField("listing-head", field, offered) ?? "").replace("items.0.", ""));
});
