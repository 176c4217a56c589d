import type { Part } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bench } from "../../packages/core/src/graph/bench-graph.ts";
import { type ReadyBench, readyBench, withParts } from "../../packages/core/src/resolve/ready-bench.ts";
import { clubsAndWants, resolveReady } from "../../packages/core/src/resolve/resolve-bench.ts";
import type { Club } from "../../packages/core/src/resolve/result.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { type SmallBench, smallBench } from "../oracle/random-bench.ts";
import { reference } from "../reference-tables.ts";

const runs = { numRuns: 150, seed: 20260531 };

function ready(bench: Bench): ReadyBench {
  const made = readyBench(bench, rules, reference);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.ready;
}

/** A bench taken apart in two: the parts that lie there first, and those put on it after, with the joints of each. */
function apart(bench: SmallBench, stays: (part: Part, index: number) => boolean) {
  const parts = bench.parts.filter(stays);
  const ids = new Set(parts.map(({ id }) => id));
  const isAmong = ({ parts: [a, b] }: SmallBench["joints"][number]) => ids.has(a) && ids.has(b);
  return {
    before: { ...bench, parts, joints: bench.joints.filter(isAmong) },
    parts: bench.parts.filter(({ id }) => !ids.has(id)),
    joints: bench.joints.filter((joint) => !isAmong(joint)),
  };
}

/** The same parts and joints in the order in which they were laid down. */
const together = ({ before, parts, joints }: ReturnType<typeof apart>): Bench => ({
  ...before,
  parts: [...before.parts, ...parts],
  joints: [...before.joints, ...joints],
});

const masks = fc.array(fc.boolean(), { minLength: 11, maxLength: 11 });

describe("a ready bench with more parts on it", () => {
  it("answers as the whole bench made ready, whatever has been asked of it before", () => {
    fc.assert(
      fc.property(smallBench, masks, fc.boolean(), (bench, mask, asksBefore) => {
        const split = apart(bench, (_, index) => mask[index] ?? false);
        const base = ready(split.before);
        const alone = resolveReady(ready(split.before));
        if (asksBefore) resolveReady(base);
        const grown = withParts(base, split.parts, split.joints);
        const whole = together(split);
        expect(resolveReady(grown)).toEqual(resolveReady(ready(whole)));
        for (const { id } of bench.parts)
          expect(clubsAndWants(grown, id)).toEqual(clubsAndWants(ready(whole), id));
        expect(resolveReady(base)).toEqual(alone);
      }),
      runs,
    );
  });

  it("answers for one listing after another, none of which is left on the bench", () => {
    fc.assert(
      fc.property(smallBench, fc.array(smallBench, { minLength: 2, maxLength: 4 }), (bench, listings) => {
        const base = ready(bench);
        for (const listing of listings) {
          const parts = listing.parts.map((part) => ({ ...part, id: `listed ${part.id}` }));
          const joints = listing.joints.map(({ type, parts: [a, b] }) => ({
            type,
            parts: [`listed ${a}`, `listed ${b}`] as [string, string],
          }));
          const whole = ready({
            ...bench,
            parts: [...bench.parts, ...parts],
            joints: [...bench.joints, ...joints],
          });
          expect(resolveReady(withParts(base, parts, joints))).toEqual(resolveReady(whole));
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });

  it("is not made where a part's id is taken or a joint cannot be", () => {
    const head: Part = { id: "H", kind: "head" };
    const shaft: Part = { id: "S", kind: "shaft" };
    const base = ready({ parts: [head, shaft], joints: [{ type: "bonded", parts: ["H", "S"] }] });
    expect(() => withParts(base, [{ ...shaft, id: "H" }])).toThrow("an id that no other part");
    expect(() => withParts(base, [{ ...shaft, id: "S2" }], [{ type: "bonded", parts: ["H", "S2"] }])).toThrow(
      "at most one joint at each end",
    );
  });
});

/** Clubs as they are judged for their worth: without measures and words, and with no question where nothing is open. */
const weighed = (clubs: readonly Club[]) =>
  clubs.map(({ estimates: _measures, findings: _words, questions, ...club }) => ({
    ...club,
    questions: club.verdict === "unsettled" ? questions : [],
  }));

describe("asking for clubs and wants alone", () => {
  it("gives those of the whole answer, and as many as are asked for", () => {
    fc.assert(
      fc.property(smallBench, fc.integer({ min: 1, max: 4 }), (bench, limit) => {
        const all = resolveReady(ready({ ...bench, goal: { ...bench.goal, limit } }));
        const { clubs, wants } = all;
        expect(clubsAndWants(ready(bench), undefined, limit)).toEqual({ clubs: weighed(clubs), wants });
        for (const { id, kind } of bench.parts) {
          if (kind !== "head" && kind !== "shaft") continue;
          const one = resolveReady(ready({ ...bench, goal: { ...bench.goal, limit } }), id);
          expect(clubsAndWants(ready(bench), id, limit).clubs).toEqual(weighed(one.clubs));
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });
});
