import type { BenchGraph } from "../graph/bench-graph.ts";
import type { VerdictIndex } from "../graph/verdict-index.ts";
import type { PairAnswer } from "./pair-judge.ts";
import { openOptions } from "./pair-options.ts";
import { nearMissOf } from "./proof.ts";
import type { KnownProofs } from "./proof-key.ts";
import type { ReadyBench } from "./ready-bench.ts";
import type { NearMiss } from "./result.ts";

/**
 * Refused pairs with their proofs, the nearest first: those that the parts refuse before those that only the work does; the
 * fewer rules refuse the nearer; and the later the first refusal stands in the list of rules, the more has been passed.
 */
export function nearMissesOf(
  refused: readonly PairAnswer[],
  { graph, index }: Pick<ReadyBench, "graph" | "index">,
  limit: number,
): NearMiss[] {
  const weighed = refused.map((answer) => ({ answer, ...weightOf(answer, graph, index) }));
  weighed.sort((a, b) => a.weight - b.weight);
  const known: KnownProofs = new Map();
  return mixed(weighed)
    .slice(0, limit)
    .map(({ answer: { head, shaft } }) => nearMissOf(head, shaft, graph, known));
}

interface Weighed {
  readonly answer: PairAnswer;
  readonly weight: number;
  readonly rule: string;
}

/** The rules are looked up, not judged again: what a joint leaves open is no refusal, so that joints need no look here. */
function weightOf(
  { head, shaft }: PairAnswer,
  graph: BenchGraph,
  index: VerdictIndex,
): Pick<Weighed, "weight" | "rule"> {
  const onlyTheWork = { weight: graph.rules.length ** 2, rule: "" };
  const weights = openOptions(head, shaft, graph).map(({ chosen }) => {
    const refusals = index.refusals(chosen);
    const [first] = refusals;
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
