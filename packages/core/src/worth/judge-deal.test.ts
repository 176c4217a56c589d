import { describe, expect, it } from "vitest";
import type { Bench } from "../graph/bench-graph.ts";
import type { Listing, ListingItem } from "../listing/listing.ts";
import type { Part } from "../parts/part.ts";
import { aListing, anItem, euros, plainCosts } from "./deal.test-kit.ts";
import type { Alternative, Deal } from "./deal.ts";
import type { DealInput } from "./deal-input.ts";
import { dealInput, paid } from "./deal-judged.test-kit.ts";
import { judgeDeal } from "./judge-deal.ts";

/** A sound shaft for drivers with an adapter and a grip on it, and the joints of them. */
function shaftOnShelf(name: string): Pick<Bench, "parts"> & { joints: NonNullable<Bench["joints"]> } {
  const [shaft, adapter, grip] = [`S-${name}`, `A-${name}`, `G-${name}`];
  const parts: Part[] = [
    {
      id: shaft,
      kind: "shaft",
      suits: "wood",
      flex: "regular",
      length: { lengthIn: 44.5, basis: "with-adapter" },
    },
    { id: adapter, kind: "adapter", family: "Tarnlock", hand: "right" },
    { id: grip, kind: "grip" },
  ];
  return {
    parts,
    joints: [
      { type: "bonded", parts: [adapter, shaft] },
      { type: "gripped", parts: [shaft, grip] },
    ],
  };
}

function shelf(...names: string[]): Bench {
  const all = names.map(shaftOnShelf);
  return { parts: all.flatMap(({ parts }) => parts), joints: all.flatMap(({ joints }) => joints) };
}

const head = anItem({ clubType: "driver", hand: "right", adapterFamily: "Tarnlock" });
const shaft = anItem({
  kind: "shaft",
  clubType: "driver",
  flex: "regular",
  adapter: "fitted",
  adapterFamily: "Tarnlock",
  hand: "right",
  length: { lengthIn: 44.5, basis: "with-adapter" },
});

const evidence = [
  paid(4000, { kind: "head", clubType: "driver", hand: "right" }),
  paid(12_000, { kind: "club", clubType: "driver", hand: "right" }),
  paid(3000, { kind: "shaft", clubType: "driver", adapter: "fitted" }),
  paid(800, { kind: "cover", clubType: "driver" }),
];

function judge(
  items: ListingItem | ListingItem[],
  said: Partial<Listing> = {},
  other: Partial<DealInput> = {},
): Deal {
  return judgeDeal(dealInput(aListing([items].flat(), said), { evidence, ...other }));
}

function wayOf({ alternatives }: Deal, way: Alternative["way"]): Alternative {
  const found = alternatives.find((each) => each.way === way);
  if (!found) throw new Error(`there is no way ${way}`);
  return found;
}

const linesOf = (deal: Deal, way: Alternative["way"]) =>
  wayOf(deal, way).lines.map(({ code, amountMinor }) => [code, amountMinor]);
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

// Sums worked by hand from the costs of the test kit: a tenth in fees, 100 for packaging, ten minutes at 12 an hour (200) a sale.
describe("selling a head on", () => {
  it("is its price less fees, packaging and own time", () => {
    expect(linesOf(judge(head), "sell-as-it-is")).toEqual([
      ["sale", 4000],
      ["fees", -400],
      ["sending", -100],
      ["sale-time", -200],
    ]);
    expect(wayOf(judge(head), "sell-as-it-is").net?.valueMinor).toBe(3300);
  });

  it("is three times that for three, which are as uncertain together as one is", () => {
    const [one, three] = [head, { ...head, quantity: 3 }].map(
      (item) => wayOf(judge(item), "sell-as-it-is").net,
    );
    const width = (net: Alternative["net"]) => (net?.valueMinor ?? 0) - (net?.lowMinor ?? 0);
    expect(three?.valueMinor).toBe(3 * 3300);
    expect(Math.abs(width(three ?? null) - 3 * width(one ?? null))).toBeLessThanOrEqual(2);
  });

  it("is no way where a fault forbids it, and nobody is asked for its price", () => {
    const deal = judge({ ...head, faults: ["crack"] }, { asking: euros(100) }, { evidence: [] });
    expect(codes(wayOf(deal, "sell-as-it-is").reasons)).toEqual(["not-to-be-swung"]);
    expect([deal.verdict, ...codes(deal.reasons)]).toEqual(["leave", "no-way"]);
    expect(deal.questions.filter(({ to }) => to === "you")).toEqual([]);
  });
});

