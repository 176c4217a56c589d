import type { Joint, Part, PartKind, Refusal } from "@ferrule/core";

/** One end of a joint: the kind of part, and the place on it that the joint takes up. */
type Port = readonly [PartKind, string];

/** What each type of joint connects. A place holds one joint at most, which also rules out every ring of joints. */
const connections: Readonly<Record<Joint["type"], readonly (readonly [Port, Port])[]>> = {
  screwed: [
    [
      ["head", "socket"],
      ["adapter", "seat"],
    ],
  ],
  bonded: [
    [
      ["adapter", "bore"],
      ["shaft", "tip"],
    ],
    [
      ["head", "socket"],
      ["shaft", "tip"],
    ],
  ],
  gripped: [
    [
      ["grip", "core"],
      ["shaft", "butt"],
    ],
  ],
};

const expectedKinds: Readonly<Record<Joint["type"], string>> = {
  screwed: "a head and an adapter",
  bonded: "a shaft, and the adapter or head it is bonded into",
  gripped: "a grip and a shaft",
};

/** Joints made so far and the places they take up. */
export interface JointBook {
  /** Enters a joint, or says why it cannot be one; fields are relative to the joint. */
  enter(joint: Joint): Refusal[];
}

/** A book over these parts, with no joint in it yet. */
export function openJointBook(parts: Iterable<Part>): JointBook {
  const kinds = new Map<string, PartKind>();
  for (const part of parts) kinds.set(part.id, part.kind);
  const taken = new Map<string, Joint>();
  return { enter: (joint) => enterJoint(kinds, taken, joint) };
}

function enterJoint(
  kinds: ReadonlyMap<string, PartKind>,
  taken: Map<string, Joint>,
  joint: Joint,
): Refusal[] {
  const unknown = joint.parts.flatMap((id, at) =>
    kinds.has(id)
      ? []
      : [
          {
            field: `parts.${at}`,
            got: JSON.stringify(id),
            expected: "the id of a part on the same bench",
          },
        ],
  );
  if (unknown.length > 0) return unknown;
  const ports = portsOf(
    joint,
    joint.parts.map((id) => kinds.get(id)),
  );
  if (ports === undefined) {
    const got = joint.parts.map((id) => `the ${kinds.get(id)} "${id}"`).join(" and ");
    return [
      {
        field: "parts",
        got,
        expected: `${expectedKinds[joint.type]}, for a joint of type ${joint.type}`,
      },
    ];
  }
  const keys = joint.parts.map((id, at) => `${ports[at]} of ${JSON.stringify(id)}`);
  const refused = keys.flatMap((key, at) => refusalOfTaken(taken.get(key), key, at));
  if (refused.length === 0) for (const key of keys) taken.set(key, joint);
  return refused;
}

function portsOf(joint: Joint, kinds: readonly (PartKind | undefined)[]): readonly string[] | undefined {
  for (const [a, b] of connections[joint.type]) {
    if (kinds[0] === a[0] && kinds[1] === b[0]) return [a[1], b[1]];
    if (kinds[0] === b[0] && kinds[1] === a[0]) return [b[1], a[1]];
  }
  return undefined;
}

function refusalOfTaken(other: Joint | undefined, key: string, at: number): Refusal[] {
  if (other === undefined) return [];
  const got = `the ${key}, ${other.type} already (${other.parts.map((id) => JSON.stringify(id)).join(" with ")})`;
  return [
    {
      field: `parts.${at}`,
      got,
      expected: "a place that no other joint takes up",
    },
  ];
}
