import { typicalConditions } from "../parts/typical.ts";
import type { FactPath, FactPaths, Rule } from "../rules/rule.ts";
import { type CompiledFact, compileFact, placesOf } from "./fact.ts";
import { isTargetField } from "./goal-fact.ts";
import { type Place, places } from "./shape.ts";

/** A rule with its fact paths taken apart, and what of each part it depends on. */
export interface CompiledRule {
  readonly rule: Rule;
  readonly needs: readonly CompiledFact[];
  readonly uses: readonly CompiledFact[];
  /** The roles that must be filled for the rule to say anything. */
  readonly asksFor: readonly CompiledFact["role"][];
  readonly readsWork: boolean;
  /** By place, the paths of the fields that its outcome depends on. */
  readonly depends: Readonly<Record<Place, readonly (readonly string[])[]>>;
}

export function compileRule(rule: Rule): CompiledRule {
  const compile = (paths: FactPaths = {}) =>
    Object.entries(paths).map(([name, path]) =>
      compileFact(name, path, rule.typical?.includes(name) ?? false),
    );
  const needs = compile(rule.needs);
  const uses = compile(rule.uses);
  const roles = (facts: readonly CompiledFact[]) => [
    ...new Set(facts.map(({ role }) => role).filter((role) => role !== "goal" && role !== "work")),
  ];
  return {
    rule,
    needs,
    uses,
    asksFor:
      needs.length > 0
        ? roles(needs)
        : roles(uses).filter((role) => role !== "grip" || roles(uses).length === 1),
    readsWork: [...needs, ...uses].some(({ role }) => role === "work"),
    depends: dependsOf([...needs, ...uses], rule.readsClaims),
  };
}

/** By place, the paths of the fields that these facts, and whether they are there at all, depend on. */
export function dependsOf(facts: readonly CompiledFact[], readsClaims = false): CompiledRule["depends"] {
  const found: Record<Place, Set<string>> = {
    head: new Set(),
    adapter: new Set(),
    shaft: new Set(),
    grip: new Set(),
  };
  for (const fact of facts) addDependencies(fact, found);
  if (facts.some((fact) => fact.derived || fact.mayBeTypical)) {
    for (const place of places) for (const path of typicalConditions) found[place].add(path);
  }
  if (facts.some(({ role }) => role === "holder") || readsClaims) found.head.add("socket.type");
  if (facts.some((fact) => fact.role === "goal" && isTargetField(fact.path))) found.head.add("clubType");
  const split = (place: Place) => [...found[place]].sort().map((path) => path.split("."));
  return { head: split("head"), adapter: split("adapter"), shaft: split("shaft"), grip: split("grip") };
}

function addDependencies(fact: CompiledFact, found: Record<Place, Set<string>>): void {
  if (fact.derived) {
    for (const path of fact.derived.rests) addDependencies(compileFact("", path as FactPath, false), found);
    return;
  }
  for (const place of placesOf(fact.role)) {
    const spot = fact.at[place];
    if (spot) found[place].add(spot.keys.join("."));
  }
}
