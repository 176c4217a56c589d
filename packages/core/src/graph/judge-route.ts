import type { StepNeeded } from "../findings/outcome.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { WorkRow } from "../parts/reference.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { type Context, placeOfRole } from "./context.ts";
import { applies, type Judged, judgeRule } from "./judge-rule.ts";
import type { Place } from "./shape.ts";

/** A rule's answer in a context. */
export interface RouteFinding extends Judged {
  readonly compiled: CompiledRule;
}

/** Sets of places that are joined already: what such a joint leaves unknown need not be asked. */
export type JoinedSets = readonly ReadonlySet<Place>[];

/** The higher of two skills. */
export function higherSkill(a: Skill, b: Skill): Skill {
  return skills.indexOf(a) >= skills.indexOf(b) ? a : b;
}

/** Steps of work by code. */
export type WorkTable = ReadonlyMap<string, WorkRow>;

/** The skill that the dearest of these steps asks for. */
export function skillOfSteps(steps: readonly StepNeeded[], work: WorkTable): Skill {
  return steps.reduce<Skill>((skill, { step }) => higherSkill(skill, workRow(step, work).skill), "screw");
}

/** The row of the work table for a step; a rule that names a step nobody has described is our bug. */
export function workRow(step: string, work: WorkTable): WorkRow {
  const row = work.get(step);
  if (!row) throw new Error(`no row in the work table for the step "${step}"`);
  return row;
}

/**
 * A joint already made answers what is unknown between the parts it joins, and there is nothing left to do there; what is
 * known to be wrong stays wrong.
 */
export function settledByJoint(
  compiled: CompiledRule,
  judged: Judged,
  context: Context,
  joined: JoinedSets,
): Judged {
  const verdict = judged.outcome.verdict;
  if (verdict !== "unsettled" && verdict !== "fits-with-work") return judged;
  return isCovered(compiled, context, joined)
    ? { outcome: { verdict: "fits" }, missing: [], typical: [] }
    : judged;
}

/** Whether standing joints hold together all the places that an interface rule reads. */
export function isCovered(
  compiled: CompiledRule,
  context: Pick<Context, Place>,
  joined: JoinedSets,
): boolean {
  if (compiled.rule.grain !== "interface") return false;
  const found = [...compiled.needs, ...compiled.uses].map(({ role }) => placeOfRole(role, context));
  const filled = [...new Set(found.filter((place) => place !== undefined))];
  return filled.length > 1 && joined.some((set) => filled.every((place) => set.has(place)));
}

/** Every rule's answer; rules on the work itself are judged last, when the rest has said what work there is. */
export function judgeRoute(
  rules: readonly CompiledRule[],
  context: Context,
  joined: JoinedSets,
  joinSteps: readonly StepNeeded[],
  work: WorkTable,
): RouteFinding[] {
  const judged = rules
    .filter((compiled) => !compiled.readsWork && applies(compiled, context))
    .map((compiled): RouteFinding => ({ compiled, ...judgeRule(compiled, context) }));
  return settledRoute(judged, rules, context, joined, joinSteps, work);
}

/** The same from what the rules came to that do not read the work, before joints already made were looked at. */
export function settledRoute(
  judged: readonly RouteFinding[],
  rules: readonly CompiledRule[],
  context: Context,
  joined: JoinedSets,
  joinSteps: readonly StepNeeded[],
  work: WorkTable,
): RouteFinding[] {
  const settled = (finding: RouteFinding): RouteFinding => {
    const by = settledByJoint(finding.compiled, finding, context, joined);
    return by === finding ? finding : { compiled: finding.compiled, ...by };
  };
  const first = judged.map(settled);
  const steps = [
    ...joinSteps,
    ...first.flatMap(({ compiled, outcome }) =>
      compiled.rule.strength === "must" ? (outcome.steps ?? []) : [],
    ),
  ];
  const withWork: Context = { ...context, workSkill: skillOfSteps(steps, work) };
  const last = rules.filter((compiled) => compiled.readsWork);
  return [...first, ...last.map((compiled) => settled({ compiled, ...judgeRule(compiled, withWork) }))];
}

/** Whether any of these rules refuses: the same as looking through `judgeRoute`, and done at the first that does. */
export function anyRefuses(
  musts: readonly CompiledRule[],
  context: Context,
  joined: JoinedSets,
  joinSteps: readonly StepNeeded[],
  work: WorkTable,
): boolean {
  const steps = [...joinSteps];
  for (const compiled of musts) {
    if (compiled.readsWork || !applies(compiled, context)) continue;
    const judged = judgeRule(compiled, context);
    if (judged.outcome.verdict === "does-not-fit") return true;
    steps.push(...(settledByJoint(compiled, judged, context, joined).outcome.steps ?? []));
  }
  const withWork: Context = { ...context, workSkill: skillOfSteps(steps, work) };
  return musts.some(
    (compiled) => compiled.readsWork && judgeRule(compiled, withWork).outcome.verdict === "does-not-fit",
  );
}
