import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mergeThree, mineOnTop } from "./merge-three.ts";

const before = { id: "g1", massG: 50, note: "old", colour: "red" };

describe("two changes of one thing", () => {
  it.each([
    [
      "of different fields are both kept",
      { ...before, massG: 51 },
      { ...before, note: "new" },
      { ...before, massG: 51, note: "new" },
      [],
    ],
    [
      "of one field to the same are no clash",
      { ...before, massG: 51 },
      { ...before, massG: 51 },
      { ...before, massG: 51 },
      [],
    ],
    [
      "of one field to two values clash",
      { ...before, massG: 51 },
      { ...before, massG: 52 },
      { ...before, massG: 52 },
      ["massG"],
    ],
    [
      "may each take a field away",
      { id: "g1", massG: 50, note: "old" },
      { id: "g1", massG: 50, colour: "red" },
      { id: "g1", massG: 50 },
      [],
    ],
    [
      "clash where one takes away what the other changed",
      { id: "g1", note: "old", colour: "red" },
      { ...before, massG: 52 },
      { ...before, massG: 52 },
      ["massG"],
    ],
  ])("%s", (_what, mine, present, merged, clashes) => {
    expect(mergeThree(before, mine, present)).toEqual({ merged, clashes });
  });

  it("lose nothing that was changed here once it is put on top", () => {
    const thing = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), fc.integer({ min: 0, max: 3 }));
    fc.assert(
      fc.property(thing, thing, thing, (was, mine, present) => {
        const result = mineOnTop(was, mine, present);
        for (const name of ["a", "b", "c", "d"])
          expect(result[name]).toBe(mine[name] !== was[name] ? mine[name] : present[name]);
      }),
    );
  });
});