describe("building", () => {
  it("takes what the shelf's part would bring otherwise, and its work, off the club", () => {
    const deal = judge(head, {}, { bench: shelf("a") });
    // The shaft would bring 3000 − 300 − 100 − 200; a screw is turned which takes two minutes.
    expect(linesOf(deal, "build-now")).toEqual([
      ["sale", 12_000],
      ["fees", -1200],
      ["sending", -100],
      ["sale-time", -200],
      ["work-time", -40],
      ["shelf", -2400],
    ]);
    expect(wayOf(deal, "build-now").usesParts).toEqual(["A-a", "S-a", "G-a"]);
  });

  it("is impossible with a part that has been sold", () => {
    const bench = shelf("a");
    const parts = bench.parts.map((part) => (part.id === "S-a" ? { ...part, soldFor: euros(3000) } : part));
    expect(wayOf(judge(head, {}, { bench: { ...bench, parts } }), "build-now").possible).toBe(false);
  });

  it("makes as many clubs of several heads as there are shafts, and sells the rest on", () => {
    const deal = judge({ ...head, quantity: 3 }, {}, { bench: shelf("a", "b") });
    const building = wayOf(deal, "build-now");
    expect(building.clubs).toHaveLength(2);
    expect(new Set(building.clubs.flatMap((club) => club.split("+"))).size).toBe(8);
    const sold = building.lines.flatMap(({ code, amountMinor }) => (code === "sale" ? amountMinor : []));
    expect(sold).toEqual([12_000, 12_000, 4000]);
    // On the list of what it makes, one head speaks for all three.
    expect(deal.items[0]?.clubs).toHaveLength(2);
  });

  it("makes a club of a head and a shaft that are offered together, with nothing from the shelf", () => {
    const bench: Bench = {
      parts: [{ id: "G1", kind: "grip", coreDiameterIn: 0.6 }],
      goal: { skill: "regrip" },
    };
    const deal = judge([head, shaft], {}, { bench });
    const building = wayOf(deal, "build-now");
    expect(building.clubs).toEqual(["listing-head+listing-adapter+listing-shaft+G1"]);
    expect(building.lines.filter(({ code }) => code === "sale")).toHaveLength(1);
  });

  it("sells the cover with the head it came with, and not once more alone", () => {
    const deal = judge({ ...head, cover: true }, {}, { bench: shelf("a") });
    const sales = wayOf(deal, "build-now").lines.filter(({ code }) => code === "sale");
    expect(sales.map(({ text }) => text)).toEqual(["sale of driver with regular shaft"]);
  });

  it("keeps the adapter on the shaft that is left of a club whose head is used", () => {
    const club = anItem({
      kind: "club",
      clubType: "driver",
      hand: "right",
      adapterFamily: "Tarnlock",
      faults: ["bent-shaft"],
      shaftMaterial: "steel",
    });
    const deal = judge(club, {}, { bench: shelf("a") });
    // The bent shaft must not be sold: nothing but the new club is.
    const sales = wayOf(deal, "build-now").lines.filter(({ code }) => code === "sale");
    expect(sales).toHaveLength(1);
    const whole = judge({ ...club, faults: [] }, {}, { bench: shelf("a") });
    expect(
      wayOf(whole, "build-now").lines.flatMap(({ code, text }) => (code === "sale" ? text : [])),
    ).toEqual(["sale of driver with regular shaft", "sale of shaft with adapter"]);
  });

  it("counts a club of the shelf once, however many of its parts are used", () => {
    const own: Part = {
      id: "H1",
      kind: "head",
      clubType: "driver",
      hand: "right",
      socket: { type: "receiver", family: "Tarnlock" },
    };
    const { parts, joints = [] } = shelf("a");
    const bench: Bench = {
      parts: [own, ...parts],
      joints: [...joints, { type: "screwed", parts: ["H1", "A-a"] }],
    };
    const deal = judge([head, shaft], {}, { bench: { ...bench, goal: { skill: "regrip" } } });
    const shelfLines = wayOf(deal, "build-now").lines.filter(({ code }) => code === "shelf");
    expect(shelfLines.length).toBeGreaterThan(0);
    // The whole club would bring 12000 − 1200 − 100 − 200.
    for (const { amountMinor } of shelfLines) expect(-amountMinor).toBeLessThanOrEqual(10_500);
  });

  it("says that it hangs on a fact where it does, and asks for it", () => {
    // Waiting that costs dear is closed, so that all hangs on the club.
    const costs = { ...plainCosts, holdingPerWeekMinor: 5000 };
    const said = { asking: euros(5000) };
    const deal = judge({ ...head, hand: null }, said, { bench: shelf("a"), costs });
    expect(codes(wayOf(deal, "build-now").reasons)).toEqual(["unsettled"]);
    expect([deal.verdict, ...codes(deal.reasons)]).toEqual(["ask-first", "unsettled"]);
    const [first] = deal.questions;
    expect(first).toMatchObject({ to: "seller", field: "items.0.hand", decides: true });
    expect(first?.swingMinor).toBeGreaterThan(1000);
    expect(deal.message).toContain(first?.text);
  });
});

