import { expect, it } from "vitest";
import { deepest } from "./deepest.ts";
import { isTooDeep } from "./is-too-deep.ts";

const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);

it("lets lists and objects stand a hundred deep and no deeper", () => {
  expect(isTooDeep(nested(deepest))).toBe(false);
  expect(isTooDeep(nested(deepest + 1))).toBe(true);
  expect(isTooDeep('{"a":'.repeat(deepest + 1))).toBe(true);
});

it("counts neither what is side by side nor a bracket within a text", () => {
  expect(isTooDeep(`[${Array(500).fill("[]").join(",")}]`)).toBe(false);
  expect(isTooDeep(JSON.stringify(`\\"${"[".repeat(500)}`))).toBe(false);
});
