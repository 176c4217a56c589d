import type { BenchGraph } from "../graph/bench-graph.ts";
import { workRow } from "../graph/judge-route.ts";
import { type Chosen, type Joining, joiningOf } from "../graph/route.ts";
import { mayTakeAdapter, mayTakeShaft } from "../graph/shape.ts";
import { type Gripless, type Ranked, rank, type VerdictIndex } from "../graph/verdict-index.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { ReadyBench } from "./ready-bench.ts";
import { compareWays, LazyWay, type Way } from "./way.ts";

export type { Way } from "./way.ts";

/** What a head and a shaft come to on this bench. */
export interface PairAnswer {
  readonly head: Part;
  readonly shaft: Part;
  /** `club`: there is a way within the skill allowed. `refused`: no part could help. `lacks`: a part that is not here would. */
  readonly state: "club" | "refused" | "lacks";
  /** The best way within the skill allowed. */
  readonly way: Way | undefined;
}

/** What is on a shaft, and the skill, by its rank, that putting a grip on takes where there is none. */
interface OnShaft {
  readonly adapter: Part | undefined;
  readonly grip: Part | undefined;
  readonly gripSkill: number;
}

/** A head and a shaft with an adapter or without, before a grip is tried. */
interface Start extends Gripless {
  readonly chosen: Chosen;
  readonly joining: Joining;
}

/** Which ways are wanted after one: all, those of other starts alone, or none. */
type MoreWays = "all" | "other-starts" | "none";

type TakeWay = (chosen: Chosen, ranked: Ranked, start: Start) => MoreWays;

/** The ways in which a pair could come together with no part but what is on the shaft. */
interface Starts {
  readonly direct: Start | undefined;
  readonly own: Start | undefined;
}

/** Judges pairs of head and shaft by looking rules up, never by listing combinations of all parts. */
export class PairJudge {
  private readonly graph: BenchGraph;
  private readonly index: VerdictIndex;
  private readonly allowed: number;
  private readonly adaptersFor = new Map<number, readonly Part[]>();
  private readonly onShafts = new Map<Part, OnShaft>();
  /** Parts that may be tried beside those on the shaft: none where the skill to join them is not allowed. */
  private readonly loose: ReadyBench["alike"];
  private readonly bondSkill: number;

  /** Ways are looked for up to the skill allowed. */
  constructor({ graph, index, alike }: Pick<ReadyBench, "graph" | "index" | "alike">, allowed: Skill) {
    this.graph = graph;
    this.index = index;
    this.allowed = skills.indexOf(allowed);
    const ifAllowed = (skill: Skill, parts: readonly Part[]) =>
      this.allowed < skills.indexOf(skill) ? [] : parts;
    this.loose = { adapter: ifAllowed("bond", alike.adapter), grip: ifAllowed("regrip", alike.grip) };
    this.bondSkill = this.skillOf("bond-tip");
  }

  /** A pair is refused when no part, on this bench or elsewhere, could make a club of it within the skill allowed. */
  answer(head: Part, shaft: Part): PairAnswer {
    const starts = this.startsOf(head, shaft);
    const floor = this.skillFloor(head, shaft, starts);
    if (floor === undefined) return { head, shaft, state: "refused", way: undefined };
    let best: Way | undefined;
    this.eachWay(head, shaft, starts, (chosen, ranked, start) => {
      if (!best || ranked.verdict <= best.ranked.verdict) {
        const way = new LazyWay(chosen, ranked, this.graph.occupancy);
        if (!best || compareWays(way, best) < 0) best = way;
      }
      if (isUnbeatable(ranked, floor)) return "none";
      return this.isBestOf(start, shaft, ranked) ? "other-starts" : "all";
    });
    return { head, shaft, state: best ? "club" : "lacks", way: best };
  }

  /** The least skill, by its rank, at which these two become a club with what is here. */
  leastSkill(head: Part, shaft: Part): number | undefined {
    const starts = this.startsOf(head, shaft);
    const floor = this.skillFloor(head, shaft, starts);
    if (floor === undefined) return undefined;
    let least: number | undefined;
    this.eachWay(head, shaft, starts, (_, { skill }) => {
      if (least === undefined || skill < least) least = skill;
      return least <= floor ? "none" : "all";
    });
    return least;
  }

  /** Whether every shaft of a group is refused with this head, by what they have in common with the first. */
  groupRefused(head: Part, first: Part): boolean {
    const { adapter, gripSkill } = this.onShaft(first);
    const isClosed = (chosen: Chosen, joinSkill: number) =>
      Math.max(joinSkill, gripSkill) > this.allowed || this.index.gatesRefuse(chosen);
    const isRefused = (chosen: Chosen) => isClosed(chosen, this.joining(chosen).skill);
    if (mayTakeShaft(head) && !isRefused({ head, shaft: first })) return false;
    if (!mayTakeAdapter(head)) return true;
    if (adapter && !isRefused({ head, adapter, shaft: first })) return false;
    return mayTakeShaft(head) || isClosed({ head, shaft: first }, this.bondSkill);
  }

  /** Every way within the skill allowed, one for each adapter and grip that could be tried; the own ones first. */
  ways(head: Part, shaft: Part): Way[] {
    const found: Way[] = [];
    this.eachWay(head, shaft, this.startsOf(head, shaft), (chosen, ranked) => {
      found.push(new LazyWay(chosen, ranked, this.graph.occupancy));
      return "all";
    });
    return found;
  }

