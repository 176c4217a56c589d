import { expect, test } from "vitest";
import { findByCode } from "./find-by-code.ts";
import { shortCode } from "./short-code.ts";

const parts = new Map([1, 2, 40].map((place) => [shortCode(place), `part-${place}`]));
const code = shortCode(2);

test("finds the part of a code, however it is typed", () => {
  for (const text of [code, ` ${code.toLowerCase()} `, `http://bench/code/${code}`])
    expect(findByCode(text, parts)).toEqual({ code, part: "part-2", near: [] });
});

test("names codes one slip away where nothing has the code", () => {
  const slipped = `${code.slice(0, -1)}${code.endsWith("7") ? "8" : "7"}`;
  const found = findByCode(slipped, parts);
  expect(found.part).toBeNull();
  expect(found.near).toContainEqual({ code, part: "part-2" });
});

test("finds nothing by what is no code", () => {
  expect(findByCode("the red one", parts)).toEqual({ code: "the red one", part: null, near: [] });
});
