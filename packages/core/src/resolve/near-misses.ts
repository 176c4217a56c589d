import type { BenchGraph } from "../graph/bench-graph.ts";
import type { PairAnswer } from "./pair-judge.ts";
import { nearMissOf, refusalsOf } from "./proof.ts";
import type { NearMiss } from "./result.ts";

/**
 * Refused pairs with their proofs, the nearest first: those that the parts refuse before those that only the work does, and
 * the fewer rules refuse the nearer it is.
 */
export function nearMissesOf(refused: readonly PairAnswer[], graph: BenchGraph, limit: number): NearMiss[] {
  const weighed = refused.map((answer) => ({ answer, weight: weightOf(answer, graph) }));
  weighed.sort((a, b) => a.weight - b.weight);
  return weighed.slice(0, limit).map(({ answer: { head, shaft } }) => nearMissOf(head, shaft, graph));
}

const onlyTheWork = 1000;

function weightOf({ head, shaft }: PairAnswer, graph: BenchGraph): number {
  const options = refusalsOf(head, shaft, graph).map(({ findings }) => {
    const refusals = findings.filter(({ outcome }) => outcome.verdict === "does-not-fit");
    const byParts = refusals.filter(({ compiled }) => !compiled.readsWork).length;
    return byParts === 0 ? onlyTheWork : byParts;
  });
  return Math.min(...options.filter((weight) => weight < onlyTheWork), onlyTheWork);
}
