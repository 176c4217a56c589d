import type { BenchGraph } from "../graph/bench-graph.ts";
import { higherSkill, workRow } from "../graph/judge-route.ts";
import { type Chosen, type Route, routeOf } from "../graph/route.ts";
import { mayTakeAdapter, mayTakeShaft } from "../graph/shape.ts";
import { type Ranked, rank, type VerdictIndex } from "../graph/verdict-index.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import { openOptions, type PairOption } from "./pair-options.ts";
import type { ReadyBench } from "./ready-bench.ts";

/** A way to make a club of a head and a shaft, with what it comes to. */
export interface Way {
  readonly route: Route;
  readonly ranked: Ranked;
}

/** What a head and a shaft come to on this bench. */
export interface PairAnswer {
  readonly head: Part;
  readonly shaft: Part;
  /** `club`: there is a way within the skill allowed. `refused`: no part could help. `lacks`: a part that is not here would. */
  readonly state: "club" | "refused" | "lacks";
  /** The best way within the skill allowed. */
  readonly way: Way | undefined;
}

/** Judges pairs of head and shaft by looking rules up, never by listing combinations of all parts. */
export class PairJudge {
  private readonly graph: BenchGraph;
  private readonly index: VerdictIndex;
  private readonly allowed: number;
  private readonly adaptersFor = new Map<number, Part[]>();
  private readonly adapterClasses: readonly Part[];
  private readonly gripClasses: readonly Part[];

  /** Ways are looked for up to the skill allowed. */
  constructor({ graph, index, alike }: Pick<ReadyBench, "graph" | "index" | "alike">, allowed: Skill) {
    this.graph = graph;
    this.index = index;
    this.allowed = skills.indexOf(allowed);
    this.adapterClasses = alike.adapter;
    this.gripClasses = alike.grip;
  }

  /** A pair is refused when no part, on this bench or elsewhere, could make a club of it within the skill allowed. */
  answer(head: Part, shaft: Part): PairAnswer {
    const floor = this.skillFloor(head, shaft);
    if (floor === undefined) return { head, shaft, state: "refused", way: undefined };
    let best: Way | undefined;
    for (const way of this.ways(head, shaft)) {
      if (!best || isBetter(way, best)) best = way;
      if (isUnbeatable(way, floor)) break;
    }
    return { head, shaft, state: best ? "club" : "lacks", way: best };
  }

  /** The least skill, by its rank, at which these two become a club with what is here. */
  leastSkill(head: Part, shaft: Part): number | undefined {
    const floor = this.skillFloor(head, shaft);
    if (floor === undefined) return undefined;
    let least: number | undefined;
    for (const { ranked } of this.ways(head, shaft)) {
      if (least === undefined || ranked.skill < least) least = ranked.skill;
      if (least <= floor) break;
    }
    return least;
  }

  /** The least skill that joining these two takes, whatever other parts there are; undefined when every option is refused. */
  private skillFloor(head: Part, shaft: Part): number | undefined {
    let floor: number | undefined;
    for (const option of openOptions(head, shaft, this.graph)) {
      if (this.optionRefused(option)) continue;
      const skill = skills.indexOf(option.joinSkill);
      if (floor === undefined || skill < floor) floor = skill;
    }
    return floor;
  }

  /** Whether every shaft of a group is refused with this head, by what they have in common with the first. */
  groupRefused(head: Part, first: Part): boolean {
    return openOptions(head, first, this.graph).every(
      ({ chosen, joinSkill }) => skills.indexOf(joinSkill) > this.allowed || this.index.gatesRefuse(chosen),
    );
  }

  private optionRefused(option: PairOption): boolean {
    const ranked = this.index.verdict(option.chosen, option.joined, option.joinSkill);
    return ranked.verdict === rank.doesNotFit || ranked.skill > this.allowed;
  }

  /** Every way within the skill allowed, one for each adapter and grip that could be tried; the own ones first. */
  *ways(head: Part, shaft: Part): Generator<Way> {
    for (const adapter of this.adaptersToTry(head, shaft)) {
      const base: Chosen = adapter ? { head, adapter, shaft } : { head, shaft };
      const route = routeOf(base, this.graph.occupancy);
      const ranked = this.index.verdict(base, route.joined, this.skillOf(route));
      if (ranked.verdict === rank.doesNotFit || ranked.skill > this.allowed) continue;
      yield* this.waysWithGrips(base);
    }
  }

  private *waysWithGrips(base: Chosen): Generator<Way> {
    for (const grip of this.gripsToTry(base.shaft as Part)) {
      const chosen: Chosen = { ...base, grip };
      const route = routeOf(chosen, this.graph.occupancy);
      const ranked = this.index.verdict(chosen, route.joined, this.skillOf(route));
      if (ranked.verdict !== rank.doesNotFit && ranked.skill <= this.allowed) yield { route, ranked };
    }
  }

  private skillOf(route: Route): Skill {
    return route.steps.reduce<Skill>(
      (skill, { step }) => higherSkill(skill, workRow(step, this.graph.work).skill),
      "screw",
    );
  }

  /** No adapter for a head that takes the shaft itself; else the one on the shaft, then one of each class that the head takes. */
  private adaptersToTry(head: Part, shaft: Part): (Part | undefined)[] {
    const direct = mayTakeShaft(head) ? [undefined] : [];
    if (!mayTakeAdapter(head)) return direct;
    const own = this.attached(shaft, "tip");
    const others =
      this.allowed < skills.indexOf("bond") ? [] : this.adaptersOf(head).filter((part) => part !== own);
    return own?.kind === "adapter" ? [...direct, own, ...others] : [...direct, ...others];
  }

  private adaptersOf(head: Part): Part[] {
    const number = this.index.classes.head.of(head).class;
    let found = this.adaptersFor.get(number);
    if (!found) {
      found = this.adapterClasses.filter(
        (adapter) => this.index.verdict({ head, adapter }, [], "screw").verdict !== rank.doesNotFit,
      );
      this.adaptersFor.set(number, found);
    }
    return found;
  }

  private gripsToTry(shaft: Part): Part[] {
    const own = this.attached(shaft, "butt");
    const others =
      this.allowed < skills.indexOf("regrip") ? [] : this.gripClasses.filter((part) => part !== own);
    return own ? [own, ...others] : others;
  }

  private attached(shaft: Part, port: "tip" | "butt"): Part | undefined {
    const occupant = this.graph.occupancy.at(shaft.id, port);
    return occupant && this.graph.parts.get(occupant.other);
  }
}

/**
 * No way can be better than one that asks for no more than joining the parts: what is on the shaft is tried first and loose
 * parts before joined ones, so that those after it leave no more joints alone.
 */
function isUnbeatable({ ranked }: Way, floor: number): boolean {
  const bestVerdict = floor === 0 ? rank.fits : rank.fitsWithWork;
  return ranked.verdict <= bestVerdict && ranked.skill <= floor;
}

/** Better first by verdict, then by skill, then by joints left alone, then by steps saved. */
function isBetter(a: Way, b: Way): boolean {
  const key = ({ route, ranked }: Way) => [
    ranked.verdict,
    ranked.skill,
    route.undoes.length,
    route.steps.length,
  ];
  const [left, right] = [key(a), key(b)];
  const at = left.findIndex((value, index) => value !== right[index]);
  return at >= 0 && (left[at] as number) < (right[at] as number);
}
