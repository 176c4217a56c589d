import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { factNumbers, wordPieces } from "./word-pieces.ts";

const span = (field: string, start: number, end: number) => ({ field, start, end, words: "" });

describe("the words of a listing", () => {
  it("are cut where facts begin and end, and each piece names what was read from it", () => {
    const pieces = wordPieces("RH 10.5 driver", [span("items.0.loftDeg", 3, 7), span("items.0.hand", 0, 2)]);
    expect(pieces).toEqual([
      { text: "RH", facts: [{ field: "items.0.hand", number: 1 }] },
      { text: " ", facts: [] },
      { text: "10.5", facts: [{ field: "items.0.loftDeg", number: 2 }] },
      { text: " driver", facts: [] },
    ]);
  });

  it("carry every fact that overlapping spans read from them", () => {
    const pieces = wordPieces("3 wood", [span("kind", 0, 6), span("clubNumber", 0, 1)]);
    expect(pieces.map(({ text, facts }) => [text, facts.map(({ field }) => field)])).toEqual([
      ["3", ["clubNumber", "kind"]],
      [" wood", ["kind"]],
    ]);
  });

  it("number a fact once, however many words say it", () => {
    expect(factNumbers([span("asking", 20, 22), span("hand", 0, 2), span("asking", 4, 6)])).toEqual(
      new Map([
        ["hand", 1],
        ["asking", 2],
      ]),
    );
  });

  it("are all there and in order whatever spans are given", () => {
    const spans = fc.array(
      fc.tuple(fc.nat(50), fc.nat(50)).map(([start, end]) => span(`items.${start % 3}.hand`, start, end)),
    );
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), spans, (text, given) => {
        expect(
          wordPieces(text, given)
            .map((piece) => piece.text)
            .join(""),
        ).toBe(text);
      }),
    );
  });
});
