import type { Goal, Part, Resolution } from "@ferrule/core";
import { skills } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { resolveBench } from "../../packages/core/src/resolve/resolve-bench.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { type SmallBench, smallBench } from "../oracle/random-bench.ts";
import { reference } from "../reference-tables.ts";

const runs = { numRuns: 60, seed: 20261125 };

function resolve(bench: SmallBench): Resolution {
  const result = resolveBench({ ...bench, goal: { ...bench.goal, limit: 5000 } }, rules, reference);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.resolution;
}

/** The same bench with facts that go together wherever one is known, so that most pairs make a club. */
function kinder(bench: SmallBench): SmallBench {
  const agreed: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
    head: { clubType: "driver", hand: "right", volumeCm3: 440, faults: [] },
    adapter: { family: "Alder", hand: "right", faults: [] },
    shaft: { suits: "wood", faults: [] },
    grip: { coreDiameterIn: 0.6, lengthIn: 10.5 },
    socket: { diameterIn: 0.335, form: "parallel", depthIn: 1.5, family: "Alder" },
    bore: { diameterIn: 0.335, depthIn: 1.3 },
    tip: { diameterIn: 0.335, form: "parallel", parallelSectionIn: 3, trimmedIn: 0 },
    length: { lengthIn: 44 },
  };
  const withAgreed = (kind: string, known: object): object =>
    Object.fromEntries(
      Object.entries(known).map(([name, value]) => {
        const own = agreed[kind]?.[name];
        if (own !== undefined) return [name, own];
        return [name, agreed[name] && typeof value === "object" ? withAgreed(name, value) : value];
      }),
    );
  const grip: Part = { id: "G9", kind: "grip" };
  return {
    ...bench,
    parts: [...bench.parts.map((part) => withAgreed(part.kind, part) as Part), grip],
    claims: [],
    goal: { skill: "machine" },
  };
}

const anyBench = fc.oneof(smallBench, smallBench.map(kinder), smallBench.map(kinder));

/** Every pair that some club is made of, with its verdict, by the names that `own` gives its parts. */
const pairs = ({ clubs }: Resolution, own = (id: string) => id) =>
  Object.fromEntries(
    clubs.map(({ head, shaft, verdict }) => [`${own(head)} ${own(shaft)}`, verdict] as const).sort(),
  );

/** Every pair that no club is made of. */
const refusals = ({ nearMisses }: Resolution, own = (id: string) => id) =>
  nearMisses.map(({ head, shaft }) => `${own(head)} ${own(shaft)}`).sort();

/** Wishes added to those of a goal: none is taken back, and none lets more be done. */
const stricter = (goal: Goal): fc.Arbitrary<Goal> => {
  const skillAt = skills.indexOf(goal.skill ?? "screw");
  return fc.record({
    hand: goal.hand ? fc.constant(goal.hand) : fc.constantFrom(undefined, "right" as const, "left" as const),
    playingLengthIn: goal.playingLengthIn
      ? fc.constant(goal.playingLengthIn)
      : fc.constantFrom(undefined, 39, 45, 47),
    localRule46: goal.localRule46 ? fc.constant(true) : fc.constantFrom(goal.localRule46, true),
    skill: fc.constantFrom(...skills.slice(0, skillAt + 1)),
    flex: fc.constantFrom(undefined, "stiff" as const),
  });
};

/** The places of the fields that somebody could have left out: a part keeps its id and its kind. */
function withoutFields(part: Part, drawn: readonly boolean[]): Part {
  const kept = Object.entries(part).filter(
    ([key], at) => key === "id" || key === "kind" || !drawn[at % drawn.length],
  );
  return Object.fromEntries(kept) as Part;
}

// Derived, no published source: each follows from what a wish, a name and an unknown fact mean.
describe("a bench", { timeout: 120_000 }, () => {
  it("makes no more clubs, and none of another pair, for a stricter goal", () => {
    const met = { fewer: 0, same: 0 };
    fc.assert(
      fc.property(
        anyBench.chain((bench) => fc.record({ bench: fc.constant(bench), goal: stricter(bench.goal) })),
        ({ bench, goal }) => {
          const loose = pairs(resolve(bench));
          const strict = pairs(resolve({ ...bench, goal: JSON.parse(JSON.stringify(goal)) }));
          expect(Object.keys(strict).filter((pair) => !(pair in loose))).toEqual([]);
          if (Object.keys(strict).length < Object.keys(loose).length) met.fewer += 1;
          else if (Object.keys(loose).length > 0) met.same += 1;
        },
      ),
      runs,
    );
    expect(met.fewer).toBeGreaterThan(4);
    expect(met.same).toBeGreaterThan(4);
  });

  /** The bench with every part under another name. */
  function renamed(bench: SmallBench, named: (id: string) => string): SmallBench {
    return {
      ...bench,
      parts: bench.parts.map((part) => ({ ...part, id: named(part.id) })),
      joints: bench.joints.map(({ type, parts: [a, b] }) => ({ type, parts: [named(a), named(b)] })),
    };
  }

  it("makes the same clubs of parts under other names, whichever name comes first", () => {
    const met = { clubs: 0, refusals: 0 };
    fc.assert(
      fc.property(anyBench, fc.boolean(), (bench, isTurned) => {
        const ids = bench.parts.map(({ id }) => id).sort();
        const place = (id: string) => (isTurned ? ids.length - ids.indexOf(id) : ids.indexOf(id));
        const named = (id: string) => `part ${String(place(id)).padStart(2, "0")}`;
        const [own, other] = [resolve(bench), resolve(renamed(bench, named))];
        expect(pairs(other)).toEqual(pairs(own, named));
        expect(refusals(other)).toEqual(refusals(own, named));
        // Of ways that are alike the one whose names come first is told, and its questions with it.
        if (!isTurned) expect(other.counts).toEqual(own.counts);
        met.clubs += own.counts.clubs;
        met.refusals += own.counts.nearMisses;
      }),
      runs,
    );
    expect(met.clubs).toBeGreaterThan(40);
    expect(met.refusals).toBeGreaterThan(40);
  });

  it("loses no club because less is known of its parts", () => {
    const met = { more: 0, same: 0 };
    fc.assert(
      fc.property(anyBench, fc.array(fc.boolean(), { minLength: 13, maxLength: 13 }), (bench, drawn) => {
        // Faults are left as they are: a fault that nobody mentions is no fault, so hiding one is more than not knowing.
        const parts = bench.parts.map((part) => ({
          ...withoutFields(part, drawn),
          ...(part.faults ? { faults: part.faults } : {}),
        }));
        const full = pairs(resolve(bench));
        const bare = pairs(resolve({ ...bench, parts }));
        expect(Object.keys(full).filter((pair) => !(pair in bare))).toEqual([]);
        if (Object.keys(bare).length > Object.keys(full).length) met.more += 1;
        else if (Object.keys(full).length > 0) met.same += 1;
      }),
      runs,
    );
    expect(met.more).toBeGreaterThan(4);
    expect(met.same).toBeGreaterThan(4);
  });
});
