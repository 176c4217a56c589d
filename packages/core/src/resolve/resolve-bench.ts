import type { Bench } from "../graph/bench-graph.ts";
import { rank } from "../graph/verdict-index.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Rule } from "../rules/rule.ts";
import { clubOf } from "./club.ts";
import { nearMissesOf } from "./near-misses.ts";
import { type PairAnswer, PairJudge } from "./pair-judge.ts";
import { rankAnswers } from "./rank-answers.ts";
import { rankQuestions } from "./rank-questions.ts";
import { type ReadyBench, readyBench, skillByDefault } from "./ready-bench.ts";
import type { Resolution } from "./result.ts";
import { unknownFields } from "./unknown-fields.ts";
import { wantsOf } from "./wants.ts";

export type ResolveResult =
  | { readonly ok: true; readonly resolution: Resolution }
  | { readonly ok: false; readonly refusals: Refusal[] };

const limitByDefault = 200;

/** The clubs that one head makes with this bench, which it need not be on: the question a listing asks. */
export function clubsForHead(ready: ReadyBench, head: Part): PairAnswer[] {
  const judge = new PairJudge(ready, ready.graph.goal.skill ?? skillByDefault);
  const open = ready.groups.filter((group) => !judge.groupRefused(head, group));
  const answers = open.flatMap(({ shafts }) => shafts.map((shaft) => judge.answer(head, shaft)));
  return rankAnswers(answers.filter(({ state }) => state === "club"));
}

/** Resolves a bench under the given rules: the clubs it makes, what it refuses and why, what it lacks, and what to ask. */
export function resolveBench(bench: Bench, rules: readonly Rule[], reference: Reference): ResolveResult {
  const made = readyBench(bench, rules, reference);
  if (!made.ok) return made;
  const { graph, index } = made.ready;
  const skill = graph.goal.skill ?? skillByDefault;
  const limit = graph.goal.limit ?? limitByDefault;
  const tally = tallyPairs(made.ready, skill);
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
      counts: {
        clubs: ranked.length,
        nearMisses: tally.refusedCount,
        wants: wants.length,
        questions: questions.length,
      },
      skill,
      skillOpens: skills
        .slice(skills.indexOf(skill) + 1)
        .map((higher) => ({ skill: higher, moreClubs: opened(tally, skill, higher) })),
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
const refusedKept = 1000;

function tallyPairs(ready: ReadyBench, skill: Skill): Tally {
  const { graph, groups } = ready;
  const allowed = new PairJudge(ready, skill);
  const unlimited = new PairJudge(ready, "machine");
  const tally: Tally = { clubs: [], lacking: [], refused: [], refusedCount: 0, bySkill: skills.map(() => 0) };
  for (const head of graph.at.head) {
    for (const group of groups) {
      const isRefused = allowed.groupRefused(head, group);
      const isHopeless = isRefused && unlimited.groupRefused(head, group);
      for (const shaft of isHopeless ? [] : group.shafts) {
        addPair(
          tally,
          isRefused ? refusedPair(head, shaft) : allowed.answer(head, shaft),
          unlimited.leastSkill(head, shaft),
        );
      }
      if (isHopeless)
        addRefused(
          tally,
          group.shafts.map((shaft) => refusedPair(head, shaft)),
        );
    }
  }
  return tally;
}

function refusedPair(head: Part, shaft: Part): PairAnswer {
  return { head, shaft, state: "refused", way: undefined };
}

function addRefused(tally: Tally, pairs: readonly PairAnswer[]): void {
  tally.refusedCount += pairs.length;
  tally.refused.push(...pairs.slice(0, Math.max(0, refusedKept - tally.refused.length)));
}

function addPair(tally: Tally, answer: PairAnswer, leastSkill: number | undefined): void {
  if (answer.state === "club") tally.clubs.push(answer);
  else if (answer.state === "lacks") tally.lacking.push(answer);
  else addRefused(tally, [answer]);
  if (leastSkill !== undefined) tally.bySkill[leastSkill] = (tally.bySkill[leastSkill] ?? 0) + 1;
}

/** How many pairs become clubs above one skill and up to another. */
function opened({ bySkill }: Tally, from: Skill, upTo: Skill): number {
  return bySkill
    .slice(skills.indexOf(from) + 1, skills.indexOf(upTo) + 1)
    .reduce((sum, count) => sum + count, 0);
}

/** Heads and shafts that make a club already, with or without work: nothing has to be looked for on their account. */
function settledParts(clubs: readonly PairAnswer[]): Set<string> {
  const settled = clubs.filter(({ way }) => way && way.ranked.verdict <= rank.fitsWithWork);
  return new Set(settled.flatMap(({ head, shaft }) => [head.id, shaft.id]));
}
