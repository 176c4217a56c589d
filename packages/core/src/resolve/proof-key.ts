import type { CitedFact } from "../findings/cited-fact.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import type { Port } from "../graph/shape.ts";
import type { Part } from "../parts/part.ts";

/** Which of its cited facts a proof keeps, by all that the proof depends on. Good for one bench. */
export type KnownProofs = Map<string, readonly number[]>;

/**
 * All that decides which of these facts refuse a pair: the facts by the place of their part, and how the pair and what is on
 * the shaft are joined. What parts are called is no fact, so long as no rule reads it.
 */
export function proofKey(facts: readonly CitedFact[], head: Part, shaft: Part, graph: BenchGraph): string {
  const [onTip, onButt] = [graph.occupancy.at(shaft.id, "tip"), graph.occupancy.at(shaft.id, "butt")];
  const roles = new Map<string, string>();
  if (onTip) roles.set(onTip.other, "on tip");
  if (onButt) roles.set(onButt.other, "on butt");
  roles.set(head.id, "head").set(shaft.id, "shaft");
  const lies = (id: string | undefined, port: Port) => {
    const occupant = id === undefined ? undefined : graph.occupancy.at(id, port);
    return occupant && [occupant.kind.undo, roles.get(occupant.other) ?? "another"];
  };
  const said = facts.map((fact) =>
    fact.of === "part" ? { ...fact, part: roles.get(fact.part) ?? fact.part } : fact,
  );
  const joints = [
    lies(head.id, "socket"),
    lies(shaft.id, "tip"),
    lies(shaft.id, "butt"),
    lies(onTip?.other, "shoulder"),
  ];
  return JSON.stringify([
    said,
    joints,
    namesRead(graph) ? [...roles.keys()].map((id) => graph.parts.get(id)) : [],
  ]);
}

/** Whether any rule reads what parts are called. */
function namesRead({ musts }: BenchGraph): boolean {
  return musts.some(({ depends }) =>
    Object.values(depends).some((paths) => paths.some(([key]) => key === "maker" || key === "model")),
  );
}
