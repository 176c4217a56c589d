import type { Joint, Part } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { clubsOnBench } from "./clubs-on-bench.ts";

const part = (id: string, kind: Part["kind"]) => ({ id, kind }) as Part;
const parts = [
  part("H1", "head"),
  part("H2", "head"),
  part("A1", "adapter"),
  part("S1", "shaft"),
  part("G1", "grip"),
];
const joints: Joint[] = [
  { type: "gripped", parts: ["S1", "G1"] },
  { type: "bonded", parts: ["A1", "S1"] },
  { type: "screwed", parts: ["H1", "A1"] },
];

describe("the clubs that are put together", () => {
  it("are heads with all that is joined to them, whichever way the joints are written", () => {
    expect(clubsOnBench(parts, joints)).toEqual([["H1", "A1", "S1", "G1"]]);
  });

  it("do not count a head that has no shaft, or one whose shaft is gone", () => {
    expect(clubsOnBench(parts, joints.slice(2))).toEqual([]);
    expect(
      clubsOnBench(
        parts.filter(({ id }) => id !== "A1"),
        joints,
      ),
    ).toEqual([]);
  });
});
