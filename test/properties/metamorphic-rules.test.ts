import type { Claim, Goal, Part, PartKind, Skill } from "@ferrule/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileRule } from "../../packages/core/src/graph/compiled-rule.ts";
import type { Context } from "../../packages/core/src/graph/context.ts";
import { readFact } from "../../packages/core/src/graph/fact.ts";
import { type Judged, judgeRule } from "../../packages/core/src/graph/judge-rule.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { reference } from "../reference-tables.ts";
import { type Known, type RuleFacts, ruleFacts } from "./metamorphic-rule-facts.ts";

const runs = { numRuns: 400, seed: 20261125 };
const mustRules = rules.filter(({ strength }) => strength === "must");
const places = ["head", "adapter", "shaft", "grip"] as const;

/** Facts that no `must` rule reads: they may come at any time and change nothing. */
const besides: Known = {
  "head.massG": 203,
  "shaft.flex": "stiff",
  "shaft.maker": "Orvane",
  "grip.note": "dry",
};

/** What is so beside the parts, first and last. */
interface Around {
  readonly goal: Goal;
  readonly claims: readonly Claim[];
  readonly workSkill: Skill | undefined;
}

interface Drawn {
  readonly given: RuleFacts;
  readonly first: Known;
  readonly later: Known;
  readonly around: Around;
}

/** Each fact is known at first, or comes later, or never comes. */
function drawnOf(given: RuleFacts): fc.Arbitrary<Drawn> {
  const fact = (values: readonly unknown[]) =>
    fc.tuple(fc.constantFrom(...values), fc.constantFrom("first", "first", "later", "never"));
  const facts = Object.entries(given.values).map(([path, values]) => [path, fact(values)] as const);
  return fc
    .record({
      facts: fc.record(Object.fromEntries(facts)),
      goal: fc.constantFrom(...(given.goals ?? [{}])),
      claims: given.claims ? fc.subarray([...given.claims], { maxLength: 3 }) : fc.constant([]),
      workSkill: fc.constantFrom(...(given.workSkills ?? [undefined])),
    })
    .map(({ facts: drawn, ...around }) => {
      const known = (whens: readonly string[]) =>
        Object.fromEntries(
          Object.entries(drawn).flatMap(([path, [value, when]]) =>
            whens.includes(when) ? [[path, value]] : [],
          ),
        );
      const always = given.always ?? {};
      return {
        given,
        first: { ...always, ...known(["first"]) },
        later: { ...always, ...known(["first", "later"]), ...besides },
        around,
      };
    })
    .filter(({ later }) => !given.contradicts?.(later));
}

/** A part with these facts; a basis says nothing of a length that nobody knows. */
function partOf(kind: PartKind, id: string, known: Known): Part {
  const part: Record<string, unknown> = { id, kind };
  for (const [path, value] of Object.entries(known)) {
    const [place, ...keys] = path.split(".");
    if (place !== kind) continue;
    const last = keys.pop() ?? "";
    let at = part;
    for (const key of keys) {
      at[key] ??= {};
      at = at[key] as Record<string, unknown>;
    }
    at[last] = value;
  }
  const length = part["length"] as { lengthIn?: unknown } | undefined;
  if (length && length.lengthIn === undefined) delete part["length"];
  return part as Part;
}

/** The parts that the rule's facts stand on, and a head, a shaft and a grip; an adapter only where a receiver asks for one. */
function contextOf({ given, around }: Drawn, known: Known, name = (id: string) => id): Context {
  const asksAdapter =
    given.always?.["head.socket.type"] === "receiver" ||
    Object.keys(given.values).some((path) => path.startsWith("adapter."));
  const parts = places.filter((place) => place !== "adapter" || asksAdapter);
  return {
    ...Object.fromEntries(parts.map((place) => [place, partOf(place, name(place), known)])),
    ...around,
    typical: reference.typical,
  };
}

const isFit = ({ outcome }: Judged) => outcome.verdict === "fits" || outcome.verdict === "fits-with-work";
const isRefusal = ({ outcome }: Judged) => outcome.verdict === "does-not-fit";

/** A fit is proven where nothing it rests on is only typical, or only presumed. */
const isProvenFit = (judged: Judged, { given, first }: Drawn) =>
  isFit(judged) &&
  judged.typical.length === 0 &&
  (given.presumes ?? []).every((path) => first[path] !== undefined);

// Derived, no published source: it is what "proven" means. The facts are our own, chosen on both sides of every bound.
describe("every rule that refuses", () => {
  it("has facts to be tried with, and no other has", () => {
    expect(mustRules.length).toBeGreaterThan(15);
    expect(Object.keys(ruleFacts).sort()).toEqual(mustRules.map(({ id }) => id).sort());
  });
});

describe.each(mustRules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  const compiled = compileRule(rule);
  const drawn = fc.oneof(...(ruleFacts[id] ?? []).map(drawnOf));

  it("keeps what it has proven, whatever else comes to be known", () => {
    const met = { refusals: 0, fits: 0, open: 0 };
    fc.assert(
      fc.property(drawn, (one) => {
        const before = judgeRule(compiled, contextOf(one, one.first));
        const after = judgeRule(compiled, contextOf(one, one.later));
        if (isRefusal(before)) {
          met.refusals += 1;
          expect(after.outcome.verdict).toBe("does-not-fit");
        } else if (isProvenFit(before, one)) {
          met.fits += 1;
          expect(["fits", "fits-with-work"]).toContain(after.outcome.verdict);
        } else met.open += 1;
      }),
      runs,
    );
    expect(met.fits).toBeGreaterThan(10);
    // The one rule that only asks refuses nothing.
    if (id === "socket-type-known") expect(met.open).toBeGreaterThan(10);
    else expect(met.refusals).toBeGreaterThan(10);
  });

  it("says the same of parts under other names, of claims and faults in another order", () => {
    let told = 0;
    fc.assert(
      fc.property(drawn, fc.stringMatching(/^[a-z]{1,6}$/), (one, prefix) => {
        const turned = Object.fromEntries(
          Object.entries(one.first)
            .toReversed()
            .map(([path, value]) => [path, Array.isArray(value) ? value.toReversed() : value]),
        );
        const claims = one.around.claims.toReversed();
        const other = { ...one, around: { ...one.around, claims } };
        const renamed = judgeRule(
          compiled,
          contextOf(other, turned, (name) => `${prefix} ${name}`),
        );
        const judged = judgeRule(compiled, contextOf(one, one.first));
        expect(renamed).toEqual(judged);
        if (!isFit(judged) || judged.outcome.code !== undefined) told += 1;
      }),
      runs,
    );
    expect(told).toBeGreaterThan(10);
  });

  it("is asked with every fact that it reads, known and unknown", () => {
    const met = new Map<string, Set<string>>();
    fc.assert(
      fc.property(drawn, (one) => {
        const context = contextOf(one, one.first);
        for (const fact of [...compiled.needs, ...compiled.uses]) {
          const values = met.get(fact.name) ?? new Set();
          met.set(fact.name, values.add(JSON.stringify(readFact(fact, context)?.value) ?? "unknown"));
        }
      }),
      runs,
    );
    expect(met.size).toBe(compiled.needs.length + compiled.uses.length);
    expect([...met].filter(([, values]) => values.size < 2).map(([name]) => name)).toEqual([]);
  });
});
