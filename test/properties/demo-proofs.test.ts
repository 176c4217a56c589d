import { readFileSync } from "node:fs";
import { type Bench, resolveBench, rules, skills } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { graphOf } from "../../packages/core/src/graph/bench-graph.ts";
import { refusesOn } from "../../packages/core/src/resolve/proof.ts";
import { reference } from "../reference-tables.ts";

const demo: Bench = JSON.parse(readFileSync(new URL("../../data/demo/bench.json", import.meta.url), "utf8"));

/** Work may rest on a typical reading; the facts that one was looked up by were once left out of the proof. */
describe("the proofs of the example bench", () => {
  const goals = skills.flatMap((skill) =>
    [{}, { playingLengthIn: 44, targets: {} }].map((more) => ({ skill, ...more })),
  );

  it.each(goals)("stand on their facts and need each of them: %o", (wishes) => {
    const bench = { ...demo, goal: { ...demo.goal, ...wishes } };
    const result = resolveBench(bench, rules, reference);
    const built = graphOf(bench, rules, reference);
    if (!result.ok || !built.ok) throw new Error("the example bench does not hold together");
    expect(result.resolution.nearMisses.length).toBeGreaterThan(0);
    for (const miss of result.resolution.nearMisses) {
      expect(refusesOn(miss.proof.facts, miss, built.graph), miss.proof.text).toBe(true);
      for (const fact of miss.proof.facts) {
        const others = miss.proof.facts.filter((other) => other !== fact);
        expect(refusesOn(others, miss, built.graph), `${miss.proof.text} needs ${JSON.stringify(fact)}`).toBe(
          false,
        );
      }
    }
  });
});
