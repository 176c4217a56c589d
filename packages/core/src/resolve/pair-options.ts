import type { StepNeeded } from "../findings/outcome.ts";
import type { BenchGraph } from "../graph/bench-graph.ts";
import { type JoinedSets, skillOfSteps } from "../graph/judge-route.ts";
import { type Chosen, routeOf } from "../graph/route.ts";
import { mayTakeAdapter, mayTakeShaft } from "../graph/shape.ts";
import type { Skill } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";

/**
 * One way in which a head and a shaft could come together if every other part could be had: a pair is refused only when
 * each of its options is.
 */
export interface PairOption {
  readonly chosen: Chosen;
  readonly joined: JoinedSets;
  readonly joinSteps: readonly StepNeeded[];
  readonly joinSkill: Skill;
}

/**
 * The options of a pair: straight into the head; or with the adapter that is on the shaft; or with some adapter that is not
 * chosen yet and has to be bonded. A shaft without a grip needs one put on, whatever the option.
 */
export function openOptions(head: Part, shaft: Part, graph: BenchGraph): PairOption[] {
  const gripSteps: StepNeeded[] = graph.occupancy.at(shaft.id, "butt") ? [] : [{ step: "grip-on" }];
  const routed = (chosen: Chosen): PairOption => {
    const { steps, joined } = routeOf(chosen, graph.occupancy);
    return optionOf(chosen, joined, [...steps, ...gripSteps], graph);
  };
  const direct = mayTakeShaft(head) ? [routed({ head, shaft })] : [];
  if (!mayTakeAdapter(head)) return direct;
  const own = graph.occupancy.at(shaft.id, "tip");
  const adapter = own && graph.parts.get(own.other);
  const withOwn = adapter?.kind === "adapter" ? [routed({ head, adapter, shaft })] : [];
  // An adapter that is not chosen yet stands in no joint, so the join that it would need is named here.
  const open = mayTakeShaft(head)
    ? []
    : [optionOf({ head, shaft }, [], [{ step: "bond-tip" }, ...gripSteps], graph)];
  return [...direct, ...withOwn, ...open];
}

function optionOf(
  chosen: Chosen,
  joined: JoinedSets,
  joinSteps: readonly StepNeeded[],
  graph: BenchGraph,
): PairOption {
  return { chosen, joined, joinSteps, joinSkill: skillOfSteps(joinSteps, graph.work) };
}
