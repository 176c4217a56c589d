import type { Part } from "../parts/part.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { rawAt } from "./fact.ts";
import type { Place } from "./shape.ts";

/**
 * Numbers for parts that are alike. For every rule, parts with the same values in the fields that the rule reads get the
 * same number, so that the rule is judged once for all of them; parts alike for every rule are of one class.
 */
export class InterfaceClasses {
  private readonly rules: readonly CompiledRule[];
  private readonly place: Place;
  private readonly numbers: Map<string, number>[];
  private readonly classes = new Map<string, number>();
  private readonly known = new Map<string, { forRule: Int32Array; class: number }>();

  constructor(rules: readonly CompiledRule[], place: Place) {
    this.rules = rules;
    this.place = place;
    this.numbers = rules.map(() => new Map());
  }

  /** The numbers of a part, one for each rule, and its class. */
  of(part: Part): { readonly forRule: Int32Array; readonly class: number } {
    const found = this.known.get(part.id);
    if (found) return found;
    const forRule = Int32Array.from(this.rules, (rule, index) => this.number(rule, index, part));
    const entry = { forRule, class: intern(this.classes, forRule.join(" ")) };
    this.known.set(part.id, entry);
    return entry;
  }

  private number(rule: CompiledRule, index: number, part: Part): number {
    const paths = rule.depends[this.place];
    if (paths.length === 0) return 0;
    const values = paths.map((keys) => rawAt(part, keys));
    return intern(this.numbers[index] as Map<string, number>, JSON.stringify(values));
  }
}

function intern(map: Map<string, number>, key: string): number {
  let number = map.get(key);
  if (number === undefined) {
    number = map.size + 1;
    map.set(key, number);
  }
  return number;
}
