import type { StepNeeded } from "../findings/outcome.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { BenchGraph } from "./bench-graph.ts";
import type { Context } from "./context.ts";
import type { JoinedSets } from "./judge-route.ts";
import type { Occupancy } from "./occupancy.ts";
import { type JoinKind, joinsOf, type Place } from "./shape.ts";

/** The parts chosen for the places of one club; some may be open still. */
export type Chosen = Readonly<Partial<Record<Place, Part>>>;

/** A step that makes or undoes a joint, with the parts it is done to. */
export interface JoinStep extends StepNeeded {
  readonly parts: readonly string[];
}

/** What it takes to bring the chosen parts together. */
export interface Route {
  readonly chosen: Chosen;
  readonly steps: readonly JoinStep[];
  readonly undoes: readonly Joint[];
  readonly joined: JoinedSets;
}

/** The joints to make and to undo for the chosen parts. */
export function routeOf(chosen: Chosen, occupancy: Occupancy): Route {
  const undone = new Map<Joint, JoinStep>();
  const made: JoinStep[] = [];
  const standing: JoinKind[] = [];
  for (const join of joinsOf({ hasAdapter: chosen.adapter !== undefined })) {
    const [a, b] = [chosen[join.a.place], chosen[join.b.place]];
    if (!a || !b) continue;
    const [atA, atB] = [occupancy.at(a.id, join.a.port), occupancy.at(b.id, join.b.port)];
    if (atA && atA.other === b.id) {
      standing.push(join);
      continue;
    }
    made.push({ step: join.make, parts: [a.id, b.id] });
    for (const occupant of [atA, atB]) {
      if (occupant) undone.set(occupant.joint, { step: occupant.kind.undo, parts: occupant.joint.parts });
    }
  }
  return {
    chosen,
    steps: [...undone.values(), ...made],
    undoes: [...undone.keys()],
    joined: joinedSets(standing),
  };
}

/** Places that standing joints hold together. */
function joinedSets(standing: readonly JoinKind[]): JoinedSets {
  const sets: Set<Place>[] = [];
  for (const { a, b } of standing) {
    const known = sets.find((set) => set.has(a.place) || set.has(b.place));
    if (known) known.add(a.place).add(b.place);
    else sets.push(new Set([a.place, b.place]));
  }
  return sets;
}

/** The context in which the rules look at the chosen parts. */
export function contextOf(chosen: Chosen, graph: BenchGraph): Context {
  const { occupancy, goal, claims, reference } = graph;
  const shaft = chosen.shaft;
  return {
    ...chosen,
    goal,
    claims,
    typical: reference.typical,
    gripped: shaft && occupancy.at(shaft.id, "butt") !== undefined,
    bonded: shaft && occupancy.at(shaft.id, "tip") !== undefined,
  };
}
