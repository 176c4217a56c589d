import { verdicts } from "../findings/verdict.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { BenchGraph } from "./bench-graph.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { InterfaceClasses } from "./interface-classes.ts";
import { type Judged, judgeRule } from "./judge-rule.ts";
import { isCovered, type JoinedSets, skillOfSteps } from "./judge-route.ts";
import { type Chosen, contextOf } from "./route.ts";
import { mayTakeShaft, type Place } from "./shape.ts";

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

interface IndexedRule {
  readonly compiled: CompiledRule;
  readonly needsAdapter: boolean;
  readonly needsHolder: boolean;
  readonly needsGrip: boolean;
  readonly reads: Readonly<Record<Place, boolean>>;
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

  constructor(graph: BenchGraph) {
    this.graph = graph;
    const musts = graph.rules.filter(({ rule, readsWork }) => rule.strength === "must" && !readsWork);
    this.rules = musts.map(indexedRule);
    const classesAt = (place: Place) => new InterfaceClasses(musts, place);
    this.classes = { head: classesAt("head"), adapter: classesAt("adapter"), shaft: classesAt("shaft"), grip: classesAt("grip") };
  }

  /** The worst verdict of all rules on these parts, with the joins already standing and the skill that making the rest takes. */
  verdict(chosen: Chosen, joined: JoinedSets, joinSkill: Skill): Ranked {
    let worst: number = rank.fits;
    let skill = skills.indexOf(joinSkill);
    for (let index = 0; index < this.rules.length; index += 1) {
      const rule = this.rules[index] as IndexedRule;
      if (!this.applies(rule, chosen)) continue;
      let ranked = this.ranked(rule, index, chosen);
      if (ranked.verdict === rank.doesNotFit) return refused;
      if (ranked.verdict !== rank.fits && joined.length > 0 && isCovered(rule.compiled, chosen, joined)) ranked = nothingToDo;
      if (ranked.verdict > worst) worst = ranked.verdict;
      if (ranked.skill > skill) skill = ranked.skill;
    }
    if (worst === rank.fits && skill > 0) worst = rank.fitsWithWork;
    return { verdict: worst, skill };
  }

  /** How many rules these parts leave open: the facts of a wanted part are needed when leaving them out leaves more open. */
  unsettledRules(chosen: Chosen): number {
    return this.rules.filter((rule, index) => this.applies(rule, chosen) && this.ranked(rule, index, chosen).verdict === rank.unsettled)
      .length;
  }

  private applies(rule: IndexedRule, chosen: Chosen): boolean {
    if (rule.needsAdapter && !chosen.adapter) return false;
    if (rule.needsGrip && !chosen.grip) return false;
    return !rule.needsHolder || chosen.adapter !== undefined || mayTakeShaft(chosen.head);
  }

  private ranked(rule: IndexedRule, index: number, chosen: Chosen): Ranked {
    const outer = this.number(rule, index, "head", chosen) * 2 ** 22 + this.number(rule, index, "adapter", chosen);
    const inner = (this.number(rule, index, "shaft", chosen) * 2 ** 20 + this.number(rule, index, "grip", chosen)) * 4 + this.flags(rule, chosen.shaft);
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

  private number(rule: IndexedRule, index: number, place: Place, chosen: Chosen): number {
    const part = chosen[place];
    return rule.reads[place] && part ? (this.classes[place].of(part).forRule[index] as number) : 0;
  }

  /** A length is read with what is on the shaft, so rules that read lengths tell such shafts apart. */
  private flags(rule: IndexedRule, shaft: Part | undefined): number {
    if (!shaft || rule.compiled.rule.grain !== "part") return 0;
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

function indexedRule(compiled: CompiledRule): IndexedRule {
  const reads = (place: Place) => compiled.depends[place].length > 0;
  return {
    compiled,
    needsAdapter: compiled.asksFor.includes("adapter"),
    needsHolder: compiled.asksFor.includes("holder"),
    needsGrip: compiled.asksFor.includes("grip"),
    reads: { head: reads("head"), adapter: reads("adapter"), shaft: reads("shaft"), grip: reads("grip") },
    memo: new Map(),
  };
}
