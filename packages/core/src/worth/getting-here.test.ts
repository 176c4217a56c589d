import { describe, expect, it } from "vitest";
import type { Listing, ListingItem } from "../listing/listing.ts";
import { aListing, anItem, euros, plainCosts } from "./deal.test-kit.ts";
import { gettingHere } from "./getting-here.ts";

const head = anItem();
const club = anItem({ kind: "club" });

function reckoned(postage: Listing["postage"], items: readonly ListingItem[] = [head], roundTripKm?: number) {
  const listing = aListing(items, { postage });
  const here = gettingHere({
    listing,
    costs: plainCosts,
    ...(roundTripKm === undefined ? {} : { roundTripKm }),
  });
  const { moneyMinor, minutes, totalMinor, isOpen } = here;
  expect(here.lines.reduce((sum, { amountMinor }) => sum + amountMinor, 0)).toBe(
    totalMinor === 0 ? 0 : -totalMinor,
  );
  return {
    moneyMinor,
    minutes,
    totalMinor,
    isOpen,
    fields: here.questions.map(({ to, field }) => `${to} ${field}`),
  };
}

const free = { moneyMinor: 0, minutes: 0, totalMinor: 0, isOpen: false, fields: [] };
const byPost = { ...free, moneyMinor: 700, totalMinor: 700 };
// 20 km at 0.30, and half an hour at 12.
const drive = { ...free, moneyMinor: 600, minutes: 30, totalMinor: 1200 };

describe("gettingHere", () => {
  it("counts the postage of as many alike as a judgement counts", () => {
    const alike = (quantity: number) => reckoned("extra", [anItem({ quantity })]).totalMinor;
    expect(alike(60)).toBeGreaterThan(alike(59));
    expect(alike(999)).toBe(alike(60));
  });

  it.each<[string, Listing["postage"], ListingItem[], number | undefined, ReturnType<typeof reckoned>]>([
    ["costs nothing where postage is included", "included", [head], 20, free],
    ["is a drive where it has to be fetched", "collection-only", [head], 20, drive],
    [
      "is open where it has to be fetched from nobody knows where",
      "collection-only",
      [head],
      undefined,
      { ...free, isOpen: true, fields: ["you roundTripKm"] },
    ],
    [
      "is the amount that the words name",
      euros(450),
      [head],
      20,
      { ...byPost, moneyMinor: 450, totalMinor: 450 },
    ],
    [
      "is the amount at the rate for another currency",
      { amountMinor: 1000, currency: "USD" },
      [head],
      undefined,
      { ...byPost, moneyMinor: 900, totalMinor: 900 },
    ],
    [
      "is open where an amount has no rate, and guessed meanwhile",
      { amountMinor: 1000, currency: "GBP" },
      [head],
      undefined,
      { ...byPost, isOpen: true, fields: ["you rates.GBP"] },
    ],
    ["is guessed from the own rates where it is extra", "extra", [head], undefined, byPost],
    [
      "is guessed and asked after where nothing is said",
      null,
      [head],
      undefined,
      { ...byPost, fields: ["seller postage"] },
    ],
    [
      "is the drive where that is cheaper",
      null,
      [head],
      5,
      { ...free, moneyMinor: 150, minutes: 7.5, totalMinor: 300 },
    ],
    ["is postage where the drive is dearer", "extra", [head], 20, byPost],
    [
      "is asked after where no service takes it",
      null,
      [club],
      undefined,
      { ...free, fields: ["seller postage"] },
    ],
    ["is the drive where no service takes it, however far", null, [club], 20, drive],
    [
      "is one parcel for several things that go into one",
      "extra",
      [anItem({ quantity: 5 })],
      undefined,
      byPost,
    ],
    // Eleven heads weigh 4400 g, over the service's 2000 g, so each goes alone.
    [
      "is a parcel for each thing where no service takes all in one",
      "extra",
      [anItem({ quantity: 11 })],
      undefined,
      { ...byPost, moneyMinor: 7700, totalMinor: 7700 },
    ],
    ["is nothing where nothing is offered", null, [], undefined, free],
  ])("%s", (_title, postage, items, roundTripKm, expected) => {
    expect(reckoned(postage, items, roundTripKm)).toEqual(expected);
  });
});
