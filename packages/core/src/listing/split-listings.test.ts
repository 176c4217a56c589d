import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitListings } from "./split-listings.ts";

describe("splitListings", () => {
  it.each([
    ["one advert", ["one advert"]],
    ["", []],
    ["Driver head £40\n\nShaft £20", ["Driver head £40", "Shaft £20"]],
    ["Driver\nright hand\n\n---\nShaft\n\nstiff", ["Driver\nright hand", "Shaft\n\nstiff"]],
    ["Driver head, RH £40\nShaft, stiff, 45 in €20", ["Driver head, RH £40", "Shaft, stiff, 45 in €20"]],
    ["Driver\nRight hand\n£40", ["Driver\nRight hand\n£40"]],
    ["Driver head\r\n\r\nShaft", ["Driver head", "Shaft"]],
  ])("%j", (text, parts) => expect(splitListings(text)).toEqual(parts));

  it("loses no word of any text without separators", () => {
    const word = fc.stringMatching(/^[a-z£0-9]{1,8}$/u);
    fc.assert(
      fc.property(fc.array(fc.array(word, { maxLength: 5 }), { maxLength: 6 }), (lines) => {
        const text = lines.map((line) => line.join(" ")).join("\n");
        const kept = splitListings(text).join(" ").split(/\s+/u).filter(Boolean);
        expect(kept).toEqual(text.split(/\s+/u).filter(Boolean));
      }),
    );
  });
});
