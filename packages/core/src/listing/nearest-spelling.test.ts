import { expect, it } from "vitest";
import { spellingDistance } from "./nearest-spelling.ts";

it.each([
  ["ombrel", "ombrel", 0],
  ["ombrel", "ombrell", 1],
  ["ombrel", "obmrel", 1],
  ["ombrel", "umbral", 2],
  ["ombrel", "fenwrack", 3],
])("%s is %s but for %i letters, counted to two and no further", (one, other, letters) => {
  expect(spellingDistance(one, other, 2)).toBe(letters);
  expect(spellingDistance(other, one, 2)).toBe(letters);
});