  private startsOf(head: Part, shaft: Part): Starts {
    const { adapter } = this.onShaft(shaft);
    return {
      direct: mayTakeShaft(head) ? this.start({ head, shaft }) : undefined,
      own: adapter && mayTakeAdapter(head) ? this.start({ head, adapter, shaft }) : undefined,
    };
  }

  private start(chosen: Chosen): Start {
    const joining = this.joining(chosen);
    return { chosen, joining, ...this.index.gripless(chosen, joining) };
  }

  /**
   * The least skill that joining these two takes, whatever other parts there are; undefined when every option is refused. The
   * options are those of `openOptions`; an adapter that is not chosen yet is looked at only where it could make a difference.
   */
  private skillFloor(head: Part, shaft: Part, { direct, own }: Starts): number | undefined {
    const { gripSkill } = this.onShaft(shaft);
    let floor: number | undefined;
    for (const start of [direct, own]) {
      if (!start || !this.isAllowed(start.ranked) || gripSkill > this.allowed) continue;
      const skill = Math.max(start.joining.skill, gripSkill);
      if (floor === undefined || skill < floor) floor = skill;
    }
    if (mayTakeShaft(head) || !mayTakeAdapter(head)) return floor;
    const openSkill = Math.max(this.bondSkill, gripSkill);
    if ((floor !== undefined && floor <= openSkill) || openSkill > this.allowed) return floor;
    const open = this.index.gripless({ head, shaft }, { joined: [], skill: openSkill });
    return this.isAllowed(open.ranked) ? openSkill : floor;
  }

  /** Whether no other grip makes more of this start: it asks for no more than the parts without a grip do, and putting one on. */
  private isBestOf({ still, joining }: Start, shaft: Part, { verdict, skill }: Ranked): boolean {
    const leastSkill = Math.max(still.skill, joining.skill, this.onShaft(shaft).gripSkill);
    const leastVerdict = still.verdict === rank.fits && leastSkill > 0 ? rank.fitsWithWork : still.verdict;
    return verdict <= leastVerdict && skill <= leastSkill;
  }

  /** Hands on every way for as long as more are wanted. */
  private eachWay(head: Part, shaft: Part, { direct, own }: Starts, take: TakeWay): void {
    if (direct && this.eachGrip(direct, shaft, take)) return;
    if (!mayTakeAdapter(head)) return;
    if (own && this.eachGrip(own, shaft, take)) return;
    for (const adapter of this.adaptersOf(head)) {
      if (adapter === own?.chosen.adapter) continue;
      if (this.eachGrip(this.start({ head, adapter, shaft }), shaft, take)) return;
    }
  }

  /** Hands on the ways from one start; whether none is wanted after them. */
  private eachGrip(start: Start, shaft: Part, take: TakeWay): boolean {
    if (!this.isAllowed(start.ranked)) return false;
    const { grip: own } = this.onShaft(shaft);
    const wantedAfter = (grip: Part): MoreWays => {
      const chosen: Chosen = { ...start.chosen, grip };
      const ranked = this.index.withGrip(start, chosen, this.joining(chosen));
      return this.isAllowed(ranked) ? take(chosen, ranked, start) : "all";
    };
    let wanted = own ? wantedAfter(own) : "all";
    for (const grip of this.loose.grip) {
      if (wanted !== "all") break;
      if (grip !== own) wanted = wantedAfter(grip);
    }
    return wanted === "none";
  }

  private isAllowed({ verdict, skill }: Ranked): boolean {
    return verdict !== rank.doesNotFit && skill <= this.allowed;
  }

  private joining(chosen: Chosen): Joining {
    return joiningOf(chosen, this.graph.occupancy, this.graph.work);
  }

  private skillOf(step: string): number {
    return skills.indexOf(workRow(step, this.graph.work).skill);
  }

  /** One of each class of adapters that the head takes. */
  private adaptersOf(head: Part): readonly Part[] {
    if (this.loose.adapter.length === 0) return this.loose.adapter;
    const number = this.index.classes.head.of(head).class;
    let found = this.adaptersFor.get(number);
    if (!found) {
      found = this.loose.adapter.filter(
        (adapter) => this.index.verdict({ head, adapter }, [], "screw").verdict !== rank.doesNotFit,
      );
      this.adaptersFor.set(number, found);
    }
    return found;
  }

  private onShaft(shaft: Part): OnShaft {
    let found = this.onShafts.get(shaft);
    if (!found) {
      const onTip = this.attached(shaft, "tip");
      const isGripped = this.graph.occupancy.at(shaft.id, "butt") !== undefined;
      found = {
        adapter: onTip?.kind === "adapter" ? onTip : undefined,
        grip: this.attached(shaft, "butt"),
        gripSkill: isGripped ? 0 : this.skillOf("grip-on"),
      };
      this.onShafts.set(shaft, found);
    }
    return found;
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
function isUnbeatable({ verdict, skill }: Ranked, floor: number): boolean {
  const bestVerdict = floor === 0 ? rank.fits : rank.fitsWithWork;
  return verdict <= bestVerdict && skill <= floor;
}
