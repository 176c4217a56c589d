import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Want } from "../resolve/result.ts";

/** A wanted part as it would lie on the bench: it states what is wanted of it, and nothing else. */
export interface WantedThing {
  readonly want: Want;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
}

/** How much longer than the least an imagined shaft is, so that it is not judged on the edge. */
const sparedIn = 0.25;

/** Imagines the thing that a want describes; a shaft comes with the adapter it needs, and with the grip that shafts come with. */
export function wantedThing(want: Want, number: number): WantedThing {
  const id = (kind: string) => `wanted-${number}-${kind}`;
  const main = { ...nested(want, ""), id: id(want.kind), kind: want.kind } as Part;
  if (want.kind !== "shaft") return { want, parts: [main], joints: [] };
  const grip = { id: id("grip"), kind: "grip" } as Part;
  const gripped: Joint = { type: "gripped", parts: [main.id, grip.id] };
  if (want.needs["adapter.family"] === undefined) return { want, parts: [main, grip], joints: [gripped] };
  const adapter = { ...nested(want, "adapter."), id: id("adapter"), kind: "adapter" } as Part;
  return {
    want,
    parts: [main, adapter, grip],
    joints: [{ type: "bonded", parts: [adapter.id, main.id] }, gripped],
  };
}

/** The facts of a want under one prefix as the fields of a part: of a choice the first, of a bound one that keeps it. */
function nested({ needs }: Want, prefix: string): Record<string, unknown> {
  const fields: Record<string, unknown> = {};
  for (const [path, wanted] of Object.entries(needs)) {
    const isAdapters = path.startsWith("adapter.");
    if (prefix === "" ? isAdapters : !isAdapters) continue;
    put(fields, path.slice(prefix.length).split("."), stated(wanted));
  }
  if ("socket" in fields) put(fields, ["socket", "type"], socketType(needs));
  return fields;
}

const socketType = (needs: Want["needs"]) => (needs["socket.family"] === undefined ? "bore" : "receiver");

function stated(wanted: unknown): unknown {
  if (Array.isArray(wanted)) return wanted[0];
  if (typeof wanted !== "object" || wanted === null || !("atLeast" in wanted)) return wanted;
  return (wanted.atLeast as number) + sparedIn;
}

function put(fields: Record<string, unknown>, [first, ...rest]: readonly string[], value: unknown): void {
  if (first === undefined) return;
  if (rest.length === 0) {
    fields[first] = value;
    return;
  }
  const inner = (fields[first] ?? {}) as Record<string, unknown>;
  fields[first] = inner;
  put(inner, rest, value);
}
