import {
  catalogueModelSchema,
  claimSchema,
  evidenceSchema,
  jointSchema,
  type Parsed,
  parseWith,
  partSchema,
  sightingSchema,
} from "@ferrule/core";
import type { Snapshot } from "./snapshot.ts";
import type { Thing } from "./waiting-change.ts";

/** A list that can be added to and changed without a signal. */
export interface OfflineList {
  readonly path: string;
  readonly name: "parts" | "joints" | "claims" | "models" | "evidence" | "sightings";
  /** What ids of new things begin with. */
  stem(thing: Thing): string;
  parse(thing: Thing): Parsed<unknown>;
}

const lists: readonly OfflineList[] = [
  list("/api/bench/parts", "parts", ({ kind }) => String(kind), partSchema),
  list("/api/bench/joints", "joints", () => "joint", jointSchema),
  list("/api/bench/claims", "claims", () => "claim", claimSchema),
  list("/api/catalogue", "models", () => "model", catalogueModelSchema),
  list("/api/evidence", "evidence", () => "price", evidenceSchema),
  list("/api/sightings", "sightings", () => "sighting", sightingSchema),
];

function list(
  path: string,
  name: OfflineList["name"],
  stem: OfflineList["stem"],
  schema: Parameters<typeof parseWith>[0],
): OfflineList {
  return { path, name, stem, parse: (thing) => parseWith(schema, thing) };
}

/** An address in one of the lists: of the list, of a thing in it, or of something about that thing. */
export interface ListPlace {
  readonly list: OfflineList;
  readonly id?: string;
  /** Such as "buy" in /api/sightings/sighting-1/buy. */
  readonly about?: string;
}

export function listPlace(path: string): ListPlace | undefined {
  const list = lists.find((each) => path === each.path || path.startsWith(`${each.path}/`));
  if (list === undefined) return undefined;
  const [id, about, more] = path.slice(list.path.length + 1).split("/");
  if (more !== undefined) return undefined;
  return { list, ...(id && { id: decodeURIComponent(id) }), ...(about && { about }) };
}

export function thingsOf(snapshot: Snapshot, { name }: Pick<OfflineList, "name">): readonly Thing[] {
  return snapshot[name] as readonly unknown[] as readonly Thing[];
}
