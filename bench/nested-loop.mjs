import { judgeRoute } from "../packages/core/dist/graph/judge-route.js";
import { contextOf, routeOf } from "../packages/core/dist/graph/route.js";
import { openOptions } from "../packages/core/dist/resolve/pair-options.js";

/** Every shaft looked at with every rule, one after the other: what one writes before thinking of an index. */
export function nestedLoop({ graph }, head) {
  const { musts } = graph;
  return graph.at.shaft.filter((shaft) => {
    const options = openOptions(head, shaft, graph);
    const refused = options.every(({ chosen, joined, joinSteps }) =>
      judgeRoute(musts, contextOf(chosen, graph), joined, joinSteps, graph.work).some(
        ({ outcome }) => outcome.verdict === "does-not-fit",
      ),
    );
    if (refused) return false;
    const [adapter, grip] = ["tip", "butt"].map((port) =>
      graph.parts.get(graph.occupancy.at(shaft.id, port)?.other),
    );
    if (!adapter || !grip) return false;
    const { chosen, joined, steps } = routeOf({ head, adapter, shaft, grip }, graph.occupancy);
    return judgeRoute(musts, contextOf(chosen, graph), joined, steps, graph.work).every(
      ({ outcome }) => outcome.verdict !== "does-not-fit",
    );
  });
}
