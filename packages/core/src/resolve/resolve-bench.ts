import { type Bench, type BenchGraph, graphOf } from "../graph/bench-graph.ts";
import { rank, VerdictIndex } from "../graph/verdict-index.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Rule } from "../rules/rule.ts";
import { clubOf } from "./club.ts";
import { PairJudge, type PairAnswer } from "./pair-judge.ts";
import { nearMissesOf } from "./near-misses.ts";
import { rankAnswers } from "./rank-answers.ts";
import { rankQuestions } from "./rank-questions.ts";
import type { Resolution } from "./result.ts";
import { unknownFields } from "./unknown-fields.ts";
import { wantsOf } from "./wants.ts";

export type ResolveResult = { readonly ok: true; readonly resolution: Resolution } | { readonly ok: false; readonly refusals: Refusal[] };

/** The skill allowed until the user says more: most people never re-shaft. */
const skillByDefault: Skill = "screw";
const limitByDefault = 200;

/** A bench made ready once, to be asked many times. */
export interface ReadyBench {
  readonly graph: BenchGraph;
  readonly index: VerdictIndex;
}

/** Indexes a bench for `answersForHead`; the same refusals as `resolveBench`. */
export function readyBench(bench: Bench, rules: readonly Rule[], reference: Reference): { ok: true; ready: ReadyBench } | { ok: false; refusals: Refusal[] } {
  const goal = { ...bench.goal, skill: bench.goal?.skill ?? skillByDefault };
  const built = graphOf({ ...bench, goal }, rules, reference);
  if (!built.ok) return built;
  const index = new VerdictIndex(built.graph);
  for (const place of ["head", "adapter", "shaft", "grip"] as const) for (const part of built.graph.at[place]) index.classes[place].of(part);
  return { ok: true, ready: { graph: built.graph, index } };
}

/** What every shaft of the bench comes to with one head, which need not be on the bench: the question a listing asks. */
export function answersForHead({ graph, index }: ReadyBench, head: Part): PairAnswer[] {
  const judge = new PairJudge(graph, index, graph.goal.skill ?? skillByDefault);
  return graph.at.shaft.map((shaft) => judge.answer(head, shaft));
}

/** Resolves a bench under the given rules: the clubs it makes, what it refuses and why, what it lacks, and what to ask. */
export function resolveBench(bench: Bench, rules: readonly Rule[], reference: Reference): ResolveResult {
  const made = readyBench(bench, rules, reference);
  if (!made.ok) return made;
  const { graph, index } = made.ready;
  const skill = graph.goal.skill ?? skillByDefault;
  const limit = graph.goal.limit ?? limitByDefault;
  const tally = tallyPairs(graph, index, skill);
  const ranked = rankAnswers(tally.clubs);
  const clubs = ranked.slice(0, limit).flatMap(({ way }) => (way ? [clubOf(way, graph)] : []));
  const questions = rankQuestions(clubs);
  const wants = wantsOf({ lacking: tally.lacking, settled: settledParts(ranked) }, graph, index);
  return {
    ok: true,
    resolution: {
      clubs,
      nearMisses: nearMissesOf(tally.refused, graph, limit),
      wants: wants.slice(0, limit),
      questions,
      counts: { clubs: ranked.length, nearMisses: tally.refusedCount, wants: wants.length, questions: questions.length },
      skill,
      skillOpens: skills.slice(skills.indexOf(skill) + 1).map((higher) => ({ skill: higher, moreClubs: opened(tally, skill, higher) })),
      notices: unknownFields(bench.parts),
    },
  };
}

interface Tally {
  readonly clubs: PairAnswer[];
  readonly lacking: PairAnswer[];
  /** Refused pairs kept to choose near misses from; `refusedCount` counts them all. */
  readonly refused: PairAnswer[];
  refusedCount: number;
  /** By skill, the pairs that become a club there and not below. */
  readonly bySkill: number[];
}

/** Near misses are chosen from at most so many refused pairs. */
const refusedKept = 2000;

function tallyPairs(graph: BenchGraph, index: VerdictIndex, skill: Skill): Tally {
  const allowed = new PairJudge(graph, index, skill);
  const unlimited = new PairJudge({ ...graph, goal: { ...graph.goal, skill: undefined } }, index, "machine");
  const tally: Tally = { clubs: [], lacking: [], refused: [], refusedCount: 0, bySkill: skills.map(() => 0) };
  for (const head of graph.at.head) {
    for (const shaft of graph.at.shaft) addPair(tally, allowed.answer(head, shaft), unlimited.leastSkill(head, shaft));
  }
  return tally;
}

function addPair(tally: Tally, answer: PairAnswer, leastSkill: number | undefined): void {
  if (answer.state === "club") tally.clubs.push(answer);
  else if (answer.state === "lacks") tally.lacking.push(answer);
  else {
    tally.refusedCount += 1;
    if (tally.refused.length < refusedKept) tally.refused.push(answer);
  }
  if (leastSkill !== undefined) tally.bySkill[leastSkill] = (tally.bySkill[leastSkill] ?? 0) + 1;
}

/** How many pairs become clubs above one skill and up to another. */
function opened({ bySkill }: Tally, from: Skill, upTo: Skill): number {
  return bySkill.slice(skills.indexOf(from) + 1, skills.indexOf(upTo) + 1).reduce((sum, count) => sum + count, 0);
}

/** Heads and shafts that make a club already, with or without work: nothing has to be looked for on their account. */
function settledParts(clubs: readonly PairAnswer[]): Set<string> {
  const settled = clubs.filter(({ way }) => way && way.ranked.verdict <= rank.fitsWithWork);
  return new Set(settled.flatMap(({ head, shaft }) => [head.id, shaft.id]));
}
