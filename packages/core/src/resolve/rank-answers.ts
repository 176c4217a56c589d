import type { PairAnswer } from "./pair-judge.ts";

/** Clubs, the best first: by verdict, by skill, by joints left alone, by steps saved, then by name so that ties stay put. */
export function rankAnswers(answers: readonly PairAnswer[]): PairAnswer[] {
  return answers.toSorted(compareAnswers);
}

function compareAnswers(a: PairAnswer, b: PairAnswer): number {
  const [left, right] = [weights(a), weights(b)];
  const at = left.findIndex((weight, index) => weight !== right[index]);
  if (at >= 0) return (left[at] as number) - (right[at] as number);
  return nameOf(a) < nameOf(b) ? -1 : 1;
}

function weights({ way }: PairAnswer): number[] {
  return way
    ? [way.ranked.verdict, way.ranked.skill, way.route.undoes.length, way.route.steps.length]
    : [Number.MAX_VALUE];
}

function nameOf({ head, shaft }: PairAnswer): string {
  return `${head.id} ${shaft.id}`;
}
