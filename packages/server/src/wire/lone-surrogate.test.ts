import { expect, it } from "vitest";
import { loneSurrogateAt } from "./lone-surrogate.ts";

// Unicode 16, 3.9, D71 to D76: a surrogate code point that is not one of a pair has no form in UTF-8.
it.each([
  ['"\\ud83c\\udfcc"', undefined],
  ['{"a":["x",{"b":"\\ud83c"}]}', "a.1.b"],
  ['{"a":"\\udfcc\\ud83c"}', "a"],
  ['{"a":{"\\udfcc":1}}', "a"],
  ['"\\uD800"', "(the body)"],
  ['"\\\\ud800"', undefined],
  ['"plain"', undefined],
])("finds half a character in %s at %s", (text, path) => {
  expect(loneSurrogateAt(text, JSON.parse(text))).toBe(path);
});
