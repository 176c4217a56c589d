import { expect, it } from "vitest";
import { aListing, anItem, aResale } from "./deal.test-kit.ts";
import { dealCares } from "./deal-cares.ts";
import { dealContext } from "./deal-context.ts";
import { dealInput } from "./deal-judged.test-kit.ts";
import type { OfferedThing } from "./listing-things.ts";

const context = dealContext(dealInput(aListing([anItem()])));
const offered = (lowMinor: number, faults: ("crack" | "crease-shaft" | "sky-mark")[] = []): OfferedThing => {
  const parts = [{ id: "listing-head", kind: "head" as const, faults }];
  const resale = aResale(lowMinor * 2, lowMinor, lowMinor * 3);
  return { item: 0, parts, asItIs: { title: "head", parts, resale, sale: undefined } };
};
const codes = (things: OfferedThing[], askingMinor: number | undefined) =>
  dealCares(things, askingMinor, context).map(({ code }) => code);

it.each([
  ["just under six tenths of the low end", [offered(10_000)], 5999, ["price-far-under"]],
  ["six tenths of the low end", [offered(10_000)], 6000, []],
  [
    "far under the low ends of several things together",
    [offered(4000), offered(6000)],
    5999,
    ["price-far-under"],
  ],
  ["not said", [offered(10_000)], undefined, []],
  ["of things that nobody knows a price of", [], 1, []],
])("of a price that is %s", (_title, things, askingMinor, expected) => {
  expect(codes(things, askingMinor)).toEqual(expected);
});

it("names each fault once with which nothing is to be swung, and no other", () => {
  const things = [offered(1000, ["crack", "sky-mark"]), offered(1000, ["crack", "crease-shaft"])];
  expect(codes(things, undefined)).toEqual(["unsafe-crack", "unsafe-crease-shaft"]);
});

it("passes on what a reader of the words would doubt", () => {
  const doubt = { field: null, start: null, end: null, text: "Two prices are named." };
  const doubtful = dealContext(dealInput(aListing([anItem()], { doubts: [doubt] })));
  expect(dealCares([], undefined, doubtful)).toEqual([{ code: "doubt", text: "Two prices are named." }]);
});

it("accuses nobody", () => {
  const [care] = dealCares([offered(10_000)], 100, context);
  expect(care?.text).toMatch(/There can be a good reason/);
});
