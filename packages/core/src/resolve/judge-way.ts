import type { BenchGraph } from "../graph/bench-graph.ts";
import { judgeRoute, type RouteFinding } from "../graph/judge-route.ts";
import { contextOf, type Route } from "../graph/route.ts";

/** Every rule's answer on a way to make a club. */
export function judgeWay(route: Route, graph: BenchGraph): RouteFinding[] {
  return judgeRoute(graph.rules, contextOf(route.chosen, graph), route.joined, route.steps, graph.work);
}
