import { verdicts } from "../findings/verdict.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { BenchGraph } from "./bench-graph.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { InterfaceClasses } from "./interface-classes.ts";
import { isCovered, type JoinedSets, skillOfSteps } from "./judge-route.ts";
import { type Judged, judgeRule } from "./judge-rule.ts";
import { type Chosen, contextOf } from "./route.ts";
import { mayTakeShaft, type Place, places } from "./shape.ts";

/** A verdict by its rank in `verdicts`, and the skill its work asks for by its rank in `skills`. */
export interface Ranked {
  readonly verdict: number;
  readonly skill: number;
}

export const rank = {
  fits: verdicts.indexOf("fits"),
  fitsWithWork: verdicts.indexOf("fits-with-work"),
  unsettled: verdicts.indexOf("unsettled"),
  doesNotFit: verdicts.indexOf("does-not-fit"),
} as const;

/** The numbers of the chosen parts, by place and rule; 0 where a place is open or a rule does not read it. */
type Numbers = Readonly<Record<Place, Int32Array>>;

const none = new Int32Array();

interface IndexedRule {
  /** Its place in the numbers of a part. */
  readonly at: number;
  readonly compiled: CompiledRule;
  readonly needsPlaces: readonly Place[];
  readonly needsHolder: boolean;
  readonly memo: Map<number, Map<number, Ranked>>;
}

const nothingToDo: Ranked = { verdict: rank.fits, skill: 0 };
const refused: Ranked = { verdict: rank.doesNotFit, skill: 0 };

/**
 * Verdicts of the `must` rules, judged once per combination of interface numbers and looked up ever after. Rules on the
 * work itself are left out: the caller compares skills.
 */
export class VerdictIndex {
  readonly classes: Readonly<Record<Place, InterfaceClasses>>;
  /** How many times a rule was really judged: what the index saves is seen from this. */
  judgements = 0;
  private readonly graph: BenchGraph;
  private readonly rules: readonly IndexedRule[];
  private readonly gates: readonly IndexedRule[];
  private readonly groupNames: WeakMap<Part, string>;

  /** With `known`, an index of a bench with the same rules, goal, claims and tables: what it has judged holds here too. */
  constructor(graph: BenchGraph, known?: VerdictIndex) {
    this.graph = graph;
    if (known) {
      ({ rules: this.rules, gates: this.gates, classes: this.classes, groupNames: this.groupNames } = known);
      return;
    }
    this.groupNames = new WeakMap();
    const musts = graph.musts.filter(({ readsWork }) => !readsWork);
    this.rules = musts.map(indexedRule);
    this.gates = this.rules.filter(
      ({ compiled, needsHolder }) => compiled.rule.grain === "interface" && !needsHolder,
    );
    const classesAt = (place: Place) => new InterfaceClasses(musts, place);
    this.classes = {
      head: classesAt("head"),
      adapter: classesAt("adapter"),
      shaft: classesAt("shaft"),
      grip: classesAt("grip"),
    };
  }

  /** The worst verdict of all rules on these parts, with the joins already standing and the skill that making the rest takes. */
  verdict(chosen: Chosen, joined: JoinedSets, joinSkill: Skill): Ranked {
    let worst: number = rank.fits;
    let skill = skills.indexOf(joinSkill);
    const numbers = this.numbersOf(chosen);
    for (const rule of this.rules) {
      if (!applies(rule, chosen)) continue;
      let ranked = this.ranked(rule, chosen, numbers);
      if (ranked.verdict === rank.doesNotFit) return refused;
      if (ranked.verdict !== rank.fits && joined.length > 0 && isCovered(rule.compiled, chosen, joined))
        ranked = nothingToDo;
      if (ranked.verdict > worst) worst = ranked.verdict;
      if (ranked.skill > skill) skill = ranked.skill;
    }
    if (worst === rank.fits && skill > 0) worst = rank.fitsWithWork;
    return { verdict: worst, skill };
  }

