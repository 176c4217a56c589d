import { expect, it } from "vitest";
import { fewReady } from "./catalogue.test-kit.ts";
import { readListing } from "./read-listing.ts";

/** The kind, the count and the number of each item. */
const things = (text: string) =>
  readListing(text, fewReady).items.map(
    ({ kind, quantity, clubType, clubNumber }) => `${quantity} ${kind} ${clubType} ${clubNumber}`,
  );

it.each([
  // Among things that are counted, a number before a plural counts.
  [
    "3 driver heads, 4 hybrid heads, 2 wrenches",
    ["3 head driver null", "4 head hybrid null", "2 wrench null null"],
  ],
  ["5 wood and 7 wood heads", ["1 head fairway 5", "1 head fairway 7"]],
  ["Lapwick 7 iron heads x 3", ["3 head iron 7"]],
  // A line that lists what stands after it is no thing besides.
  ["Two fairway woods, 3w and 5w, RH", ["1 club fairway 3", "1 club fairway 5"]],
  ["Pair of wedges, 54 and 58, plus a PW", ["1 club wedge null", "1 club wedge null", "1 club wedge PW"]],
  // Entries of a list with a mark before each line, and the details of one thing written the same way.
  [
    "- Fenwrack driver head\n- Reedlace 60 shaft\n- driver headcover",
    ["1 head driver null", "1 shaft null null", "1 cover driver null"],
  ],
  ["- Fenwrack driver\n- shaft: stiff\n- headcover included", ["1 club driver null"]],
])("%j", (text, expected) => expect(things(text)).toEqual(expected));
