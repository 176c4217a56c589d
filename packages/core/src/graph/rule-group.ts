import type { CompiledRule } from "./compiled-rule.ts";
import type { CompiledFact } from "./fact.ts";
import { type Place, places } from "./shape.ts";

/** Rules that speak of the same places in the same way, so that they are looked up together. */
export interface RuleGroup {
  /** With their place among all the rules. */
  readonly rules: readonly { readonly order: number; readonly compiled: CompiledRule }[];
  readonly depends: CompiledRule["depends"];
  readonly needsPlaces: readonly Place[];
  readonly needsHolder: boolean;
  readonly grain: CompiledRule["rule"]["grain"];
}

/** Puts rules together that ask for the same parts, read the same places in the same roles, and are of one grain. */
export function ruleGroups(rules: readonly CompiledRule[]): RuleGroup[] {
  const groups = new Map<string, { order: number; compiled: CompiledRule }[]>();
  rules.forEach((compiled, order) => {
    const key = groupKey(compiled);
    const known = groups.get(key);
    if (known) known.push({ order, compiled });
    else groups.set(key, [{ order, compiled }]);
  });
  return [...groups.values()].map((members) => {
    const { asksFor, rule } = (members[0] as (typeof members)[number]).compiled;
    return {
      rules: members,
      depends: union(members.map(({ compiled }) => compiled.depends)),
      needsPlaces: places.filter((place) => asksFor.includes(place)),
      needsHolder: asksFor.includes("holder"),
      grain: rule.grain,
    };
  });
}

function groupKey({ asksFor, needs, uses, depends, rule }: CompiledRule): string {
  const roles = [...new Set([...needs, ...uses].map(({ role }) => role))].filter((role) => role !== "goal");
  const read = places.filter((place) => depends[place].length > 0);
  return [rule.grain, [...asksFor].sort(), roles.sort(), read].join("|");
}

function union(all: readonly CompiledRule["depends"][]): CompiledRule["depends"] {
  const at = (place: Place) =>
    [...new Set(all.flatMap((depends) => depends[place].map((keys) => keys.join("."))))]
      .sort()
      .map((path) => path.split("."));
  return { head: at("head"), adapter: at("adapter"), shaft: at("shaft"), grip: at("grip") };
}

/** Every fact that the rules read, once. */
export function factsRead(rules: readonly CompiledRule[]): CompiledFact[] {
  const facts = rules.flatMap(({ needs, uses }) => [...needs, ...uses]);
  return [...new Map(facts.map((fact) => [factName(fact), fact])).values()];
}

/** Facts of one name are one fact, whatever the rules call them. */
export function factName({ role, path, mayBeTypical }: CompiledFact): string {
  return `${role}.${path} ${mayBeTypical}`;
}
