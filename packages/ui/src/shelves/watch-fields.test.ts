import { watchSchema } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { refusalsAtNeeds, watchFields, watchOf } from "./watch-fields.ts";

describe("something watched for by hand", () => {
  it("is what the form says, its needs by their field paths", () => {
    const watch = watchOf("shaft", {
      text: "a long stiff one",
      "need:adapter:family": "Tarnlock",
      "need:length:lengthIn": 44,
      capMinor: 3000,
    });
    expect(watch).toEqual({
      kind: "shaft",
      text: "a long stiff one",
      needs: { "adapter.family": "Tarnlock", "length.lengthIn": { atLeast: 44 } },
      capMinor: 3000,
      by: "hand",
    });
    expect(watchSchema.safeParse({ id: "watch-1", ...watch }).success).toBe(true);
  });

  it("is refused at the field that the form shows it in", () => {
    const [refusal] = refusalsAtNeeds([{ field: "needs.tip.diameterIn", got: "9", expected: "less" }]);
    expect(watchFields("shaft", "EUR").some(({ path }) => path === refusal?.field)).toBe(true);
  });
});
