import type { BenchGraph } from "../graph/bench-graph.ts";
import type { PairAnswer } from "./pair-judge.ts";
import { isRefusal, nearMissOf, refusalsOf } from "./proof.ts";
import type { NearMiss } from "./result.ts";

/**
 * Refused pairs with their proofs, the nearest first: those that the parts refuse before those that only the work does; the
 * fewer rules refuse the nearer; and the later the first refusal stands in the list of rules, the more has been passed.
 */
export function nearMissesOf(refused: readonly PairAnswer[], graph: BenchGraph, limit: number): NearMiss[] {
  const weighed = refused.map((answer) => ({ answer, ...weightOf(answer, graph) }));
  weighed.sort((a, b) => a.weight - b.weight);
  return mixed(weighed)
    .slice(0, limit)
    .map(({ answer: { head, shaft } }) => nearMissOf(head, shaft, graph));
}

interface Weighed {
  readonly answer: PairAnswer;
  readonly weight: number;
  readonly rule: string;
}

function weightOf({ head, shaft }: PairAnswer, graph: BenchGraph): Pick<Weighed, "weight" | "rule"> {
  const onlyTheWork = { weight: graph.rules.length ** 2, rule: "" };
  const weights = refusalsOf(head, shaft, graph).map(({ findings }) => {
    const refusals = findings.filter((finding) => isRefusal(finding) && !finding.compiled.readsWork);
    const first = refusals[0]?.compiled;
    if (!first) return onlyTheWork;
    return { weight: refusals.length * graph.rules.length - graph.rules.indexOf(first), rule: first.rule.id };
  });
  return weights.reduce((least, each) => (each.weight < least.weight ? each : least), onlyTheWork);
}

/** The nearest of each rule, then the second nearest of each, and so on, so that one rule does not fill the page. */
function mixed(weighed: readonly Weighed[]): Weighed[] {
  const turns = new Map<string, number>();
  const placed = weighed.map((each) => {
    const turn = turns.get(each.rule) ?? 0;
    turns.set(each.rule, turn + 1);
    return { each, turn: each.rule === "" ? Number.POSITIVE_INFINITY : turn };
  });
  return placed.sort((a, b) => (a.turn === b.turn ? 0 : a.turn - b.turn)).map(({ each }) => each);
}
