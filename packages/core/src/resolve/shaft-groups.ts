import type { BenchGraph } from "../graph/bench-graph.ts";
import type { VerdictIndex } from "../graph/verdict-index.ts";
import type { Part } from "../parts/part.ts";

/** Shafts that no gate tells apart, with what is on them: one look at the first settles whether any is worth a closer one. */
export interface ShaftGroup {
  readonly key: string;
  readonly first: Part;
  readonly shafts: readonly Part[];
}

/** Groups the shafts of a bench, once for all heads: by the ids of their first ones, and by their ids within each. */
export function shaftGroups(graph: BenchGraph, index: VerdictIndex): ShaftGroup[] {
  return withShafts([], graph.at.shaft, graph, index);
}

/** The groups with more shafts in them. */
export function withShafts(
  groups: readonly ShaftGroup[],
  more: readonly Part[],
  graph: BenchGraph,
  index: VerdictIndex,
): ShaftGroup[] {
  if (more.length === 0) return [...groups];
  const added = new Map<string, Part[]>();
  for (const shaft of more) {
    const key = groupKey(shaft, graph, index);
    const own = added.get(key);
    if (own) own.push(shaft);
    else added.set(key, [shaft]);
  }
  const grown = groups.map((group) => {
    const own = added.get(group.key);
    if (!own) return group;
    added.delete(group.key);
    return groupOf(group.key, [...group.shafts, ...own]);
  });
  const fresh = [...added].map(([key, shafts]) => groupOf(key, shafts));
  return [...grown, ...fresh].sort((a, b) => byId(a.first, b.first));
}

function groupOf(key: string, unsorted: readonly Part[]): ShaftGroup {
  const shafts = unsorted.toSorted(byId);
  return { key, first: shafts[0] as Part, shafts };
}

const byId = (a: Part, b: Part) => (a.id < b.id ? -1 : 1);

/** A shaft bonded in a head is a group by itself, for with that head it takes less work than any other. */
function groupKey(shaft: Part, graph: BenchGraph, index: VerdictIndex): string {
  const own = graph.occupancy.at(shaft.id, "tip");
  const joined = own && graph.parts.get(own.other);
  const on = joined?.kind === "adapter" ? index.gateGroup("adapter", joined) : (joined?.id ?? "");
  const gripped = graph.occupancy.at(shaft.id, "butt") !== undefined;
  return `${index.gateGroup("shaft", shaft)}|${joined?.kind}|${on}|${gripped}`;
}
