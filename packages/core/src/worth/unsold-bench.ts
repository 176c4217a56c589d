import type { Bench } from "../graph/bench-graph.ts";

/** The bench without what has been sold: it is kept for the books, and makes no club. */
export function unsoldBench(bench: Bench): Bench {
  const parts = bench.parts.filter(({ soldFor, soldOn }) => soldFor === undefined && soldOn === undefined);
  if (parts.length === bench.parts.length) return bench;
  const here = new Set(parts.map(({ id }) => id));
  const joints = bench.joints?.filter(({ parts: [one, other] }) => here.has(one) && here.has(other));
  return { ...bench, parts, ...(joints ? { joints } : {}) };
}
