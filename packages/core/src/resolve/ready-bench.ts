import { type Bench, type BenchGraph, graphOf, graphWith } from "../graph/bench-graph.ts";
import type { Port } from "../graph/shape.ts";
import { places } from "../graph/shape.ts";
import { VerdictIndex } from "../graph/verdict-index.ts";
import type { Skill } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Rule } from "../rules/rule.ts";
import { type ShaftGroup, shaftGroups, withShafts } from "./shaft-groups.ts";

/** The skill allowed until the user says more: most people never re-shaft. */
export const skillByDefault: Skill = "screw";

/** A bench made ready once, to be asked many times. */
export interface ReadyBench {
  readonly graph: BenchGraph;
  readonly index: VerdictIndex;
  readonly groups: readonly ShaftGroup[];
  /** One part of each class, a loose one where there is one; loose ones first. */
  readonly alike: { readonly adapter: readonly Part[]; readonly grip: readonly Part[] };
}

export type ReadyResult =
  | { readonly ok: true; readonly ready: ReadyBench }
  | { readonly ok: false; readonly refusals: Refusal[] };

/** Indexes a bench. Two parts of one id, or joints that cannot be, are refused. */
export function readyBench(bench: Bench, rules: readonly Rule[], reference: Reference): ReadyResult {
  const goal = { ...bench.goal, skill: bench.goal?.skill ?? skillByDefault };
  const built = graphOf({ ...bench, goal }, rules, reference);
  if (!built.ok) return built;
  const { graph } = built;
  return { ok: true, ready: readyOf(graph, new VerdictIndex(graph)) };
}

/**
 * The same bench with a few more parts on it, as if it had been made ready with them, at the cost of copying a few lists: what
 * has been judged for the one holds for the other and is kept for both. Throws when an id is taken or a joint cannot be.
 */
export function withParts(
  ready: ReadyBench,
  parts: readonly Part[],
  joints: readonly Joint[] = [],
): ReadyBench {
  const built = graphWith(ready.graph, parts, joints);
  if (!built.ok) throw new Error(`the bench does not hold together: ${JSON.stringify(built.refusals[0])}`);
  const { graph } = built;
  const index = new VerdictIndex(graph, ready.index);
  const added = new Set(parts.map(({ id }) => id));
  const isApart = joints.every(({ parts: [one, other] }) => added.has(one) && added.has(other));
  return isApart ? grown(ready, graph, index, parts) : readyOf(graph, index);
}

/** Where nothing is joined to what was there, only what has come is looked at. */
function grown(ready: ReadyBench, graph: BenchGraph, index: VerdictIndex, more: readonly Part[]): ReadyBench {
  const has = (place: Part["kind"]) => more.some(({ kind }) => kind === place);
  const { adapter, grip } = ready.alike;
  return {
    graph,
    index,
    groups: withShafts(
      ready.groups,
      more.filter(({ kind }) => kind === "shaft"),
      graph,
      index,
    ),
    alike: {
      adapter: has("adapter") ? oneOfEach("adapter", "bore", graph, index) : adapter,
      grip: has("grip") ? oneOfEach("grip", "core", graph, index) : grip,
    },
  };
}

function readyOf(graph: BenchGraph, index: VerdictIndex): ReadyBench {
  for (const place of places) for (const part of graph.at[place]) index.classes[place].of(part);
  const alike = {
    adapter: oneOfEach("adapter", "bore", graph, index),
    grip: oneOfEach("grip", "core", graph, index),
  };
  return { graph, index, groups: shaftGroups(graph, index), alike };
}

function oneOfEach(place: "adapter" | "grip", port: Port, graph: BenchGraph, index: VerdictIndex): Part[] {
  const byClass = new Map<number, Part>();
  const isLoose = (part: Part) => graph.occupancy.at(part.id, port) === undefined;
  for (const part of graph.at[place]) {
    const number = index.classes[place].of(part).class;
    const known = byClass.get(number);
    if (!known || (!isLoose(known) && isLoose(part))) byClass.set(number, part);
  }
  return [...byClass.values()].sort((a, b) => Number(isLoose(b)) - Number(isLoose(a)));
}
