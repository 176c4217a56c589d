import type { StepNeeded } from "../findings/outcome.ts";
import { skills } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { BenchGraph } from "./bench-graph.ts";
import type { Context } from "./context.ts";
import { type JoinedSets, type WorkTable, workRow } from "./judge-route.ts";
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

/** What a route comes to for those who need not know its steps. */
export interface Joining {
  readonly joined: JoinedSets;
  /** The highest skill, by its rank, that making and undoing its joints takes. */
  readonly skill: number;
}

/** The same as `routeOf` says, at less cost. */
export function joiningOf(chosen: Chosen, occupancy: Occupancy, work: WorkTable): Joining {
  const hasAdapter = chosen.adapter !== undefined;
  const joins = joinsOf({ hasAdapter });
  const skillOf = (step: string) => skills.indexOf(workRow(step, work).skill);
  let standing = 0;
  let skill = 0;
  for (let at = 0; at < joins.length; at += 1) {
    const join = joins[at] as JoinKind;
    const [a, b] = [chosen[join.a.place], chosen[join.b.place]];
    if (!a || !b) continue;
    const [atA, atB] = [occupancy.at(a.id, join.a.port), occupancy.at(b.id, join.b.port)];
    if (atA && atA.other === b.id) {
      standing += 2 ** at;
      continue;
    }
    skill = Math.max(skill, skillOf(join.make));
    if (atA) skill = Math.max(skill, skillOf(atA.kind.undo));
    if (atB) skill = Math.max(skill, skillOf(atB.kind.undo));
  }
  return { joined: (hasAdapter ? joinedThroughAdapter : joinedWithoutAdapter)[standing] ?? [], skill };
}

/** What is joined for each choice of standing joins, so that it need not be worked out for every club. */
const joinedThroughAdapter = joinedForEachChoice(joinsOf({ hasAdapter: true }));
const joinedWithoutAdapter = joinedForEachChoice(joinsOf({ hasAdapter: false }));

function joinedForEachChoice(joins: readonly JoinKind[]): readonly JoinedSets[] {
  return Array.from({ length: 2 ** joins.length }, (_, choice) =>
    joinedSets(joins.filter((_join, at) => Math.floor(choice / 2 ** at) % 2 === 1)),
  );
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
