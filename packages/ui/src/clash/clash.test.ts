import { describe, expect, it } from "vitest";
import { clashOf, mergedUnasked, sentAgain } from "./clash-of.ts";
import { chosenOf, sidesOf } from "./sides.ts";

const base = { id: "S01", massG: 60, note: "as it came", flex: "stiff" };
const mine = { id: "S01", massG: 61, note: "mine", flex: "stiff" };
const present = { id: "S01", massG: 60, note: "theirs", flex: "regular" };

describe("two versions side by side", () => {
  it("name the fields in which they differ and who changed each, those of both first", () => {
    expect(sidesOf(base, mine, present)).toEqual([
      { field: "note", mine: "mine", theirs: "theirs", by: "both" },
      { field: "massG", mine: 61, theirs: 60, by: "me" },
      { field: "flex", mine: "stiff", theirs: "regular", by: "them" },
    ]);
  });

  it("become one with what only one side changed kept, and mine where nothing is chosen", () => {
    expect(chosenOf(base, mine, present, new Map())).toEqual({
      id: "S01",
      massG: 61,
      note: "mine",
      flex: "regular",
    });
  });

  it("become one as chosen field by field", () => {
    const choices = new Map([
      ["note", "theirs"],
      ["massG", "theirs"],
      ["flex", "mine"],
    ] as const);
    expect(chosenOf(base, mine, present, choices)).toEqual({
      id: "S01",
      massG: 60,
      note: "theirs",
      flex: "stiff",
    });
  });

  it("lose a field where the chosen side has none", () => {
    const { note: _note, ...gone } = present;
    expect(chosenOf(base, mine, gone, new Map([["note", "theirs"]]))).not.toHaveProperty("note");
  });
});

describe("a change of a few fields", () => {
  const sent = { method: "PUT", path: "/api/costs", body: { massG: 61 } };
  const from = { base, sendsFields: true, merges: true };

  it("is put together unasked with a change of other fields, and sends its own alone", () => {
    const clash = clashOf(sent, from, present);
    const settled = mergedUnasked(clash, from);
    expect(settled).toEqual({ is: "mine", thing: { id: "S01", massG: 61, note: "theirs", flex: "regular" } });
    expect(sentAgain(sent, from, clash, settled?.is === "mine" ? settled.thing : null)).toEqual(sent);
  });

  it("is asked about where both changed the same field", () => {
    expect(mergedUnasked(clashOf(sent, from, { ...present, massG: 70 }), from)).toBeUndefined();
  });

  it("sends nothing where theirs was chosen for all of it", () => {
    const there = { ...present, massG: 70 };
    expect(sentAgain(sent, from, clashOf(sent, from, there), there)).toBeUndefined();
  });

  it("takes a field away by a null in a patch, and keeps a null that is a value", () => {
    const patch = { method: "PATCH", path: "/api/watch/w1", body: { note: null } };
    expect(clashOf(patch, { base: { ...base, cap: null }, sendsFields: true }, present).mine).toEqual({
      id: "S01",
      massG: 60,
      flex: "stiff",
      cap: null,
    });
  });
});

describe("a change of something that is gone", () => {
  it("puts it into its list again", () => {
    const sent = { method: "PUT", path: "/api/bench/parts/S01", body: mine };
    expect(sentAgain(sent, { base }, clashOf(sent, { base }, null), mine)).toEqual({
      method: "POST",
      path: "/api/bench/parts",
      body: mine,
    });
  });
});
