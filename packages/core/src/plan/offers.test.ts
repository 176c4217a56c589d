import { describe, expect, it } from "vitest";
import { aListing, anItem, euros, plainCosts } from "../worth/deal.test-kit.ts";
import type { Sighting } from "../worth/sighting.ts";
import { offersOf, titleOfOffer } from "./offers.ts";
import type { PlanInput } from "./plan-input.ts";

const head = anItem({ clubType: "driver" });
const listing = aListing([head], { asking: euros(4000) });

const seen = (more: Partial<Sighting> = {}): Sighting => ({
  ...{ id: "L1", seenOn: "2026-11-20", text: "\n a driver head \nno marks", read: listing, listing },
  outcome: "open",
  ...more,
});

const offers = (sightings: Sighting[], parts: PlanInput["bench"]["parts"] = []) =>
  offersOf({
    ...{ bench: { parts }, rules: [], reference: { typical: [], work: [], cautions: [] }, catalogue: [] },
    ...{ evidence: [], sightings, costs: plainCosts, today: "2026-11-25" },
    wishes: {
      budgetMinor: null,
      minutes: null,
      mostOfType: {},
      hours: "at-own-rate",
      leastPerHourMinor: null,
    },
  });

describe("what can be bought today", () => {
  it.each([
    ["nothing was read", { items: [] }, "nothing-read"],
    ["it is wanted, not offered", { intent: "wanted" as const }, "not-for-sale"],
    ["it is offered for another thing", { intent: "swap" as const }, "not-for-sale"],
    ["no price is asked", { asking: null }, "no-price"],
    ["its currency has no rate", { asking: { amountMinor: 1, currency: "JPY" } }, "no-rate"],
    ["it has to be fetched from nobody knows where", { postage: "collection-only" as const }, "no-distance"],
  ])("leaves a listing out where %s", (_what, more, code) => {
    const made = offers([seen({ listing: { ...listing, ...more } })]);
    expect(made.offers).toEqual([]);
    expect(made.leftOut).toEqual([{ sighting: "L1", code, text: expect.any(String) }]);
  });

  it("is what is open still", () => {
    const { offers: made, leftOut } = offers([seen({ outcome: "gone" }), seen({ id: "L2" })]);
    expect(made.map(({ id }) => id)).toEqual(["L2"]);
    expect(leftOut).toEqual([]);
  });

  it("is what is left of a listing, at what that is priced at", () => {
    const priced = { ...head, price: euros(1500) };
    const lot = (items: (typeof head)[]) => aListing(items, { asking: euros(4000), postage: "included" });
    const left = (items: (typeof head)[], boughtItems: number[]) =>
      offers([seen({ listing: lot(items), boughtItems })]);
    const { offers: made } = left([head, { ...priced, quantity: 2 }], [0]);
    expect(made).toMatchObject([{ priceMinor: 3000, sighting: { listing: { items: [{ quantity: 2 }] } } }]);
    expect(made[0]?.parts.map(({ kind }) => kind)).toEqual(["head", "head"]);
    expect(made[0]?.things).toHaveLength(1);
    expect(left([priced, head], [0]).leftOut).toMatchObject([{ code: "no-price" }]);
    expect(left([head], [0]).leftOut).toMatchObject([{ code: "nothing-left" }]);
    expect(left([head], []).offers).toMatchObject([{ priceMinor: 4000 }]);
  });

  it("costs its price and its postage, in the currency of the bench", () => {
    const priceOf = (more: object) =>
      offers([seen({ listing: { ...listing, ...more } })]).offers[0]?.priceMinor;
    expect(priceOf({})).toBe(4000);
    expect(priceOf({ postage: euros(600) })).toBe(4600);
    expect(priceOf({ asking: { amountMinor: 4000, currency: "USD" } })).toBe(3600);
  });

  it("is fetched where it is, whoever wrote the place how", () => {
    const fetched = { ...listing, postage: "collection-only" as const };
    const made = offers([
      seen({ listing: fetched, place: "The Mill ", roundTripKm: 10 }),
      seen({ id: "L2", listing: fetched, place: "the mill", roundTripKm: 10 }),
      seen({ id: "L3", listing: fetched, roundTripKm: 10 }),
    ]).offers;
    // 10 km at 30 and 1.5 min each, an hour worth 12 euros.
    expect(made[0]?.trip).toEqual({ id: "the mill", moneyMinor: 300, minutes: 15, timeMinor: 300 });
    expect(made.map(({ trip }) => trip?.id)).toEqual(["the mill", "the mill", "place of L3"]);
    expect(made.map(({ priceMinor }) => priceMinor)).toEqual([4000, 4000, 4000]);
  });

  it("has names of its own for its parts, and its first words for a title", () => {
    const [made] = offers([seen()], [{ id: "offer-L1-head", kind: "head" }]).offers;
    expect(made?.parts.map(({ id }) => id)).toEqual(["offer-L1-head-2"]);
    expect(made && titleOfOffer(made)).toBe("a driver head");
    const [silent] = offers([seen({ text: " " })]).offers;
    expect(silent && titleOfOffer(silent)).toBe("L1");
  });
});
