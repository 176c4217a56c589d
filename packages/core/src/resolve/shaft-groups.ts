import type { BenchGraph } from "../graph/bench-graph.ts";
import type { VerdictIndex } from "../graph/verdict-index.ts";
import type { Part } from "../parts/part.ts";

/** Shafts that no gate tells apart, with what is on them: one look at the first settles whether any is worth a closer one. */
export interface ShaftGroup {
  readonly first: Part;
  readonly shafts: readonly Part[];
}

/** Groups the shafts of a bench, once for all heads. */
export function shaftGroups(graph: BenchGraph, index: VerdictIndex): ShaftGroup[] {
  const groups = new Map<string, Part[]>();
  for (const shaft of graph.at.shaft) {
    const key = groupKey(shaft, graph, index);
    const known = groups.get(key);
    if (known) known.push(shaft);
    else groups.set(key, [shaft]);
  }
  return [...groups.values()].map((shafts) => ({ first: shafts[0] as Part, shafts }));
}

/** A shaft bonded in a head is a group by itself, for with that head it takes less work than any other. */
function groupKey(shaft: Part, graph: BenchGraph, index: VerdictIndex): string {
  const own = graph.occupancy.at(shaft.id, "tip");
  const joined = own && graph.parts.get(own.other);
  const on = joined?.kind === "adapter" ? index.gateGroup("adapter", joined) : (joined?.id ?? "");
  const gripped = graph.occupancy.at(shaft.id, "butt") !== undefined;
  return `${index.gateGroup("shaft", shaft)}|${joined?.kind}|${on}|${gripped}`;
}
