import { describe, expect, it } from "vitest";
import type { ListingItem } from "../listing/listing.ts";
import { aListing, anItem, aResale } from "./deal.test-kit.ts";
import type { DealQuestion } from "./deal.ts";
import { dealContext } from "./deal-context.ts";
import { dealInput } from "./deal-judged.test-kit.ts";
import { faultQuestions, lacksPrices, priceQuestions, rankedQuestions } from "./deal-questions.ts";
import { listingThings, type OfferedThing } from "./listing-things.ts";
import type { Resale } from "./resale.ts";

const question = (text: string, swingMinor: number, decides: boolean, to: DealQuestion["to"] = "seller") =>
  ({ to, field: "items.0.hand", text, swingMinor, decides }) as const;

describe("rankedQuestions", () => {
  it("puts first what decides, then what is about most money, and leaves equals in their order", () => {
    const ranked = rankedQuestions([
      question("a", 0, false),
      question("b", 900, false),
      question("c", 100, true),
      question("d", 0, false),
      question("e", 800, true),
    ]);
    expect(ranked.map(({ text }) => text).join(" ")).toBe("e c b a d");
  });

  it("asks each thing once of each, as strongly as it is asked anywhere", () => {
    const ranked = rankedQuestions([
      question("a", 100, false),
      question("a", 300, true),
      question("a", 900, false),
      question("a", 50, false, "you"),
    ]);
    expect(ranked).toEqual([question("a", 300, true), question("a", 50, false, "you")]);
  });
});

function asked(...items: ListingItem[]) {
  const context = dealContext(dealInput(aListing(items)));
  return faultQuestions(listingThings(context), 4000, false, context).map(({ field, text }) => [
    field,
    /head|adapter/u.exec(text)?.[0] ?? "shaft",
  ]);
}

describe("faultQuestions", () => {
  it.each<[string, ListingItem[], string[][]]>([
    ["a head", [anItem()], [["items.0.faults", "head"]]],
    [
      "both ends of a club",
      [anItem({ kind: "club" })],
      [
        ["items.0.faults", "head"],
        ["items.0.faults", "shaft"],
      ],
    ],
    ["an adapter", [anItem({ kind: "grip" }), anItem({ kind: "adapter" })], [["items.1.faults", "adapter"]]],
    [
      "no grip, cover or wrench",
      [anItem({ kind: "grip" }), anItem({ kind: "cover" }), anItem({ kind: "wrench" })],
      [],
    ],
    ["each item once, however many there are of it", [anItem({ quantity: 3 })], [["items.0.faults", "head"]]],
    ["nothing that is denied", [anItem({ deniedFaults: ["crack"] })], []],
    ["nothing whose answer forbids a sale already", [anItem({ faults: ["caved-face"] })], []],
    // A rattle that is owned up to says nothing of cracks.
    [
      "what a lesser fault leaves open",
      [anItem({ faults: ["rattle", "sky-mark"] })],
      [["items.0.faults", "head"]],
    ],
  ])("asks after %s", (_title, items, expected) => {
    expect(asked(...items)).toEqual(expected);
  });
});

const unknown: Resale = { known: false, question: "What would it sell for?" };

function offered(resale: Resale, faults: ListingItem["faults"] = []): OfferedThing {
  const parts = [{ id: "listing-head", kind: "head" as const, faults }];
  return { item: 0, parts, asItIs: { title: "head", parts, resale, sale: undefined } };
}

describe("priceQuestions", () => {
  it("asks once for each price that nobody knows", () => {
    const things = [offered(unknown), offered(unknown), offered(aResale(1000))];
    expect(priceQuestions(things, [], true)).toEqual([
      { to: "you", field: "resale", text: "What would it sell for?", swingMinor: 0, decides: true },
    ]);
  });

  it("asks for no price of what must not be sold to be swung", () => {
    expect(priceQuestions([offered(unknown, ["crack"])], [], true)).toEqual([]);
  });
});

describe("lacksPrices", () => {
  it.each([
    ["a thing whose price nobody knows", [offered(aResale(1)), offered(unknown)], true],
    ["things whose prices are known", [offered(aResale(1))], false],
    ["a thing that must not be sold", [offered(unknown, ["crack"])], false],
    ["nothing", [], false],
  ])("of %s is %s", (_title, things, expected) => {
    expect(lacksPrices(things, [])).toBe(expected);
  });
});
