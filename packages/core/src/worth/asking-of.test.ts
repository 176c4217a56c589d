import { expect, it } from "vitest";
import { askingOf } from "./asking-of.ts";
import { aListing, anItem, euros } from "./deal.test-kit.ts";

const at = (amountMinor: number, quantity = 1) => anItem({ price: euros(amountMinor), quantity });

it.each([
  [
    "the price of the whole goes before those of the items",
    aListing([at(500)], { asking: euros(400) }),
    euros(400),
  ],
  ["prices of all items add up, each times how many there are", aListing([at(500), at(300, 3)]), euros(1400)],
  ["an item without a price leaves the whole without one", aListing([at(500), anItem()]), null],
  [
    "prices in two currencies do not add up",
    aListing([at(500), anItem({ price: { amountMinor: 500, currency: "USD" } })]),
    null,
  ],
  ["no price anywhere", aListing([anItem()]), null],
  ["nothing offered", aListing([]), null],
])("%s", (_title, listing, expected) => {
  expect(askingOf(listing)).toEqual(expected);
});
