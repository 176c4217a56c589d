import { verdicts } from "../findings/verdict.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { BenchGraph } from "./bench-graph.ts";
import { ByNumbers, type Numbers } from "./by-numbers.ts";
import { type CompiledRule, dependsOf } from "./compiled-rule.ts";
import type { Context } from "./context.ts";
import { type CompiledFact, readFact } from "./fact.ts";
import { ImaginedParts } from "./imagined-parts.ts";
import { InterfaceClasses } from "./interface-classes.ts";
import { isCovered, type JoinedSets, type RouteFinding, skillOfSteps } from "./judge-route.ts";
import { judgeRule } from "./judge-rule.ts";
import { type Chosen, contextOf, type Joining } from "./route.ts";
import { factName, factsRead, type RuleGroup, ruleGroups } from "./rule-group.ts";
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

const none = new Int32Array();

/** What one rule comes to. */
interface RuleRanked extends Ranked {
  readonly finding: RouteFinding;
}

/** What the rules of a group come to on some parts: the worst of them, and each in the order of the group. */
interface GroupRanked extends Ranked {
  readonly each: readonly Ranked[];
}

/** A group with what it came to, and what each of its rules came to by the values of its facts. */
interface IndexedGroup extends RuleGroup {
  readonly known: ByNumbers<GroupRanked>;
  /** The same with what each rule said: asked for far fewer parts. */
  readonly findings: ByNumbers<readonly RouteFinding[]>;
  readonly byFacts: readonly {
    readonly compiled: CompiledRule;
    readonly facts: readonly IndexedFact[];
    readonly known: Map<string, RuleRanked>;
  }[];
}

/** A fact with the numbers of its values; 0 is for one that is missing. */
interface IndexedFact {
  readonly fact: CompiledFact;
  readonly values: Map<string, number>;
  readonly known: ByNumbers<number>;
}

/** What parts without a grip come to: by the groups that read no grip, and by all. */
export interface Gripless {
  readonly numbers: Numbers;
  readonly still: Ranked;
  readonly ranked: Ranked;
}

const nothingToDo: Ranked = { verdict: rank.fits, skill: 0 };
const refused: Ranked = { verdict: rank.doesNotFit, skill: 0 };

/**
 * Verdicts of the `must` rules, judged once per combination of fact values, and looked up by interface numbers ever after.
 * Rules on the work itself are left out: the caller compares skills.
 */
export class VerdictIndex {
  readonly classes: Readonly<Record<Place, InterfaceClasses>>;
  /** Parts that are not here, which are judged again and again. */
  readonly imagined: ImaginedParts;
  /** How many times a rule was really judged: what the index saves is seen from this. */
  judgements = 0;
  private readonly graph: BenchGraph;
  private readonly groups: readonly IndexedGroup[];
  private readonly gates: readonly IndexedGroup[];
  /** The groups that read nothing of a grip, and those that do. */
  private readonly gripsApart: Readonly<Record<"without" | "within", readonly IndexedGroup[]>>;
  private readonly results: Map<string, GroupRanked>;
  private readonly groupNames: WeakMap<Part, string>;

  /** With `known`, an index of a bench with the same rules, goal, claims and tables: what it has judged holds here too. */
  constructor(graph: BenchGraph, known?: VerdictIndex) {
    this.graph = graph;
    if (known) {
      ({
        groups: this.groups,
        gates: this.gates,
        gripsApart: this.gripsApart,
        classes: this.classes,
        results: this.results,
        groupNames: this.groupNames,
        imagined: this.imagined,
      } = known);
      return;
    }
    this.results = new Map();
    this.groupNames = new WeakMap();
    this.imagined = new ImaginedParts();
    const musts = graph.musts.filter(({ readsWork }) => !readsWork);
    const groups = ruleGroups(musts);
    const facts = factsRead(musts).map((fact, at) => indexedFact(fact, groups.length + at));
    this.groups = groups.map((group, at) => indexedGroup(group, at, facts));
    this.gates = this.groups.filter(({ grain, needsHolder }) => grain === "interface" && !needsHolder);
    const readsGrip = ({ depends }: RuleGroup) => depends.grip.length > 0;
    this.gripsApart = {
      without: this.groups.filter((group) => !readsGrip(group)),
      within: this.groups.filter(readsGrip),
    };
    const readers = [...groups, ...facts.map(({ fact }) => ({ depends: dependsOf([fact]) }))];
    const classesAt = (place: Place) => new InterfaceClasses(readers, place);
    this.classes = {
      head: classesAt("head"),
      adapter: classesAt("adapter"),
      shaft: classesAt("shaft"),
      grip: classesAt("grip"),
    };
  }

  /** The worst verdict of all rules on these parts, with the joins already standing and the skill that making the rest takes. */
  verdict(chosen: Chosen, joined: JoinedSets, joinSkill: Skill): Ranked {
    const ranked = this.worst(this.groups, chosen, this.numbersOf(chosen), joined, nothingToDo);
    return withJoining(ranked, skills.indexOf(joinSkill));
  }

