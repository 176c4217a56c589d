import type { BenchGraph } from "../graph/bench-graph.ts";
import { judgeRoute, type RouteFinding, settledRoute } from "../graph/judge-route.ts";
import { contextOf, type Route } from "../graph/route.ts";
import type { ReadyBench } from "./ready-bench.ts";

/** Every rule's answer on a way to make a club. */
export function judgeWay(route: Route, graph: BenchGraph): RouteFinding[] {
  return judgeRoute(graph.rules, contextOf(route.chosen, graph), route.joined, route.steps, graph.work);
}

/** The answers of the rules that must hold, looked up where they were given before. */
export function judgeMusts(
  route: Route,
  { graph, index }: Pick<ReadyBench, "graph" | "index">,
): RouteFinding[] {
  const context = contextOf(route.chosen, graph);
  const judged = index.findings(route.chosen);
  return settledRoute(judged, graph.musts, context, route.joined, route.steps, graph.work);
}
