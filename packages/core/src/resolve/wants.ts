import { sayWant } from "../explain/say-want.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import { rawAt } from "../graph/fact.ts";
import { goalFact } from "../graph/goal-fact.ts";
import { type Chosen, contextOf } from "../graph/route.ts";
import { mayTakeShaft, type Place } from "../graph/shape.ts";
import { rank, type VerdictIndex } from "../graph/verdict-index.ts";
import {
  type WantedPart,
  wantedAdapter,
  wantedGrip,
  wantedHeads,
  wantedShafts,
} from "../graph/wanted-part.ts";
import { clubBbgm } from "../measure/bbgm.ts";
import { skills } from "../parts/goal.ts";
import { clubTypes, type Part } from "../parts/part.ts";
import { typicalReading } from "../parts/typical.ts";
import type { PairAnswer } from "./pair-judge.ts";
import type { Want } from "./result.ts";

/** What a want is made from before alike ones are put together. */
interface RawWant {
  readonly kind: Want["kind"];
  readonly needs: Want["needs"];
  readonly completes: Want["completes"][number];
}

/** The answers that wants are read from. */
export interface AnswersForWants {
  /** Pairs that lack a part which is not here. */
  readonly lacking: readonly PairAnswer[];
  /** Heads and shafts, by id, that have a settled club already. */
  readonly settled: ReadonlySet<string>;
}

/** Pairs named in a want; the count says how many there are. */
const completesMax = 50;

/** Minimal sets of what is missing, the one that completes most first. */
export function wantsOf(
  answers: AnswersForWants,
  graph: BenchGraph,
  index: VerdictIndex,
  about?: string,
): Want[] {
  const judge = new WantJudge(graph, index);
  const isOpen = ({ id }: Part) => !answers.settled.has(id) && (about === undefined || about === id);
  const raw = [
    ...answers.lacking.flatMap((answer) => judge.forPair(answer)),
    ...graph.at.head.filter(isOpen).flatMap((head) => judge.forHead(head)),
    ...graph.at.shaft.filter(isOpen).flatMap((shaft) => judge.forShaft(shaft)),
  ];
  const grouped = new Map<string, RawWant[]>();
  for (const each of raw) {
    const id = `${each.kind} ${JSON.stringify(each.needs)}`;
    const alike = grouped.get(id);
    if (alike) alike.push(each);
    else grouped.set(id, [each]);
  }
  return [...grouped.entries()]
    .map(([id, alike]) => wantFrom(id, alike))
    .sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1));
}

function wantFrom(id: string, alike: readonly RawWant[]): Want {
  const { kind, needs } = alike[0] as RawWant;
  const completes = alike.slice(0, completesMax).map((each) => each.completes);
  return { id, kind, needs, text: sayWant(kind, needs), completes, count: alike.length };
}

/** Imagines the missing part, has the rules judge it, and leaves out every fact that they do not need. */
class WantJudge {
  private readonly graph: BenchGraph;
  private readonly index: VerdictIndex;
  private readonly bondAllowed: boolean;
  private readonly here = new Map<string, boolean>();
  /** What pairs lack, by what tells them apart; null where nothing that could be named would help. */
  private readonly lacks = new Map<string, Omit<RawWant, "completes"> | null>();

  constructor(graph: BenchGraph, index: VerdictIndex) {
    this.graph = graph;
    this.index = index;
    this.bondAllowed = skills.indexOf(graph.goal.skill ?? "machine") >= skills.indexOf("bond");
  }

  /** A pair that lacks an adapter, or a grip. Pairs that no rule tells apart, and for which the same is imagined, lack the same. */
  forPair({ head, shaft }: PairAnswer): RawWant[] {
    if (head.kind !== "head" || shaft.kind !== "shaft") return [];
    const adapter = mayTakeShaft(head) ? undefined : wantedAdapter(head, shaft);
    const grip = this.graph.at.grip.length === 0 ? wantedGrip(shaft) : undefined;
    const { classes } = this.index;
    const alike = [
      classes.head.of(head).class,
      classes.shaft.of(shaft).class,
      this.index.flagsOf(shaft),
      adapter?.part.id,
      grip?.part.id,
    ].join(" ");
    let lack = this.lacks.get(alike);
    if (lack === undefined) {
      lack = this.lackOf(head, shaft, adapter, grip);
      this.lacks.set(alike, lack);
    }
    return lack ? [{ ...lack, completes: { head: head.id, shaft: shaft.id } }] : [];
  }

