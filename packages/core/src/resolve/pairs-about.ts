import type { Part } from "../parts/part.ts";
import { compareRanked, type PairAnswer, type PairJudge, type Prospect } from "./pair-judge.ts";
import { compareAnswers } from "./rank-answers.ts";
import type { ReadyBench } from "./ready-bench.ts";

/** All heads and shafts, or the one that is asked about with all of the other place. */
export function pairsAbout({ graph, groups }: ReadyBench, about: string | undefined) {
  const part = about === undefined ? undefined : graph.parts.get(about);
  const only = (place: Part["kind"]) => (part?.kind === place ? [part] : undefined);
  const shaft = only("shaft");
  return {
    heads: only("head") ?? graph.at.head,
    groups: shaft?.[0] ? [{ first: shaft[0], shafts: shaft }] : groups,
  };
}

/** The pairs about one part that are not refused. */
export function prospectsAbout(ready: ReadyBench, judge: PairJudge, about: string): Prospect[] {
  const { heads, groups } = pairsAbout(ready, about);
  return heads.flatMap((head) =>
    groups
      .filter(({ first }) => !judge.groupRefused(head, first))
      .flatMap(({ shafts }) => shafts.flatMap((shaft) => judge.prospect(head, shaft) ?? [])),
  );
}

/** Of these pairs those that lack a part which is not here. */
export function lackingOf(prospects: readonly Prospect[], judge: PairJudge): PairAnswer[] {
  return prospects
    .filter((prospect) => !judge.hasWay(prospect))
    .map(({ head, shaft }) => ({ head, shaft, state: "lacks", way: undefined }));
}

/** The best clubs of these pairs: those that could come to most are tried first, so that most need not be tried at all. */
export function bestClubs(prospects: readonly Prospect[], judge: PairJudge, limit: number): PairAnswer[] {
  const open = prospects.flatMap((prospect) => (prospect.least ? [{ prospect, least: prospect.least }] : []));
  open.sort((one, other) => compareRanked(one.least, other.least));
  const best: PairAnswer[] = [];
  for (const { prospect, least } of open) {
    const last = best.length < limit ? undefined : best[limit - 1];
    if (last?.way && compareRanked(least, last.way.ranked) > 0) break;
    const answer = judge.answerTo(prospect);
    if (answer.state === "club" && (!last || compareAnswers(answer, last) < 0)) insert(best, answer, limit);
  }
  return best;
}

function insert(best: PairAnswer[], answer: PairAnswer, limit: number): void {
  const place = best.findIndex((other) => compareAnswers(answer, other) < 0);
  best.splice(place < 0 ? best.length : place, 0, answer);
  if (best.length > limit) best.pop();
}