describe("a set", () => {
  const set = anItem({ kind: "club", clubType: "iron", clubNumber: "7-PW", hand: "right" });
  const priced = [paid(16_000, { kind: "club", clubType: "iron", clubNumber: "7-PW", hand: "right" })];

  it("is sold as one, not as many", () => {
    const deal = judge(set, {}, { evidence: priced });
    expect(linesOf(deal, "sell-as-it-is").filter(([code]) => code === "sale")).toEqual([["sale", 16_000]]);
    expect(deal.items[0]?.parts).toHaveLength(12);
  });
});

describe("waiting", () => {
  it("is worth more than selling the head, and less than the finished club", () => {
    const wait = wayOf(judge(head), "wait");
    expect(wait.waiting?.text).toContain("Tarnlock");
    expect(wait.waiting?.priorOnly).toBe(true);
    expect(wait.net?.valueMinor).toBeGreaterThan(3300);
    expect(wait.net?.valueMinor).toBeLessThan(10_500);
  });

  it("has no day to expect the part on where waiting is free and has no end, and an interval where it has", () => {
    expect(wayOf(judge(head), "wait").daysToMoney).toBeNull();
    const timed = paid(12_000, { kind: "club", clubType: "driver", hand: "right", daysToSell: 10 });
    const costs = { ...plainCosts, holdingPerWeekMinor: 20, deadlineWeeks: 26 };
    const days = wayOf(
      judge(head, {}, { costs, evidence: [...evidence.slice(0, 1), timed, ...evidence.slice(2)] }),
      "wait",
    ).daysToMoney;
    expect(days?.low).toBeLessThan(days?.value ?? 0);
    expect(days?.high).toBeGreaterThan(days?.value ?? 0);
  });

  it("is closed for a head that must not be swung, and for a club that lacks nothing", () => {
    for (const item of [
      { ...head, faults: ["crack" as const] },
      anItem({ kind: "club", clubType: "driver" }),
    ])
      expect(codes(wayOf(judge(item), "wait").reasons)).toEqual(["nothing-to-wait-for"]);
  });
});

