import { rank } from "../graph/verdict-index.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import { type PairAnswer, PairJudge } from "./pair-judge.ts";
import { pairsAbout } from "./pairs-about.ts";
import { compareAnswers, rankAnswers } from "./rank-answers.ts";
import type { ReadyBench } from "./ready-bench.ts";

/** What all pairs of a bench come to: everything is counted, and so much is kept as an answer can use. */
export interface Tally {
  /** The best clubs, ranked, at most as many as were asked for. */
  clubs: PairAnswer[];
  /** The worst of the best clubs so far, when there are as many as were asked for: none worse than it need be kept. */
  lastKept: PairAnswer | undefined;
  clubCount: number;
  /** Clubs that wait for an answer, from which the questions are read. */
  readonly unsettled: PairAnswer[];
  /** Pairs that lack a part which is not here. */
  readonly lacking: PairAnswer[];
  /** Refused pairs from which near misses are chosen. */
  readonly refused: PairAnswer[];
  refusedCount: number;
  /** Heads and shafts, by id, that make a club already, with or without work. */
  readonly settled: Set<string>;
  /** By skill, the pairs that become a club there and not at the skill allowed. */
  readonly bySkill: number[];
}

/** At most so many of each kind of pair are kept to read near misses, questions and wants from. */
const kept = { refused: 1000, unsettled: 5000, lacking: 20000 } as const;

/** Judges every pair, whole groups at once where a gate allows it. */
export function tallyPairs(ready: ReadyBench, skill: Skill, limit: number, about?: string): Tally {
  const allowed = new PairJudge(ready, skill);
  const unlimited = new PairJudge(ready, "machine");
  const tally = emptyTally();
  const { heads, groups } = pairsAbout(ready, about);
  for (const head of heads) {
    for (const { first, shafts } of groups) {
      const isRefused = allowed.groupRefused(head, first);
      if (isRefused && unlimited.groupRefused(head, first)) {
        for (const shaft of shafts) addRefused(tally, { head, shaft, state: "refused", way: undefined });
        continue;
      }
      for (const shaft of shafts) addPair(tally, allowed, unlimited, head, shaft);
    }
    keepBest(tally, limit, 20 * limit);
  }
  keepBest(tally, limit, 0);
  return tally;
}

/** The same for those who ask for clubs and what is lacking alone: refused pairs are passed over, and no other skill is tried. */
export function tallyClubs(
  ready: ReadyBench,
  skill: Skill,
  limit: number,
): Pick<Tally, "clubs" | "lacking" | "settled"> {
  const judge = new PairJudge(ready, skill);
  const tally = emptyTally();
  const { graph, groups } = ready;
  for (const head of graph.at.head) {
    for (const { first, shafts } of groups) {
      if (!judge.groupRefused(head, first))
        for (const shaft of shafts) addFound(tally, judge.answer(head, shaft));
    }
    keepBest(tally, limit, 20 * limit);
  }
  keepBest(tally, limit, 0);
  return tally;
}

/** How many pairs become clubs above one skill and up to another. */
export function clubsOpened({ bySkill }: Tally, from: Skill, upTo: Skill): number {
  const opened = bySkill.slice(skills.indexOf(from) + 1, skills.indexOf(upTo) + 1);
  return opened.reduce((sum, count) => sum + count, 0);
}

/** Lets go of the clubs that cannot be among those asked for, and remembers the last of those that can. */
function keepBest(tally: Tally, limit: number, unless: number): void {
  if (tally.clubs.length <= unless) return;
  tally.clubs = rankAnswers(tally.clubs).slice(0, limit);
  if (tally.clubs.length === limit) tally.lastKept = tally.clubs.at(-1);
}

function emptyTally(): Tally {
  return {
    clubs: [],
    lastKept: undefined,
    clubCount: 0,
    unsettled: [],
    lacking: [],
    refused: [],
    refusedCount: 0,
    settled: new Set(),
    bySkill: skills.map(() => 0),
  };
}

function addPair(tally: Tally, allowed: PairJudge, unlimited: PairJudge, head: Part, shaft: Part): void {
  const answer = allowed.answer(head, shaft);
  addFound(tally, answer);
  if (answer.state === "club") return;
  if (answer.state === "refused") addRefused(tally, answer);
  const leastSkill = unlimited.leastSkill(head, shaft);
  if (leastSkill !== undefined) tally.bySkill[leastSkill] = (tally.bySkill[leastSkill] ?? 0) + 1;
}

/** A club, or a pair that lacks a part. */
function addFound(tally: Tally, answer: PairAnswer): void {
  if (answer.state === "club") addClub(tally, answer);
  else if (answer.state === "lacks" && tally.lacking.length < kept.lacking) tally.lacking.push(answer);
}

function addClub(tally: Tally, answer: PairAnswer): void {
  tally.clubCount += 1;
  if (!tally.lastKept || compareAnswers(answer, tally.lastKept) < 0) tally.clubs.push(answer);
  if (answer.way?.ranked.verdict === rank.unsettled) {
    if (tally.unsettled.length < kept.unsettled) tally.unsettled.push(answer);
  } else tally.settled.add(answer.head.id).add(answer.shaft.id);
}

function addRefused(tally: Tally, answer: PairAnswer): void {
  tally.refusedCount += 1;
  if (tally.refused.length < kept.refused) tally.refused.push(answer);
}
