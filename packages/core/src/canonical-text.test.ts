import fc from "fast-check";
import { expect, it } from "vitest";
import { canonicalText } from "./canonical-text.ts";

it("is the same whatever the order of the names, at every depth", () => {
  expect(canonicalText({ b: [{ y: 1, x: 2 }], a: null })).toBe('{"a":null,"b":[{"x":2,"y":1}]}');
  expect(canonicalText({ a: null, b: [{ x: 2, y: 1 }] })).toBe('{"a":null,"b":[{"x":2,"y":1}]}');
});

it("leaves out names without a value, and keeps the order of lists", () => {
  expect(canonicalText({ a: undefined, b: [2, 1] })).toBe('{"b":[2,1]}');
});

it("is read back as the value it was made from", () => {
  fc.assert(
    fc.property(fc.jsonValue({ depthSize: "small" }), (value) => {
      const asJson: unknown = JSON.parse(JSON.stringify(value));
      expect(JSON.parse(canonicalText(value))).toEqual(asJson);
    }),
  );
});
