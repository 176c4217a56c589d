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

interface WayVisitor {
  /** Whether ways are wanted that come to no better than this. */
  readonly isWanted: (bound: Ranked) => boolean;
  readonly take: (chosen: Chosen, ranked: Ranked, start: Start) => MoreWays;
}

/** The ways in which a pair could come together with no part but what is on the shaft. */
interface Starts {
  readonly direct: Start | undefined;
  readonly own: Start | undefined;
}

/** A pair that is not refused, with the best that it could come to: no way of it is better. */
export interface Prospect {
  readonly head: Part;
  readonly shaft: Part;
  readonly starts: Starts;
  readonly floor: number;
  /** The best that an adapter which is not on the shaft could make of it. */
  readonly open: Ranked | undefined;
  /** Nothing where no way could lead to a club with what is here. */
  readonly least: Ranked | undefined;
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
    const prospect = this.prospect(head, shaft);
    return prospect ? this.answerTo(prospect) : { head, shaft, state: "refused", way: undefined };
  }

  /** What a pair could come to at best, before any way is tried; nothing where it is refused. */
  prospect(head: Part, shaft: Part): Prospect | undefined {
    const starts = this.startsOf(head, shaft);
    const floor = this.skillFloor(head, shaft, starts);
    if (floor === undefined) return undefined;
    const open = this.openBound(head, shaft);
    const bounds = [starts.direct, starts.own].map((start) =>
      start && this.isAllowed(start.ranked) ? this.boundOf(start, shaft) : undefined,
    );
    return { head, shaft, starts, floor, open, least: leastOf([...bounds, open]) };
  }

  /** The best way of a pair that is not refused. */
  answerTo({ head, shaft, starts, floor, open }: Prospect): PairAnswer {
    let best: Way | undefined;
    this.eachWay(
      head,
      shaft,
      starts,
      {
        isWanted: (bound) => !best || compareRanked(bound, best.ranked) <= 0,
        take: (chosen, ranked, start) => {
          if (!best || ranked.verdict <= best.ranked.verdict) {
            const way = new LazyWay(chosen, ranked, this.graph.occupancy);
            if (!best || compareWays(way, best) < 0) best = way;
          }
          if (isUnbeatable(ranked, floor)) return "none";
          if (!isNoWorse(ranked, this.boundOf(start, shaft))) return "all";
          const isOpen = start !== starts.direct && start !== starts.own;
          const isBestOpen =
            isOpen && open && isNoWorse(ranked, open) && this.isFresh(head, start.chosen.adapter);
          return isBestOpen ? "none" : "other-starts";
        },
      },
      open,
    );
    return { head, shaft, state: best ? "club" : "lacks", way: best };
  }

  /** Whether there is a way at all for a pair that is not refused. */
  hasWay({ head, shaft, starts }: Prospect): boolean {
    let found = false;
    const take = (): MoreWays => {
      found = true;
      return "none";
    };
    this.eachWay(head, shaft, starts, { isWanted: () => true, take });
    return found;
  }

  /** The least skill, by its rank, at which these two become a club with what is here. */
  leastSkill(head: Part, shaft: Part): number | undefined {
    const starts = this.startsOf(head, shaft);
    const floor = this.skillFloor(head, shaft, starts);
    if (floor === undefined) return undefined;
    let least: number | undefined;
    this.eachWay(head, shaft, starts, {
      isWanted: () => true,
      take: (_, { skill }) => {
        if (least === undefined || skill < least) least = skill;
        return least <= floor ? "none" : "all";
      },
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
    this.eachWay(head, shaft, this.startsOf(head, shaft), {
      isWanted: () => true,
      take: (chosen, ranked) => {
        found.push(new LazyWay(chosen, ranked, this.graph.occupancy));
        return "all";
      },
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

  /** What a start comes to at best, with a grip that asks for no more than to be put on. */
  private boundOf({ still, joining }: Start, shaft: Part): Ranked {
    const skill = Math.max(still.skill, joining.skill, this.onShaft(shaft).gripSkill);
    return { verdict: still.verdict === rank.fits && skill > 0 ? rank.fitsWithWork : still.verdict, skill };
  }

  /** What a pair comes to at best with an adapter that is not on the shaft; nothing where none is tried. */
  private openBound(head: Part, shaft: Part): Ranked | undefined {
    if (this.loose.adapter.length === 0 || !mayTakeAdapter(head)) return undefined;
    const skill = Math.max(this.bondSkill, this.onShaft(shaft).gripSkill);
    // What a head that may take a shaft itself is asked for beside the shaft need not hold through an adapter.
    if (mayTakeShaft(head)) return { verdict: rank.fitsWithWork, skill };
    const { still } = this.index.gripless({ head, shaft }, { joined: [], skill });
    return { verdict: Math.max(still.verdict, rank.fitsWithWork), skill: Math.max(still.skill, skill) };
  }

  /** Whether no joint has to be undone for an adapter, and none that already stands could save a step with another. */
  private isFresh(head: Part, adapter: Part | undefined): boolean {
    const { occupancy } = this.graph;
    const isLoose = adapter && !occupancy.at(adapter.id, "bore") && !occupancy.at(adapter.id, "shoulder");
    return isLoose === true && !occupancy.at(head.id, "socket");
  }

  /** Hands on every way for as long as more are wanted; `open` is the best that an adapter from elsewhere could bring. */
  private eachWay(
    head: Part,
    shaft: Part,
    { direct, own }: Starts,
    visitor: WayVisitor,
    open?: Ranked,
  ): void {
    if (direct && this.eachGrip(direct, shaft, visitor)) return;
    if (!mayTakeAdapter(head)) return;
    if (own && this.eachGrip(own, shaft, visitor)) return;
    if (open && !visitor.isWanted(open)) return;
    for (const adapter of this.adaptersOf(head)) {
      if (adapter === own?.chosen.adapter) continue;
      if (this.eachGrip(this.start({ head, adapter, shaft }), shaft, visitor)) return;
    }
  }

  /** Hands on the ways from one start; whether none is wanted after them. */
  private eachGrip(start: Start, shaft: Part, { isWanted, take }: WayVisitor): boolean {
    if (!this.isAllowed(start.ranked) || !isWanted(this.boundOf(start, shaft))) return false;
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

/** Below nought when the first is better. */
export function compareRanked(a: Ranked, b: Ranked): number {
  return a.verdict - b.verdict || a.skill - b.skill;
}

const isNoWorse = (ranked: Ranked, bound: Ranked) =>
  ranked.verdict <= bound.verdict && ranked.skill <= bound.skill;

function leastOf(bounds: readonly (Ranked | undefined)[]): Ranked | undefined {
  const known = bounds.filter((bound) => bound !== undefined);
  return known.length === 0 ? undefined : known.reduce((a, b) => (compareRanked(b, a) < 0 ? b : a));
}
