import { describe, expect, it } from "vitest";
import { LastKept } from "./last-kept.ts";

describe("the last kept", () => {
  it("is made once, and lets go of what was not asked for the longest", () => {
    const made: string[] = [];
    const kept = new LastKept<string>(2);
    const ask = (name: string) =>
      kept.ask(name, () => {
        made.push(name);
        return name.toUpperCase();
      });
    expect(["a", "b", "a", "c", "a"].map(ask)).toEqual(["A", "B", "A", "C", "A"]);
    expect(made).toEqual(["a", "b", "c"]);
    expect(["a", "b", "c"].map((name) => kept.has(name))).toEqual([true, false, true]);
  });
});
