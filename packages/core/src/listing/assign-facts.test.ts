import { expect, it } from "vitest";
import { fewReady } from "./catalogue.test-kit.ts";
import { readListing } from "./read-listing.ts";

/** The hand, the cover and the faults of each item; a denied fault has a minus before its name. */
const facts = (text: string) =>
  readListing(text, fewReady).items.map(({ hand, cover, faults, deniedFaults }) =>
    [hand, cover, ...faults, ...deniedFaults.map((fault) => `-${fault}`)]
      .filter((fact) => fact !== null)
      .join(" "),
  );

it.each([
  ["left handed 7 iron and putter", ["left", "left"]],
  ["left handed 7 iron and right handed putter", ["left", "right"]],
  ["Ombrel driver RH and Fenwrack driver LH. No covers.", ["right false", "left false"]],
  ["Three wedges 50, 54 and 58, rust on the 58", ["", "", "rust"]],
  // A dent of no said place is a shaft's where the thing is a shaft.
  ["Reedlace 60 shaft, no dents, light bag chatter", ["paint-wear-shaft -dent-shaft"]],
  ["Fenwrack driver head, no dents, light bag chatter", ["-dent-head"]],
])("%j", (text, expected) => expect(facts(text)).toEqual(expected));
