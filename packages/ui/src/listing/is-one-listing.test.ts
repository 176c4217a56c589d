import { describe, expect, it } from "vitest";
import { isOneListing } from "./is-one-listing.ts";

describe("pasted words", () => {
  it("are one listing when they are a title, its description and its terms", () => {
    expect(isOneListing("Northmoor Ombrel driver head RH\n\nNo sky marks.\n\n35 EUR, postage 6 EUR")).toBe(
      true,
    );
  });

  it("are not one listing when there are many blocks, or rows of a JSON file, or nothing", () => {
    expect(isOneListing(["one", "two", "three", "four"].join("\n \n"))).toBe(false);
    expect(isOneListing('{"text": "Northmoor Ombrel driver head"}')).toBe(false);
    expect(isOneListing(" \n ")).toBe(false);
  });
});