  private lackOf(
    head: Part,
    shaft: Part,
    adapter: WantedPart | undefined,
    grip: WantedPart | undefined,
  ): Omit<RawWant, "completes"> | null {
    if (adapter) {
      const needs = this.needsOf(adapter, (part) => ({ head, adapter: part, shaft }));
      if (needs && this.isHere("adapter", needs)) return null;
      if (needs) return { kind: "adapter", needs };
    }
    const needs = grip && this.needsOf(grip, (part) => ({ shaft, grip: part }));
    return needs ? { kind: "grip", needs } : null;
  }

  /** A head without a settled club: a shaft for it, with its adapter on where it takes one. */
  forHead(head: Part): RawWant[] {
    if (head.kind !== "head") return [];
    const throughAdapter = !mayTakeShaft(head);
    if (throughAdapter ? rawAt(head, ["socket", "family"]) === undefined : !this.bondAllowed) return [];
    const fitting = this.fitting(wantedShafts(head), (part) => ({ head, shaft: part }));
    const suits = fitting.flatMap((needs) => (needs.suits === undefined ? [] : [needs.suits]));
    if (fitting.length === 0) return [];
    const adapter = throughAdapter
      ? {
          "adapter.family": rawAt(head, ["socket", "family"]),
          ...(head.hand ? { "adapter.hand": head.hand } : {}),
        }
      : {};
    const needs = {
      ...fitting[0],
      ...(suits.length > 0 ? { suits: suits.length === 1 ? suits[0] : suits } : {}),
      ...adapter,
      ...this.length(head),
    };
    return [{ kind: "shaft", needs, completes: { head: head.id, shaft: null } }];
  }

  /** A shaft with an adapter on it and no settled club: a head for it. */
  forShaft(shaft: Part): RawWant[] {
    const own = this.graph.occupancy.at(shaft.id, "tip");
    const adapter = own && this.graph.parts.get(own.other);
    if (adapter?.kind !== "adapter") return [];
    const fitting = this.fitting(wantedHeads(adapter, clubTypes), (part) => ({ head: part, adapter, shaft }));
    const types = fitting.flatMap((needs) => (needs.clubType === undefined ? [] : [needs.clubType]));
    if (fitting.length === 0) return [];
    const needs = {
      ...fitting[0],
      ...(types.length > 0 ? { clubType: types.length === 1 ? types[0] : types } : {}),
    };
    return [{ kind: "head", needs, completes: { head: null, shaft: shaft.id } }];
  }

  /** Whether a part that states all of this is on the bench already, so that another would be no help. */
  private isHere(place: Place, needs: Record<string, unknown>): boolean {
    const key = JSON.stringify([place, needs]);
    const found = this.here.get(key) ?? this.isAmong(place, needs);
    this.here.set(key, found);
    return found;
  }

  private isAmong(place: Place, needs: Record<string, unknown>): boolean {
    const says = (part: Part, path: string) =>
      JSON.stringify(rawAt(part, path.split("."))) === JSON.stringify(needs[path]);
    return this.graph.at[place].some((part) => Object.keys(needs).every((path) => says(part, path)));
  }

  private fitting(wanted: readonly WantedPart[], place: (part: Part) => Chosen): Record<string, unknown>[] {
    return wanted.map((each) => this.needsOf(each, place)).filter((needs) => needs !== undefined);
  }

  /** The facts that the rules need of a wanted part; nothing when they refuse it. */
  private needsOf(given: WantedPart, place: (part: Part) => Chosen): Record<string, unknown> | undefined {
    const { imagined } = this.index;
    const wanted = imagined.once(given);
    if (this.index.verdict(place(wanted.part), [], "screw").verdict === rank.doesNotFit) return undefined;
    const open = (part: Part) => this.index.unsettledRules(place(part));
    const unavoidable = open(wanted.part);
    let kept = wanted;
    for (const path of wanted.states) {
      const less = imagined.without(kept, path);
      if (open(less.part) <= unavoidable) kept = less;
    }
    return Object.fromEntries(kept.states.map((path) => [path, rawAt(kept.part, path.split("."))]));
  }

  /** The least length that reaches the target without an extension, to the quarter inch below. */
  private length(head: Part): Record<string, unknown> {
    if (head.kind !== "head") return {};
    const targetIn = goalFact("playingLengthIn", contextOf({ head }, this.graph)).value as number | undefined;
    const typical = this.graph.reference.typical;
    const bbgm = clubBbgm(
      { head, adapter: mayTakeShaft(head) ? undefined : { id: "typical", kind: "adapter" } },
      typical,
    );
    const cap = typicalReading(typical, { kind: "grip" }, "capThicknessIn");
    if (targetIn === undefined || bbgm === undefined || cap === undefined) return {};
    return { "length.lengthIn": { atLeast: Math.floor((targetIn - bbgm.value - cap.value) * 4) / 4 } };
  }
}
