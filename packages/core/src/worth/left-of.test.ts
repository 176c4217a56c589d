import { expect, it } from "vitest";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import { clustersOf } from "./clusters.ts";
import { leftOf } from "./left-of.ts";

const parts: Part[] = [
  { id: "H", kind: "head" },
  { id: "A", kind: "adapter" },
  { id: "S", kind: "shaft" },
  { id: "G", kind: "grip" },
  { id: "C", kind: "cover" },
];
const joints: Joint[] = [
  { type: "screwed", parts: ["H", "A"] },
  { type: "bonded", parts: ["A", "S"] },
  { type: "gripped", parts: ["S", "G"] },
];

it.each([
  [["H"], ["A S G", "C"]],
  [["A"], ["H", "S G", "C"]],
  [
    ["A", "S"],
    ["H", "C"],
  ],
  [["S"], ["H A", "C"]],
  [["H", "A", "S", "G", "C"], []],
])("leaves of a club without %s what is still joined", (taken, expected) => {
  const left = leftOf(parts, new Set(taken), joints).map((piece) => piece.map(({ id }) => id).join(" "));
  expect(left).toEqual(expected);
});

it("puts parts that are joined through others into one thing, in whatever order the joints come", () => {
  for (const order of [joints, joints.toReversed()]) {
    const clusters = clustersOf(parts, order);
    expect(clusters.get("H")).toBe(clusters.get("G"));
    expect(new Set(clusters.get("A")?.map(({ id }) => id))).toEqual(new Set(["H", "A", "S", "G"]));
    expect(clusters.get("C")?.map(({ id }) => id)).toEqual(["C"]);
  }
});
