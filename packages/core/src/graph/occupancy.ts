import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Refusal } from "../parts/refusal.ts";
import { type JoinKind, joinKindOf, type Port } from "./shape.ts";

/** What is joined at a port. */
export interface Occupant {
  readonly joint: Joint;
  readonly kind: JoinKind;
  readonly other: string;
}

type Taken = Map<string, Partial<Record<Port, Occupant>>>;

/** Which ports of which parts are taken. */
export interface Occupancy {
  at(partId: string, port: Port): Occupant | undefined;
  /** The same for a bench on which more is joined. The joints stand after these, and are refused as if read with them. */
  withJoints(
    parts: ReadonlyMap<string, Part>,
    joints: readonly Joint[],
  ): { occupancy: Occupancy; refusals: Refusal[] };
}

/**
 * Reads the joints of a bench. A joint to a part that is not there, of a sort that two such parts cannot make, or at a port
 * that is taken already, is refused; since every port holds one joint, joints can form no cycle.
 */
export function occupancyOf(
  parts: ReadonlyMap<string, Part>,
  joints: readonly Joint[],
): { occupancy: Occupancy; refusals: Refusal[] } {
  return placeJoints(parts, joints, new Map());
}

function placeJoints(
  parts: ReadonlyMap<string, Part>,
  joints: readonly Joint[],
  taken: Taken,
): { occupancy: Occupancy; refusals: Refusal[] } {
  const refusals: Refusal[] = [];
  joints.forEach((joint, index) => {
    const refusal = placeJoint(parts, joint, taken);
    if (refusal) refusals.push({ field: `joints.${index}`, ...refusal });
  });
  const occupancy: Occupancy = {
    at: (partId, port) => taken.get(partId)?.[port],
    withJoints: (all, more) =>
      more.length === 0 ? { occupancy, refusals: [] } : placeJoints(all, more, new Map(taken)),
  };
  return { occupancy, refusals };
}

function placeJoint(
  parts: ReadonlyMap<string, Part>,
  joint: Joint,
  taken: Taken,
): Omit<Refusal, "field"> | undefined {
  const [first, second] = joint.parts.map((id) => parts.get(id));
  if (!first || !second) {
    const missing = joint.parts.filter((id) => !parts.has(id)).join(", ");
    return { got: missing, expected: "the ids of two parts on this bench" };
  }
  const kind = joinKindOf(joint, [first.kind, second.kind]);
  if (!kind)
    return {
      got: `${joint.type}: ${first.kind} and ${second.kind}`,
      expected: "a joint that two such parts can make",
    };
  const [a, b] = first.kind === kind.a.place ? [first, second] : [second, first];
  const clash = [[a.id, kind.a.port] as const, [b.id, kind.b.port] as const].find(
    ([id, port]) => taken.get(id)?.[port],
  );
  if (clash)
    return {
      got: `a second joint at the ${clash[1]} of ${clash[0]}`,
      expected: "at most one joint at each end of a part",
    };
  take(taken, a.id, kind.a.port, { joint, kind, other: b.id });
  take(taken, b.id, kind.b.port, { joint, kind, other: a.id });
  return undefined;
}

function take(taken: Taken, partId: string, port: Port, occupant: Occupant): void {
  taken.set(partId, { ...taken.get(partId), [port]: occupant });
}