describe("parting out", () => {
  const club = anItem({ kind: "club", clubType: "driver", hand: "right", adapterFamily: "Tarnlock" });

  it("sells the head, and the shaft with its adapter, after a screw is turned", () => {
    const lines = wayOf(judge(club), "part-out").lines;
    expect(lines.flatMap(({ code, amountMinor }) => (code === "sale" ? amountMinor : []))).toEqual([
      3000, 4000,
    ]);
  });

  it("needs skill where the shaft is glued into the head", () => {
    const glued = { ...club, adapterFamily: null };
    expect(codes(wayOf(judge(glued), "part-out").reasons)).toEqual(["beyond-skill"]);
    const able = judge(glued, {}, { bench: { parts: [], goal: { skill: "bond" } } });
    expect(codes(wayOf(able, "part-out").risks)).toEqual(["pull-head"]);
  });
});

describe("the price", () => {
  it("of items that are priced one by one is that of all of them", () => {
    const deal = judge([
      { ...head, price: euros(900), quantity: 2 },
      { ...shaft, price: euros(700) },
    ]);
    expect(deal.asking).toEqual(euros(2500));
    expect(deal.notices.join(" ")).toContain("one by one");
  });

  it("in a currency without a rate is asked after, and decides", () => {
    const deal = judge(head, { asking: { amountMinor: 2000, currency: "GBP" } });
    expect([deal.verdict, ...codes(deal.reasons)]).toEqual(["ask-first", "no-rate"]);
    expect(deal.questions[0]).toMatchObject({ to: "you", field: "rates.GBP", decides: true });
  });

  it("of nothing is too much for what costs more to fetch than it brings", () => {
    const said = { asking: euros(0), postage: "collection-only" } as const;
    expect(judge(head, said, { roundTripKm: 20 }).verdict).toBe("buy");
    const far = judge(head, said, { roundTripKm: 200 });
    expect([far.verdict, far.mostToPay?.amountMinor]).toEqual(["leave", 0]);
    expect(judge(head, said).verdict).toBe("ask-first");
  });

  it("is too much only once everything has a price to go by", () => {
    const lot = [head, anItem({ kind: "club", clubType: "putter" })];
    const deal = judge(lot, { asking: euros(20_000) });
    expect([deal.verdict, ...codes(deal.reasons)]).toEqual(["ask-first", "partly-priced"]);
    expect(deal.questions[0]).toMatchObject({ to: "you", field: "resale", decides: true });
    const known = [...evidence, paid(5000, { kind: "club", clubType: "putter" })];
    expect(judge(lot, { asking: euros(20_000) }, { evidence: known }).verdict).toBe("leave");
  });
});

describe("a judgement", () => {
  it("asks nothing of somebody who is looking for a thing", () => {
    const deal = judge(head, { intent: "wanted" });
    expect([deal.verdict, deal.questions, deal.message]).toEqual(["leave", [], ""]);
  });

  it("asks no price of somebody who gives it away, and has no message for what is to be left", () => {
    const fields = (said: object) => judge(head, said).questions.map(({ field }) => field);
    expect(fields({})).toContain("asking");
    expect(fields({ asking: euros(0) })).not.toContain("asking");
    const dear = judge(head, { asking: euros(90_000) });
    expect([dear.verdict, dear.message]).toEqual(["leave", ""]);
    expect(dear.questions.some(({ to }) => to === "seller")).toBe(true);
  });

  it("says how many of many are counted", () => {
    expect(judge({ ...head, quantity: 100 }).notices).toContain("Of 100 alike, 60 are counted.");
  });

  it("gives parts of the listing names that no part of the bench has", () => {
    const bench: Bench = { parts: [{ id: "listing-head", kind: "head" }] };
    expect(judge(head, {}, { bench }).items[0]?.parts).toEqual(["listing-head-2"]);
  });

  it("throws where the bench does not hold together, which whoever calls has checked", () => {
    const bench: Bench = { parts: [], joints: [{ type: "bonded", parts: ["A", "S"] }] };
    expect(() => judge(head, {}, { bench })).toThrow(/does not hold together/);
  });
});
