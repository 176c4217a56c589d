import type { PairAnswer } from "./pair-judge.ts";
import { compareWays } from "./way.ts";

/** Clubs, the best first: by verdict, by skill, by joints left alone, by steps saved, then by name so that ties stay put. */
export function rankAnswers(answers: readonly PairAnswer[]): PairAnswer[] {
  return answers.toSorted(compareAnswers);
}

/** Below nought when the first comes first. */
export function compareAnswers(a: PairAnswer, b: PairAnswer): number {
  if (!a.way || !b.way) return Number(!a.way) - Number(!b.way) || byName(a, b);
  return compareWays(a.way, b.way) || byName(a, b);
}

function byName(a: PairAnswer, b: PairAnswer): number {
  if (a.head === b.head) return a.shaft.id < b.shaft.id ? -1 : 1;
  return nameOf(a) < nameOf(b) ? -1 : 1;
}

function nameOf({ head, shaft }: PairAnswer): string {
  return `${head.id} ${shaft.id}`;
}