  /** How many rules these parts leave open: the facts of a wanted part are needed when leaving them out leaves more open. */
  unsettledRules(chosen: Chosen): number {
    const numbers = this.numbersOf(chosen);
    return this.rules.filter(
      (rule) => applies(rule, chosen) && this.ranked(rule, chosen, numbers).verdict === rank.unsettled,
    ).length;
  }

  /** The rules, other than those on the work, that refuse these parts, in their order. */
  refusals(chosen: Chosen): CompiledRule[] {
    const numbers = this.numbersOf(chosen);
    return this.rules
      .filter(
        (rule) => applies(rule, chosen) && this.ranked(rule, chosen, numbers).verdict === rank.doesNotFit,
      )
      .map(({ compiled }) => compiled);
  }

  /** Whether a rule that reads only what whole groups of parts share refuses these. */
  gatesRefuse(chosen: Chosen): boolean {
    const numbers = this.numbersOf(chosen);
    return this.gates.some(
      (rule) => applies(rule, chosen) && this.ranked(rule, chosen, numbers).verdict === rank.doesNotFit,
    );
  }

  /** A name that parts of a place share when no gate tells them apart. */
  gateGroup(place: Place, part: Part): string {
    const known = this.groupNames.get(part);
    if (known !== undefined) return known;
    const { forRule } = this.classes[place].of(part);
    const name = this.gates.map(({ at }) => forRule[at]).join(" ");
    this.groupNames.set(part, name);
    return name;
  }

  private numbersOf(chosen: Chosen): Numbers {
    const of = (place: Place) => (chosen[place] ? this.classes[place].of(chosen[place]).forRule : none);
    return { head: of("head"), adapter: of("adapter"), shaft: of("shaft"), grip: of("grip") };
  }

  private ranked(rule: IndexedRule, chosen: Chosen, numbers: Numbers): Ranked {
    const { at } = rule;
    const outer = (numbers.head[at] ?? 0) * 2 ** 22 + (numbers.adapter[at] ?? 0);
    const inner =
      ((numbers.shaft[at] ?? 0) * 2 ** 20 + (numbers.grip[at] ?? 0)) * 4 + this.flags(rule, chosen.shaft);
    let byInner = rule.memo.get(outer);
    if (!byInner) {
      byInner = new Map();
      rule.memo.set(outer, byInner);
    }
    let found = byInner.get(inner);
    if (!found) {
      found = this.judge(rule, chosen);
      byInner.set(inner, found);
    }
    return found;
  }

  /** A length is read with what is on the shaft, so rules that read lengths tell such shafts apart. */
  private flags(rule: IndexedRule, shaft: Part | undefined): number {
    return shaft && rule.compiled.rule.grain === "part" ? this.flagsOf(shaft) : 0;
  }

  /** What is on a shaft, as a number: 1 for a grip and 2 for whatever holds its tip. */
  flagsOf(shaft: Part): number {
    const { occupancy } = this.graph;
    return (occupancy.at(shaft.id, "butt") ? 1 : 0) + (occupancy.at(shaft.id, "tip") ? 2 : 0);
  }

  private judge(rule: IndexedRule, chosen: Chosen): Ranked {
    this.judgements += 1;
    const judged = judgeRule(rule.compiled, contextOf(chosen, this.graph));
    return { verdict: verdicts.indexOf(judged.outcome.verdict), skill: skills.indexOf(this.skillOf(judged)) };
  }

  private skillOf({ outcome }: Judged): Skill {
    return skillOfSteps(outcome.steps ?? [], this.graph.work);
  }
}

function applies(rule: IndexedRule, chosen: Chosen): boolean {
  for (const place of rule.needsPlaces) if (!chosen[place]) return false;
  return !rule.needsHolder || chosen.adapter !== undefined || mayTakeShaft(chosen.head);
}

function indexedRule(compiled: CompiledRule, at: number): IndexedRule {
  return {
    at,
    compiled,
    needsPlaces: places.filter((place) => compiled.asksFor.includes(place)),
    needsHolder: compiled.asksFor.includes("holder"),
    memo: new Map(),
  };
}
