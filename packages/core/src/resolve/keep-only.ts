import type { CitedFact } from "../findings/cited-fact.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import type { Claim } from "../parts/claim.ts";
import type { Goal } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";

/** The bench with these two parts and whatever is joined to the shaft, on which nothing is known but the given facts. */
export function keepOnly(
  facts: readonly CitedFact[],
  pair: { head: string; shaft: string },
  graph: BenchGraph,
): BenchGraph {
  const parts = new Map<string, Part>();
  for (const id of [pair.head, pair.shaft, ...joinedTo(pair.shaft, graph)]) parts.set(id, bareOf(id, graph));
  const goal: Goal = {};
  const claims: Claim[] = [];
  for (const fact of facts) {
    if (fact.of === "part") setAt(parts.get(fact.part), fact.field, fact.value);
    else if (fact.of === "goal") setAt(goal, fact.field, fact.value);
    else claims.push(graph.claims[fact.index] as Claim);
  }
  return { ...graph, parts, goal, claims };
}

function joinedTo(shaft: string, graph: BenchGraph): string[] {
  const occupants = [graph.occupancy.at(shaft, "tip"), graph.occupancy.at(shaft, "butt")];
  return occupants.flatMap((occupant) => (occupant ? [occupant.other] : []));
}

/** A part of which nothing is known but what it is called. */
function bareOf(id: string, graph: BenchGraph): Part {
  const part = graph.parts.get(id);
  if (!part) throw new Error(`no part ${id} on this bench`);
  return { id, kind: part.kind, maker: part.maker, model: part.model } as Part;
}

function setAt(target: object | undefined, field: string, value: unknown): void {
  const keys = field.split(".");
  const last = keys.pop() as string;
  let at = target as Record<string, unknown> | undefined;
  for (const key of keys) {
    if (!at) return;
    at[key] ??= {};
    at = at[key] as Record<string, unknown>;
  }
  if (at) at[last] = value;
}
