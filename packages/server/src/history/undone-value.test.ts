import { describe, expect, it } from "vitest";
import { undoneValue } from "./undone-value.ts";

const gone = undefined;

describe("taking a change out of what there is now", () => {
  it.each<[string, unknown, unknown, unknown, unknown]>([
    ["a field that stands as it was left", { a: 1 }, { a: 2 }, { a: 2 }, { a: 1 }],
    ["another field that was changed since", { a: 1, b: 1 }, { a: 2, b: 1 }, { a: 2, b: 9 }, { a: 1, b: 9 }],
    ["a field that was added since", { a: 1 }, { a: 2 }, { a: 2, c: 3 }, { a: 1, c: 3 }],
    ["another field that was taken since", { a: 1, b: 1 }, { a: 2, b: 1 }, { a: 2 }, { a: 1 }],
    ["a field that the change added", { a: 1 }, { a: 1, b: 2 }, { a: 5, b: 2 }, { a: 5 }],
    ["a field that the change took", { a: 1, b: 2 }, { a: 1 }, { a: 5 }, { a: 5, b: 2 }],
    ["a field that holds null", { a: null }, { a: 2 }, { a: 2, b: 1 }, { a: null, b: 1 }],
    [
      "fields of a group",
      { g: { a: 1, b: 1 } },
      { g: { a: 2, b: 1 } },
      { g: { a: 2, b: 9 } },
      { g: { a: 1, b: 9 } },
    ],
    ["a list, which is one value", { l: [1] }, { l: [1, 2] }, { l: [1, 2], n: 1 }, { l: [1], n: 1 }],
    [
      "names that every object has",
      { constructor: 1 },
      { constructor: 2 },
      { constructor: 2 },
      { constructor: 1 },
    ],
    ["a plain value", "one", "two", "two", "one"],
  ])("gives back %s", (_what, before, after, present, expected) => {
    expect(undoneValue(before, after, present)).toEqual({ stands: true, value: expected });
  });

  it.each<[string, unknown, unknown, unknown]>([
    ["the same field was changed since", { a: 1 }, { a: 2 }, { a: 3 }],
    ["a field that it changed was taken since", { a: 1 }, { a: 2 }, {}],
    ["a field that it took is there again", { a: 1, b: 2 }, { a: 1 }, { a: 1, b: 3 }],
    ["a list that it changed was changed since", { l: [1] }, { l: [1, 2] }, { l: [1, 2, 3] }],
    ["a group has become something else", { g: { a: 1 } }, { g: { a: 2 } }, { g: "none" }],
    ["the thing is not there any more", { a: 1 }, { a: 2 }, gone],
    ["a plain value was changed since", "one", "two", "three"],
  ])("does not stand where %s", (_what, before, after, present) => {
    expect(undoneValue(before, after, present)).toEqual({ stands: false });
  });
});