  /** The same for parts that have no grip yet, with what need not be looked up again for each grip that is tried. */
  gripless(chosen: Chosen, { joined, skill }: Joining): Gripless {
    const numbers = this.numbersOf(chosen);
    const still = this.worst(this.gripsApart.without, chosen, numbers, joined, nothingToDo);
    const ranked = this.worst(this.gripsApart.within, chosen, numbers, joined, still);
    return { numbers, still, ranked: withJoining(ranked, skill) };
  }

  /** The same for those parts with a grip. A grip joins nothing but itself to what is joined without it. */
  withGrip({ numbers, still }: Gripless, chosen: Chosen, { joined, skill }: Joining): Ranked {
    const grip = chosen.grip ? this.classes.grip.of(chosen.grip).forReader : none;
    return withJoining(
      this.worst(this.gripsApart.within, chosen, { ...numbers, grip }, joined, still),
      skill,
    );
  }

  /** The worst of these groups and of what is known already. */
  private worst(
    groups: readonly IndexedGroup[],
    chosen: Chosen,
    numbers: Numbers,
    joined: JoinedSets,
    known: Ranked,
  ): Ranked {
    if (known.verdict === rank.doesNotFit) return refused;
    let { verdict, skill } = known;
    for (const group of groups) {
      if (!applies(group, chosen)) continue;
      const ranked = this.ranked(group, chosen, numbers);
      if (ranked.verdict === rank.doesNotFit) return refused;
      if (ranked.verdict === rank.fits) {
        if (ranked.skill > skill) skill = ranked.skill;
        continue;
      }
      if (joined.length > 0 && isCoveredGroup(group, chosen, joined)) continue;
      if (ranked.verdict > verdict) verdict = ranked.verdict;
      if (ranked.skill > skill) skill = ranked.skill;
    }
    return { verdict, skill };
  }

  /** How many rules these parts leave open: the facts of a wanted part are needed when leaving them out leaves more open. */
  unsettledRules(chosen: Chosen): number {
    const numbers = this.numbersOf(chosen);
    let count = 0;
    for (const group of this.groups) {
      if (!applies(group, chosen)) continue;
      for (const { verdict } of this.ranked(group, chosen, numbers).each)
        if (verdict === rank.unsettled) count += 1;
    }
    return count;
  }

  /** The rules, other than those on the work, that refuse these parts, in their order. */
  refusals(chosen: Chosen): CompiledRule[] {
    const numbers = this.numbersOf(chosen);
    return this.groups
      .filter((group) => applies(group, chosen))
      .flatMap((group) => {
        const { each } = this.ranked(group, chosen, numbers);
        return group.rules.filter((_, at) => each[at]?.verdict === rank.doesNotFit);
      })
      .sort((a, b) => a.order - b.order)
      .map(({ compiled }) => compiled);
  }

  /** What each of the rules other than those on the work comes to on these parts, in their order. */
  findings(chosen: Chosen): RouteFinding[] {
    const numbers = this.numbersOf(chosen);
    const flags = chosen.shaft ? this.flagsOf(chosen.shaft) : 0;
    const inOrder: (RouteFinding | undefined)[] = [];
    for (const group of this.groups) {
      if (!applies(group, chosen)) continue;
      const findings =
        group.findings.find(numbers, flags) ??
        group.findings.keep(numbers, flags, this.findingsOf(group, chosen, numbers));
      group.rules.forEach(({ order }, at) => {
        inOrder[order] = findings[at];
      });
    }
    return inOrder.filter((finding) => finding !== undefined);
  }

  private findingsOf(group: IndexedGroup, chosen: Chosen, numbers: Numbers): RouteFinding[] {
    const judge = this.ruleJudge(chosen, numbers);
    return group.rules.map((_, at) => judge(group, at).finding);
  }

  /** Whether a rule that reads only what whole groups of parts share refuses these. */
  gatesRefuse(chosen: Chosen): boolean {
    const numbers = this.numbersOf(chosen);
    return this.gates.some(
      (group) => applies(group, chosen) && this.ranked(group, chosen, numbers).verdict === rank.doesNotFit,
    );
  }

  /** A name that parts of a place share when no gate tells them apart. */
  gateGroup(place: Place, part: Part): string {
    const known = this.groupNames.get(part);
    if (known !== undefined) return known;
    const { forReader } = this.classes[place].of(part);
    const name = this.groups.map((group, at) => (this.gates.includes(group) ? forReader[at] : "")).join(" ");
    this.groupNames.set(part, name);
    return name;
  }

  /** What is on a shaft, as a number: 1 for a grip and 2 for whatever holds its tip. */
  flagsOf(shaft: Part): number {
    const { occupancy } = this.graph;
    return (occupancy.at(shaft.id, "butt") ? 1 : 0) + (occupancy.at(shaft.id, "tip") ? 2 : 0);
  }

