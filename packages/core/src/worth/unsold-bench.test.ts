import { expect, it } from "vitest";
import type { Bench } from "../graph/bench-graph.ts";
import { euros } from "./deal.test-kit.ts";
import { unsoldBench } from "./unsold-bench.ts";

const bench: Bench = {
  parts: [
    { id: "H", kind: "head" },
    { id: "A", kind: "adapter", soldFor: euros(500) },
    { id: "S", kind: "shaft" },
    { id: "G", kind: "grip", soldOn: "2026-05-01" },
  ],
  joints: [
    { type: "screwed", parts: ["H", "A"] },
    { type: "bonded", parts: ["A", "S"] },
  ],
  goal: { skill: "bond" },
};

it("leaves out what is sold and the joints it stood in, and nothing else", () => {
  expect(unsoldBench(bench)).toEqual({
    parts: [
      { id: "H", kind: "head" },
      { id: "S", kind: "shaft" },
    ],
    joints: [],
    goal: { skill: "bond" },
  });
});

it("is the bench itself where nothing is sold", () => {
  const all = { parts: [{ id: "H", kind: "head" as const }] };
  expect(unsoldBench(all)).toBe(all);
});
