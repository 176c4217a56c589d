import type { Joint, JointType } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";

/** The places of a club that a part can take. */
export const places = ["head", "adapter", "shaft", "grip"] as const;
export type Place = (typeof places)[number];

/** A spot on a part that one other part can be joined at. */
export type Port = "socket" | "shoulder" | "bore" | "tip" | "butt" | "core";

/** A way of joining two places, with the steps that make and undo it. */
export interface JoinKind {
  readonly type: JointType;
  readonly a: { readonly place: Place; readonly port: Port };
  readonly b: { readonly place: Place; readonly port: Port };
  readonly make: string;
  readonly undo: string;
}

/** Every join a club can have, from the ground up. */
export const joinKinds: readonly JoinKind[] = [
  {
    type: "screwed",
    a: { place: "head", port: "socket" },
    b: { place: "adapter", port: "shoulder" },
    make: "screw-in",
    undo: "unscrew",
  },
  {
    type: "bonded",
    a: { place: "head", port: "socket" },
    b: { place: "shaft", port: "tip" },
    make: "bond-tip",
    undo: "pull-head",
  },
  {
    type: "bonded",
    a: { place: "adapter", port: "bore" },
    b: { place: "shaft", port: "tip" },
    make: "bond-tip",
    undo: "pull-adapter",
  },
  {
    type: "gripped",
    a: { place: "shaft", port: "butt" },
    b: { place: "grip", port: "core" },
    make: "grip-on",
    undo: "grip-off",
  },
];

const joinsThroughAdapter = joinKinds.filter(({ a, b }) => !(a.place === "head" && b.place === "shaft"));
const joinsWithoutAdapter = joinKinds.filter(({ a, b }) => a.place !== "adapter" && b.place !== "adapter");

/** The joins of a club: straight into the head, or through an adapter. */
export function joinsOf({ hasAdapter }: { hasAdapter: boolean }): readonly JoinKind[] {
  return hasAdapter ? joinsThroughAdapter : joinsWithoutAdapter;
}

/** The kind of join that a joint between two parts of these kinds is, or nothing when there is none such. */
export function joinKindOf(
  joint: Pick<Joint, "type">,
  kinds: readonly [Part["kind"], Part["kind"]],
): JoinKind | undefined {
  return joinKinds.find(
    ({ type, a, b }) =>
      type === joint.type &&
      ((a.place === kinds[0] && b.place === kinds[1]) || (a.place === kinds[1] && b.place === kinds[0])),
  );
}

/** Whether a head takes its shaft through an adapter, as far as anybody has said: one that does not say may do either. */
export function mayTakeAdapter(head: Part | undefined): boolean {
  return head?.kind === "head" && head.socket?.type !== "bore";
}

/** Whether a head takes the shaft itself, as far as anybody has said. */
export function mayTakeShaft(head: Part | undefined): boolean {
  return head?.kind === "head" && head.socket?.type !== "receiver";
}