  private numbersOf(chosen: Chosen): Numbers {
    const of = (place: Place) => (chosen[place] ? this.classes[place].of(chosen[place]).forReader : none);
    return { head: of("head"), adapter: of("adapter"), shaft: of("shaft"), grip: of("grip") };
  }

  /** A length is read with what is on the shaft, so rules that read lengths tell such shafts apart. */
  private ranked(group: IndexedGroup, chosen: Chosen, numbers: Numbers): GroupRanked {
    const flags = chosen.shaft && group.grain === "part" ? this.flagsOf(chosen.shaft) : 0;
    return (
      group.known.find(numbers, flags) ??
      group.known.keep(numbers, flags, this.judgeGroup(group, chosen, numbers))
    );
  }

  private judgeGroup(group: IndexedGroup, chosen: Chosen, numbers: Numbers): GroupRanked {
    const judge = this.ruleJudge(chosen, numbers);
    return this.shared(group.rules.map((_, at) => judge(group, at)));
  }

  /** Judges rules of groups by their places in them, each once for the values of its facts. */
  private ruleJudge(chosen: Chosen, numbers: Numbers): (group: IndexedGroup, at: number) => RuleRanked {
    const flags = chosen.shaft ? this.flagsOf(chosen.shaft) : 0;
    let made: Context | undefined;
    const context = (): Context => {
      made ??= contextOf(chosen, this.graph);
      return made;
    };
    return (group, at) => {
      const { compiled, facts, known } = group.byFacts[at] as IndexedGroup["byFacts"][number];
      let values = "";
      for (const fact of facts) values += `${valueNumber(fact, context, numbers, flags)} `;
      let ranked = known.get(values);
      if (!ranked) {
        ranked = this.judge(compiled, context());
        known.set(values, ranked);
      }
      return ranked;
    };
  }

  /** There are few different results, so that each is kept once. */
  private shared(each: readonly Ranked[]): GroupRanked {
    const name = each.map(({ verdict, skill }) => verdict * skills.length + skill).join(" ");
    let result = this.results.get(name);
    if (!result) {
      result = {
        verdict: Math.max(...each.map(({ verdict }) => verdict)),
        skill: Math.max(...each.map(({ skill }) => skill)),
        each,
      };
      this.results.set(name, result);
    }
    return result;
  }

  private judge(compiled: CompiledRule, context: Context): RuleRanked {
    this.judgements += 1;
    const judged = judgeRule(compiled, context);
    const skill = skillOfSteps(judged.outcome.steps ?? [], this.graph.work);
    return {
      verdict: verdicts.indexOf(judged.outcome.verdict),
      skill: skills.indexOf(skill),
      finding: { compiled, ...judged },
    };
  }
}

/** A number that is the same for the same value of a fact, whether it is typical or not being part of the value. */
function valueNumber(
  { fact, values, known }: IndexedFact,
  context: () => Context,
  numbers: Numbers,
  flags: number,
): number {
  const ownFlags = fact.derived ? flags : 0;
  const found = known.find(numbers, ownFlags);
  if (found !== undefined) return found;
  const read = readFact(fact, context());
  if (!read) return known.keep(numbers, ownFlags, 0);
  const said = JSON.stringify(read);
  const number = values.get(said) ?? values.size + 1;
  values.set(said, number);
  return known.keep(numbers, ownFlags, number);
}

/** The work of joining counts too. */
function withJoining(ranked: Ranked, joinSkill: number): Ranked {
  if (ranked.verdict === rank.doesNotFit) return refused;
  const skill = Math.max(ranked.skill, joinSkill);
  return { verdict: ranked.verdict === rank.fits && skill > 0 ? rank.fitsWithWork : ranked.verdict, skill };
}

function applies(group: RuleGroup, chosen: Chosen): boolean {
  for (const place of group.needsPlaces) if (!chosen[place]) return false;
  return !group.needsHolder || chosen.adapter !== undefined || mayTakeShaft(chosen.head);
}

/** The rules of a group read the same roles, so that a joint covers all of them or none. */
function isCoveredGroup({ rules: [first] }: RuleGroup, chosen: Chosen, joined: JoinedSets): boolean {
  return first !== undefined && isCovered(first.compiled, chosen, joined);
}

function indexedGroup(group: RuleGroup, at: number, facts: readonly IndexedFact[]): IndexedGroup {
  const byName = new Map(facts.map((indexed) => [factName(indexed.fact), indexed]));
  return {
    ...group,
    known: new ByNumbers(at),
    findings: new ByNumbers(at),
    byFacts: group.rules.map(({ compiled }) => ({
      compiled,
      facts: [...compiled.needs, ...compiled.uses].map((fact) => byName.get(factName(fact)) as IndexedFact),
      known: new Map(),
    })),
  };
}

function indexedFact(fact: CompiledFact, at: number): IndexedFact {
  return { fact, values: new Map(), known: new ByNumbers(at) };
}
