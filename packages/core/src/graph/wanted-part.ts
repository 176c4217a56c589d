import type { Adapter, Head, Part, Shaft } from "../parts/part.ts";
import { rawAt } from "./fact.ts";

/**
 * Parts that are not here, imagined from the interfaces of those that are: each states only interface facts, so whatever
 * the rules do not need can be left out of it again.
 */
export interface WantedPart {
  readonly part: Part;
  /** Paths of the facts it states, the ones that could be left out. */
  readonly states: readonly string[];
}

/** The adapter that would take this shaft into this head; nothing when the interfaces themselves are not known. */
export function wantedAdapter(head: Head, shaft: Shaft): WantedPart | undefined {
  if (
    head.socket?.type !== "receiver" ||
    head.socket.family === undefined ||
    shaft.tip?.diameterIn === undefined
  )
    return undefined;
  const { diameterIn, form } = shaft.tip;
  return wanted({
    kind: "adapter",
    family: head.socket.family,
    ...(head.hand ? { hand: head.hand } : {}),
    bore: { diameterIn, ...(form ? { form } : {}) },
  });
}

/** The shafts, one for each sort a shaft can suit, that would go straight into this bored head. */
export function wantedShafts(head: Head): WantedPart[] {
  if (head.socket?.type === "receiver") return shaftSorts.map((suits) => wanted({ kind: "shaft", suits }));
  if (head.socket?.diameterIn === undefined) return [];
  const { diameterIn, form } = head.socket;
  return shaftSorts.map((suits) =>
    wanted({ kind: "shaft", suits, tip: { diameterIn, ...(form ? { form } : {}) } }),
  );
}

/** The heads, one for each club type, that would take the adapter which is on a shaft. */
export function wantedHeads(
  adapter: Adapter,
  clubTypes: readonly NonNullable<Head["clubType"]>[],
): WantedPart[] {
  if (adapter.family === undefined) return [];
  const hand = adapter.hand === "either" ? undefined : adapter.hand;
  return clubTypes.map((clubType) =>
    wanted({
      kind: "head",
      clubType,
      ...(hand ? { hand } : {}),
      socket: { type: "receiver", family: adapter.family },
    }),
  );
}

/** The grip that goes on a shaft of this butt without tape. */
export function wantedGrip(shaft: Shaft): WantedPart | undefined {
  return shaft.buttDiameterIn === undefined
    ? undefined
    : wanted({ kind: "grip", coreDiameterIn: shaft.buttDiameterIn });
}

const shaftSorts = ["wood", "hybrid", "iron", "putter"] as const;

type Facts = Record<string, unknown> & { kind: Part["kind"] };

function wanted(facts: Facts): WantedPart {
  return { part: { ...facts, id: `wanted ${JSON.stringify(facts)}` } as Part, states: pathsOf(facts) };
}

function pathsOf(facts: Record<string, unknown>, prefix = ""): string[] {
  return Object.entries(facts).flatMap(([key, value]) => {
    if (key === "kind" || key === "type") return [];
    const isGroup = typeof value === "object" && value !== null && !("value" in value);
    return isGroup ? pathsOf(value as Record<string, unknown>, `${prefix}${key}.`) : [`${prefix}${key}`];
  });
}

/** The same wanted part without one of the facts it states. */
export function without({ part, states }: WantedPart, path: string): WantedPart {
  const copy = JSON.parse(JSON.stringify(part)) as Record<string, unknown> & Part;
  const keys = path.split(".");
  const last = keys.pop() as string;
  const owner = keys.length === 0 ? copy : (rawAt(copy, keys) as Record<string, unknown>);
  delete owner[last];
  const { id: _, ...facts } = copy;
  return {
    part: { ...copy, id: `wanted ${JSON.stringify(facts)}` } as Part,
    states: states.filter((state) => state !== path),
  };
}
