import { type Part, type Reference, type Skill, skills, type Verdict, verdicts } from "@ferrule/core";
import { compileRule } from "../../packages/core/src/graph/compiled-rule.ts";
import type { Context } from "../../packages/core/src/graph/context.ts";
import { judgeRoute } from "../../packages/core/src/graph/judge-route.ts";
import type { Place } from "../../packages/core/src/graph/shape.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import type { SmallBench } from "./random-bench.ts";

const compiled = rules.filter(({ strength }) => strength === "must").map(compileRule);

/**
 * The best verdict of every head and shaft, found by listing every combination of parts and judging each afresh: no classes,
 * no index, no pruning. Slow on purpose, and kept because it is easy to read.
 */
export function bruteForce(bench: SmallBench, reference: Reference): Map<string, Verdict> {
  const best = new Map<string, Verdict>();
  const of = (kind: Part["kind"]) => bench.parts.filter((part) => part.kind === kind);
  for (const head of of("head")) {
    for (const shaft of of("shaft")) {
      for (const adapter of [undefined, ...of("adapter")]) {
        for (const grip of of("grip")) {
          const verdict = verdictOf({ head, adapter, shaft, grip }, bench, reference);
          if (verdict === "does-not-fit") continue;
          const key = `${head.id} ${shaft.id}`;
          const known = best.get(key);
          if (!known || verdicts.indexOf(verdict) < verdicts.indexOf(known)) best.set(key, verdict);
        }
      }
    }
  }
  return best;
}

interface Combination {
  readonly head: Part;
  readonly adapter: Part | undefined;
  readonly shaft: Part;
  readonly grip: Part;
}

function verdictOf(parts: Combination, bench: SmallBench, reference: Reference): Verdict {
  const { head, adapter, shaft, grip } = parts;
  const socket = head.kind === "head" ? head.socket?.type : undefined;
  if (adapter ? socket === "bore" : socket === "receiver") return "does-not-fit";
  const joined = (a: string, b: string) =>
    bench.joints.some((joint) => joint.parts.includes(a) && joint.parts.includes(b));
  const links: [Part, Part, Place, Place, Skill][] = adapter
    ? [
        [head, adapter, "head", "adapter", "screw"],
        [adapter, shaft, "adapter", "shaft", "bond"],
        [shaft, grip, "shaft", "grip", "regrip"],
      ]
    : [
        [head, shaft, "head", "shaft", "bond"],
        [shaft, grip, "shaft", "grip", "regrip"],
      ];
  const standing = links.filter(([a, b]) => joined(a.id, b.id)).map(([, , a, b]) => new Set([a, b]));
  const sets = standing.flatMap((set, index) => {
    const next = standing[index + 1];
    return next && [...set].some((place) => next.has(place)) ? [new Set([...set, ...next])] : [set];
  });
  const whole = standing.length === 3 ? [new Set<Place>(["head", "adapter", "shaft", "grip"])] : [];
  const missing = links.filter(([a, b]) => !joined(a.id, b.id));
  const skill = highest([...missing.map(([, , , , needed]) => needed), ...undoing(missing, bench)]);
  const context: Context = {
    ...parts,
    goal: { ...bench.goal, skill: bench.goal.skill ?? "screw" },
    claims: bench.claims,
    typical: reference.typical,
    gripped: bench.joints.some(({ type, parts: ids }) => type === "gripped" && ids.includes(shaft.id)),
    bonded: bench.joints.some(({ type, parts: ids }) => type === "bonded" && ids.includes(shaft.id)),
  };
  const work = new Map(reference.work.map((row) => [row.step, row]));
  const stand = reference.work.find((row) => row.skill === skill) as { step: string };
  const judged = judgeRoute(
    compiled,
    context,
    [...sets, ...standing, ...whole],
    [{ step: stand.step }],
    work,
  );
  const worst = Math.max(...judged.map(({ outcome }) => verdicts.indexOf(outcome.verdict)));
  const steps = judged
    .flatMap(({ outcome }) => outcome.steps ?? [])
    .map(({ step }) => work.get(step)?.skill ?? "screw");
  const needsWork = highest([skill, ...steps]) !== "screw";
  return worst === 0 && needsWork ? "fits-with-work" : (verdicts[worst] as Verdict);
}

/** The skills that undoing the joints in the way takes: a screw for a screwed joint, epoxy or a grip for the others. */
function undoing(missing: readonly [Part, Part, Place, Place, Skill][], bench: SmallBench): Skill[] {
  return missing.flatMap(([a, b, placeA, placeB]) => {
    const inTheWay = bench.joints.filter(({ type, parts }) => {
      if (placeB === "grip") return type === "gripped" && (parts.includes(a.id) || parts.includes(b.id));
      if (placeA === "head" && parts.includes(a.id)) return true;
      if (placeB === "adapter") return type === "screwed" && parts.includes(b.id);
      return type === "bonded" && (parts.includes(a.id) || parts.includes(b.id));
    });
    return inTheWay.map(
      ({ type }): Skill => (type === "screwed" ? "screw" : type === "gripped" ? "regrip" : "bond"),
    );
  });
}

function highest(needed: readonly Skill[]): Skill {
  return skills[Math.max(0, ...needed.map((skill) => skills.indexOf(skill)))] as Skill;
}
