import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prepareWords } from "./words.ts";

describe("prepareWords", () => {
  it.each([
    ["DRIVER  Head", "driver  head"],
    ["45″ tip – ‘as new’", "45\" tip - 'as new'"],
    ["10½º ＲＨ", "10½° rh"],
    ["🔥 £20 à débattre", "   £20 a debattre"],
    ["a\r\nb", "a \nb"],
  ])("%j is prepared as %j", (text, plain) => expect(prepareWords(text).plain).toBe(plain));

  it("keeps every offset of any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const { plain, tokens } = prepareWords(text);
        expect(plain).toHaveLength(text.length);
        for (const { plain: token, start, end } of tokens) expect(plain.slice(start, end)).toBe(token);
      }),
    );
  });
});
