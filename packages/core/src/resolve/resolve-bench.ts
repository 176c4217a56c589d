import type { Bench, BenchGraph } from "../graph/bench-graph.ts";
import { skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Rule } from "../rules/rule.ts";
import { clubOf, type WeighedClub, weighedClub } from "./club.ts";
import { judgeWay } from "./judge-way.ts";
import { nearMissesOf } from "./near-misses.ts";
import { once } from "./once.ts";
import { openQuestions } from "./open-questions.ts";
import { type PairAnswer, PairJudge } from "./pair-judge.ts";
import { bestClubs, lackingOf, prospectsAbout } from "./pairs-about.ts";
import { rankAnswers } from "./rank-answers.ts";
import { rankQuestions } from "./rank-questions.ts";
import { type ReadyBench, readyBench, skillByDefault } from "./ready-bench.ts";
import type { Question, Resolution, Want } from "./result.ts";
import { clubsOpened, tallyClubs, tallyPairs } from "./tally-pairs.ts";
import { unknownFields } from "./unknown-fields.ts";
import { type AnswersForWants, wantsOf } from "./wants.ts";

/** The answer, or what does not hold together: two parts of one id, joints that cannot be. Missing facts refuse nothing. */
export type ResolveResult =
  | { readonly ok: true; readonly resolution: Resolution }
  | { readonly ok: false; readonly refusals: Refusal[] };

const limitByDefault = 200;

/** The clubs that one head makes with this bench, which it need not be on: the question a listing asks. */
export function clubsForHead(ready: ReadyBench, head: Part): PairAnswer[] {
  const judge = new PairJudge(ready, ready.graph.goal.skill ?? skillByDefault);
  const open = ready.groups.filter((group) => !judge.groupRefused(head, group.first));
  const answers = open.flatMap(({ shafts }) => shafts.map((shaft) => judge.answer(head, shaft)));
  return rankAnswers(answers.filter(({ state }) => state === "club"));
}

/**
 * Resolves a bench under the given rules: the clubs it makes, what it refuses and why, what it lacks, and what to ask. With
 * `about`, the id of a head or a shaft, only the pairs of that one are judged, so that none of them is crowded out.
 */
export function resolveBench(
  bench: Bench,
  rules: readonly Rule[],
  reference: Reference,
  about?: string,
): ResolveResult {
  const made = readyBench(bench, rules, reference);
  return made.ok ? { ok: true, resolution: resolveReady(made.ready, about) } : made;
}

/** What a judgement of worth needs of a bench, each list made when it is first asked for. */
export interface ClubsAndWants {
  readonly clubs: readonly WeighedClub[];
  readonly wants: readonly Want[];
}

/**
 * The clubs of a bench that is ready, the best first, and what it lacks: what a judgement of worth needs, and no more. No
 * refusal is proved, no measure estimated, and no other skill tried. `limit` stands for the goal's own.
 */
export function clubsAndWants(
  ready: ReadyBench,
  about?: string,
  limit: number = ready.graph.goal.limit ?? limitByDefault,
): ClubsAndWants {
  const { graph, index } = ready;
  const { best, open } = about === undefined ? answersOfAll(ready, limit) : answersAbout(ready, limit, about);
  const clubs = once(() => best().flatMap(({ way }) => (way ? [weighedClub(way, ready)] : [])));
  const wants = once(() => wantsOf(open(), graph, index, about).slice(0, limit));
  return {
    get clubs() {
      return clubs();
    },
    get wants() {
      return wants();
    },
  };
}

interface LazyAnswers {
  readonly best: () => readonly PairAnswer[];
  readonly open: () => AnswersForWants;
}

function answersOfAll(ready: ReadyBench, limit: number): LazyAnswers {
  const tally = once(() => tallyClubs(ready, ready.graph.goal.skill ?? skillByDefault, limit));
  return { best: () => tally().clubs, open: tally };
}

/** Other parts may need what it makes a club with today, so one part that is asked about by itself is never settled. */
function answersAbout(ready: ReadyBench, limit: number, about: string): LazyAnswers {
  const judge = new PairJudge(ready, ready.graph.goal.skill ?? skillByDefault);
  const prospects = once(() => prospectsAbout(ready, judge, about));
  return {
    best: () => bestClubs(prospects(), judge, limit),
    open: () => ({ lacking: lackingOf(prospects(), judge), settled: new Set() }),
  };
}

/** The same for a bench that is ready, so that it can be asked about one part after another. */
export function resolveReady(ready: ReadyBench, about?: string): Resolution {
  const { graph, index } = ready;
  const skill = graph.goal.skill ?? skillByDefault;
  const limit = graph.goal.limit ?? limitByDefault;
  const tally = tallyPairs(ready, skill, limit, about);
  const clubs = tally.clubs.flatMap(({ way }) => (way ? [clubOf(way, graph)] : []));
  const questions = rankQuestions(tally.unsettled.map((answer) => questionsOf(answer, graph)));
  const wants = wantsOf(tally, graph, index, about);
  return {
    clubs,
    nearMisses: nearMissesOf(tally.refused, ready, limit),
    wants: wants.slice(0, limit),
    questions: questions.slice(0, limit),
    counts: {
      clubs: tally.clubCount,
      nearMisses: tally.refusedCount,
      wants: wants.length,
      questions: questions.length,
    },
    skill,
    skillOpens: skills
      .slice(skills.indexOf(skill) + 1)
      .map((higher) => ({ skill: higher, moreClubs: clubsOpened(tally, skill, higher) })),
    notices: unknownFields([...graph.parts.values()]),
  };
}

function questionsOf({ way }: PairAnswer, graph: BenchGraph): { readonly questions: readonly Question[] } {
  return { questions: way ? openQuestions(way.route, judgeWay(way.route, graph), graph) : [] };
}
