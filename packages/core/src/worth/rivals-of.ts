import type { Adapter, Part, Shaft } from "../parts/part.ts";
import type { Want } from "../resolve/result.ts";
import type { DealContext } from "./deal-context.ts";
import type { OfferedThing } from "./listing-things.ts";

const sortOfType = {
  driver: "wood",
  fairway: "wood",
  hybrid: "hybrid",
  iron: "iron",
  wedge: "iron",
  putter: "putter",
} as const;

/**
 * How many other things of the bench wait for the same missing part: loose heads of one adapter family, hand and sort for a
 * shaft, shafts with an adapter of one family and hand for a head. What is not said of a thing does not make it a rival. For a
 * loose adapter, bare shafts of one sort are rivals. Of what waits for a grip or a shaft to be glued in none is counted.
 */
export function rivalsOf(thing: OfferedThing, want: Want, context: DealContext): number {
  const own = new Set(thing.parts.map(({ id }) => id));
  const others = [...context.parts.values()].filter(({ id }) => !own.has(id) && !context.isOffered(id));
  if (want.kind === "shaft") return countOf(others, (part) => isRivalHead(part, want, context));
  if (want.kind === "head") return countOf(others, (part) => isRivalShaft(part, thing, context));
  if (want.kind === "adapter") return countOf(others, (part) => isRivalBareShaft(part, thing, context));
  return 0;
}

/** A shaft without an adapter, of the same sort and flex or not: the adapter goes on one of them. */
function isRivalBareShaft(part: Part, { parts }: OfferedThing, { clusterOf }: DealContext): boolean {
  const shaft = parts.find((each): each is Shaft => each.kind === "shaft");
  if (!shaft || part.kind !== "shaft" || part.suits !== shaft.suits) return false;
  return clusterOf(part.id).every(({ kind }) => kind === "shaft" || kind === "grip");
}

const countOf = (parts: readonly Part[], isRival: (part: Part) => boolean) => parts.filter(isRival).length;

function isRivalHead(part: Part, { needs }: Want, { clusterOf }: DealContext): boolean {
  const family = needs["adapter.family"];
  if (family === undefined || part.kind !== "head" || part.socket?.type !== "receiver") return false;
  if (clusterOf(part.id).some(({ kind }) => kind === "shaft")) return false;
  const hand = needs["adapter.hand"];
  const suits = [needs["suits"]].flat();
  return (
    part.socket.family === family &&
    (hand === undefined || part.hand === hand) &&
    (suits[0] === undefined || (part.clubType !== undefined && suits.includes(sortOfType[part.clubType])))
  );
}

function isRivalShaft(part: Part, { parts }: OfferedThing, { clusterOf }: DealContext): boolean {
  const own = onShaft(parts);
  if (part.kind !== "shaft" || !own) return false;
  const cluster = clusterOf(part.id);
  const other = onShaft(cluster);
  return (
    other !== undefined &&
    !cluster.some(({ kind }) => kind === "head") &&
    own.adapter.family !== undefined &&
    own.adapter.family === other.adapter.family &&
    own.adapter.hand === other.adapter.hand &&
    own.shaft.suits === other.shaft.suits
  );
}

function onShaft(parts: readonly Part[]): { shaft: Shaft; adapter: Adapter } | undefined {
  const shaft = parts.find((part): part is Shaft => part.kind === "shaft");
  const adapter = parts.find((part): part is Adapter => part.kind === "adapter");
  return shaft && adapter && { shaft, adapter };
}
