import { mergePatch } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formerFields } from "./former-fields.ts";

const leaf = fc.oneof(fc.integer(), fc.string(), fc.boolean(), fc.array(fc.integer(), { maxLength: 3 }));
const name = fc.constantFrom("a", "b", "c");
const group = fc.dictionary(name, fc.oneof(leaf, fc.dictionary(name, leaf)));

describe("the fields as they were", () => {
  it.each<[object, object, object]>([
    [{ a: 1 }, { a: 2 }, { a: 1 }],
    [{}, { a: 2 }, { a: null }],
    [{ a: { b: 1 } }, { a: { b: 2, c: 3 } }, { a: { b: 1, c: null } }],
    [{ a: { b: 1 } }, { a: 7 }, { a: { b: 1 } }],
    [{ a: [1] }, { a: [1, 2] }, { a: [1] }],
    [{ a: 1 }, { a: 1 }, {}],
  ])("of %j, now %j, are %j", (before, now, patch) => {
    expect(formerFields(before, now)).toEqual(patch);
  });

  // RFC 7396, section 2, is what the patch is applied by.
  it("bring back exactly what there was, whatever was changed", () => {
    fc.assert(
      fc.property(group, group, (before, now) => {
        expect(mergePatch(now, formerFields(before, now))).toEqual(before);
      }),
    );
  });
});
