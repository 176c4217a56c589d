import type { Resolution } from "@ferrule/core";
import { skills } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { graphOf } from "../../packages/core/src/graph/bench-graph.ts";
import { refusesOn } from "../../packages/core/src/resolve/proof.ts";
import { resolveBench } from "../../packages/core/src/resolve/resolve-bench.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { bruteForce } from "../oracle/brute-force.ts";
import { type SmallBench, smallBench } from "../oracle/random-bench.ts";
import { reference } from "../reference-tables.ts";

const runs = { numRuns: 300, seed: 20260531 };

function resolve(bench: SmallBench): Resolution {
  const result = resolveBench({ ...bench, goal: { ...bench.goal, limit: 5000 } }, rules, reference);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.resolution;
}

const pairs = ({ clubs }: Resolution) =>
  new Map(clubs.map(({ head, shaft, verdict }) => [`${head} ${shaft}`, verdict]));

describe("the resolver", () => {
  it("agrees with listing every combination, on every pair of head and shaft", () => {
    fc.assert(
      fc.property(smallBench, (bench) => {
        const expected = bruteForce(bench, reference);
        expect(Object.fromEntries([...pairs(resolve(bench))].sort())).toEqual(
          Object.fromEntries([...expected].sort()),
        );
      }),
      runs,
    );
  });

  it("refuses on the cited facts alone, and no longer when any one of them is dropped", () => {
    let proofs = 0;
    fc.assert(
      fc.property(smallBench, (bench) => {
        const built = graphOf(
          { ...bench, goal: { ...bench.goal, skill: bench.goal.skill ?? "screw" } },
          rules,
          reference,
        );
        if (!built.ok) throw new Error(JSON.stringify(built.refusals));
        for (const miss of resolve(bench).nearMisses) {
          proofs += 1;
          expect(
            refusesOn(miss.proof.facts, miss, built.graph),
            `${miss.proof.text} stands on its facts`,
          ).toBe(true);
          for (const fact of miss.proof.facts) {
            const others = miss.proof.facts.filter((other) => other !== fact);
            expect(
              refusesOn(others, miss, built.graph),
              `${miss.proof.text} needs ${JSON.stringify(fact)}`,
            ).toBe(false);
          }
        }
      }),
      runs,
    );
    expect(proofs).toBeGreaterThan(200);
  });

  it("gives the same answer whatever the order of the parts, joints and claims", () => {
    fc.assert(
      fc.property(smallBench, (bench) => {
        const turned = {
          ...bench,
          parts: bench.parts.toReversed(),
          joints: bench.joints.toReversed(),
          claims: bench.claims.toReversed(),
        };
        expect(resolve(turned)).toEqual(resolve(bench));
      }),
      { ...runs, numRuns: 100 },
    );
  });

  it("opens as many clubs with a higher skill as it says it would", () => {
    fc.assert(
      fc.property(smallBench, (bench) => {
        const now = resolve(bench);
        for (const { skill, moreClubs } of now.skillOpens) {
          const then = resolve({ ...bench, goal: { ...bench.goal, skill } });
          expect(then.counts.clubs - now.counts.clubs, `with ${skill}`).toBe(moreClubs);
        }
        expect(now.skillOpens.map(({ skill }) => skill)).toEqual(skills.slice(skills.indexOf(now.skill) + 1));
      }),
      { ...runs, numRuns: 150 },
    );
  });

  it("says of one head or shaft what it says of it among all", () => {
    fc.assert(
      fc.property(smallBench, (bench) => {
        const all = resolve(bench);
        for (const { id, kind } of bench.parts.filter(
          (part) => part.kind === "head" || part.kind === "shaft",
        )) {
          const result = resolveBench(
            { ...bench, goal: { ...bench.goal, limit: 5000 } },
            rules,
            reference,
            id,
          );
          if (!result.ok) throw new Error(JSON.stringify(result.refusals));
          const place = kind as "head" | "shaft";
          const ids = ({ clubs }: Resolution) =>
            clubs.filter((club) => club[place] === id).map((club) => club.id);
          expect(ids(result.resolution)).toEqual(ids(all));
          expect(result.resolution.counts.nearMisses).toBe(
            all.nearMisses.filter((miss) => miss[place] === id).length,
          );
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });

  it("never makes a worse club because a part was added that nothing is joined to", () => {
    fc.assert(
      fc.property(smallBench, smallBench, (bench, other) => {
        const more = other.parts.map((part) => ({ ...part, id: `more ${part.id}` }));
        const richer = pairs(resolve({ ...bench, parts: [...bench.parts, ...more] }));
        const order = ["fits", "fits-with-work", "unsettled"];
        for (const [pair, verdict] of pairs(resolve(bench))) {
          expect(order.indexOf(richer.get(pair) ?? ""), pair).toBeLessThanOrEqual(order.indexOf(verdict));
          expect(richer.has(pair), pair).toBe(true);
        }
      }),
      { ...runs, numRuns: 150 },
    );
  });
});
