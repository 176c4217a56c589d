import { findingFrom } from "../explain/say-finding.ts";
import { verdicts } from "../findings/verdict.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import { goalFact } from "../graph/goal-fact.ts";
import { type RouteFinding, skillOfSteps } from "../graph/judge-route.ts";
import { contextOf } from "../graph/route.ts";
import type { ClubParts } from "../measure/build.ts";
import type { Estimates } from "../measure/estimate.ts";
import { estimateClub } from "../measure/estimates.ts";
import { judgeMusts, judgeWay } from "./judge-way.ts";
import { once } from "./once.ts";
import { openQuestions } from "./open-questions.ts";
import type { ReadyBench } from "./ready-bench.ts";
import type { Club } from "./result.ts";
import type { Way } from "./way.ts";
import { workSteps } from "./work-steps.ts";

/** A way made into a club: every rule's findings with their words, the work in order, the estimates and the questions. */
export function clubOf({ route, ranked }: Way, graph: BenchGraph): Club {
  const context = contextOf(route.chosen, graph);
  const findings = judgeWay(route, graph);
  return {
    ...plainClubOf({ route, ranked }, findings, graph),
    estimates: estimatesOf(route.chosen as Pick<ClubParts, "head" | "adapter" | "shaft" | "grip">, graph),
    findings: findings.flatMap((finding) => findingFrom(finding, context) ?? []),
    questions: openQuestions(route, findings, graph),
  };
}

/** A club without its words and measures: what is joined, whether that fits, and the work it takes. */
export type PlainClub = Omit<Club, "estimates" | "findings" | "questions">;

/** A way made into as much of a club as planning needs, which makes thousands of them. */
export function plainClub(way: Way, ready: Pick<ReadyBench, "graph" | "index">): PlainClub {
  return plainClubOf(way, judgeMusts(way.route, ready), ready.graph);
}

/** A club as a judgement of worth needs it: with what has to be asked while it is unsettled, without its words and measures. */
export type WeighedClub = PlainClub & Pick<Club, "questions">;

/** A way made into a club to judge the worth of. */
export function weighedClub(way: Way, ready: Pick<ReadyBench, "graph" | "index">): WeighedClub {
  const { graph } = ready;
  const findings = judgeMusts(way.route, ready);
  const plain = plainClubOf(way, findings, graph);
  const questions = once(() =>
    plain.verdict === "unsettled" ? openQuestions(way.route, findings, graph) : [],
  );
  return {
    ...plain,
    get questions() {
      return questions();
    },
  };
}

function plainClubOf(
  { route, ranked }: Way,
  findings: readonly RouteFinding[],
  graph: BenchGraph,
): PlainClub {
  const { head, adapter, shaft, grip } = route.chosen;
  if (!head || !shaft || !grip) throw new Error("a club was asked for with a place left open");
  const work = workSteps(route, findings, graph);
  return {
    id: [head.id, adapter?.id ?? "-", shaft.id, grip.id].join("+"),
    head: head.id,
    adapter: adapter?.id ?? null,
    shaft: shaft.id,
    grip: grip.id,
    verdict: verdicts[ranked.verdict] ?? "unsettled",
    work,
    minutes: work.reduce((sum, { minutes }) => sum + minutes, 0),
    skill: skillOfSteps(work, graph.work),
    undoes: route.undoes,
  };
}

/** Estimates at the wanted length where it can be reached, else as the parts come. */
function estimatesOf(
  chosen: Pick<ClubParts, "head" | "adapter" | "shaft" | "grip">,
  graph: BenchGraph,
): Estimates {
  const { gripped, bonded } = contextOf(chosen, graph);
  const parts: ClubParts = { ...chosen, gripped, bonded };
  const wantedIn = goalFact("playingLengthIn", contextOf(chosen, graph)).value;
  const atLength = estimateClub(
    parts,
    wantedIn === undefined ? {} : { playingLengthIn: wantedIn },
    graph.reference,
  );
  if (atLength.ok) return atLength.estimates;
  const asIs = estimateClub(parts, {}, graph.reference);
  return asIs.ok ? asIs.estimates : nothingEstimated(asIs.refusals);
}

/** When the parts themselves cannot be measured up, every estimate is open and the reasons are named. */
function nothingEstimated(refusals: readonly { field: string; expected: string }[]): Estimates {
  return {
    playingLengthIn: null,
    rulesLengthIn: null,
    massG: null,
    balanceFromButtIn: null,
    swingWeight: null,
    moiKgCm2: null,
    frequencyCpm: null,
    loftDeg: null,
    lieDeg: null,
    faceAngleDeg: null,
    settings: [],
    bond: null,
    cutLengthIn: null,
    shaftMassG: null,
    shaftBalanceFromTipIn: null,
    missing: refusals.map(({ field, expected }) => ({
      quantity: "everything",
      part: "",
      field,
      reason: expected,
    })),
  };
}
