import { describe, expect, it } from "vitest";
import type { Listing } from "../listing/listing.ts";
import type { Want } from "../resolve/result.ts";
import { aListing, anItem, euros, plainCosts } from "./deal.test-kit.ts";
import { modelFinder } from "./model-finder.ts";
import { seenForWant } from "./seen-for-want.ts";
import type { Sighting } from "./sighting.ts";

const want: Want = {
  id: "w",
  kind: "adapter",
  needs: { family: "Tarnlock" },
  text: "",
  completes: [],
  count: 1,
};
const adapter = anItem({ kind: "adapter", adapterFamily: "Tarnlock" });
const seenOn = (on: string, listing: Listing): Sighting => ({
  id: on + listing.items.length,
  seenOn: on,
  text: "",
  read: listing,
  listing,
  outcome: "open",
});
const at = (amountMinor: number, other: Partial<Listing> = {}) =>
  aListing([adapter], { asking: euros(amountMinor), ...other });
const seen = (...sightings: Sighting[]) =>
  seenForWant(want, sightings, modelFinder([]), plainCosts, "2026-11-25");

describe("seenForWant", () => {
  it("knows nothing where nothing was ever seen", () => {
    expect(seen()).toEqual({ count: 0, weeks: 0, pricesMinor: [] });
  });

  it("counts the weeks from the first sighting of anything, an hour of summer time more or less", () => {
    expect(seen(seenOn("2026-09-30", aListing([anItem()])))).toEqual({ count: 0, weeks: 8, pricesMinor: [] });
  });

  it("counts what would have done, at the price of the listing where it was alone", () => {
    const lot = aListing([adapter, anItem()], { asking: euros(9000) });
    const priced = aListing([{ ...adapter, price: euros(1200) }, anItem()], { asking: euros(9000) });
    const two = aListing([{ ...adapter, quantity: 2 }], { asking: euros(3000) });
    expect(
      seen(
        seenOn("2026-11-18", at(1500)),
        seenOn("2026-11-19", lot),
        seenOn("2026-11-20", priced),
        seenOn("2026-11-21", two),
      ),
    ).toEqual({ count: 4, weeks: 1, pricesMinor: [1200, 1500] });
  });

  it("converts prices, and leaves out those without a rate", () => {
    const dollars = at(0, { asking: { amountMinor: 1000, currency: "USD" } });
    const pounds = at(0, { asking: { amountMinor: 1000, currency: "GBP" } });
    const { count, pricesMinor } = seen(seenOn("2026-11-18", dollars), seenOn("2026-11-19", pounds));
    expect([count, pricesMinor]).toEqual([2, [900]]);
  });

  it("leaves out what somebody was looking for, what is another thing, and what is seen later", () => {
    const { count } = seen(
      seenOn("2026-11-18", at(1500, { intent: "wanted" })),
      seenOn("2026-11-18", aListing([{ ...adapter, adapterFamily: "Quillon 2" }])),
      seenOn("2026-11-26", at(1500)),
    );
    expect(count).toBe(0);
  });

  it("counts the same words once, at the price they were first read with, and listings without words each", () => {
    const said = (on: string, price: number, text: string) => ({ ...seenOn(on, at(price)), text });
    const twice = [said("2026-11-19", 1400, "A, 14 euros"), said("2026-11-18", 1500, "A, 14 euros")];
    expect(seen(...twice)).toMatchObject({ count: 1, pricesMinor: [1500] });
    expect(seen(...twice, said("2026-11-20", 1300, "B"))).toMatchObject({ count: 2 });
    expect(seen(said("2026-11-18", 900, ""), said("2026-11-19", 900, ""))).toMatchObject({ count: 2 });
  });

  it("is the same in whatever order the sightings come", () => {
    const all = [1500, 700, 1100].map((price, at_) => seenOn(`2026-11-1${at_}`, at(price)));
    expect(seen(...all.toReversed())).toEqual(seen(...all));
  });
});
