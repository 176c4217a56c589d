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
  list(
    "/api/bench/parts",
    "parts",
    ({ kind }) => String(kind),
    (thing) => parseWith(partSchema, thing),
  ),
  list(
    "/api/bench/joints",
    "joints",
    () => "joint",
    (thing) => parseWith(jointSchema, thing),
  ),
  list(
    "/api/bench/claims",
    "claims",
    () => "claim",
    (thing) => parseWith(claimSchema, thing),
  ),
  list(
    "/api/catalogue",
    "models",
    () => "model",
    (thing) => parseWith(catalogueModelSchema, thing),
  ),
  list(
    "/api/evidence",
    "evidence",
    () => "price",
    (thing) => parseWith(evidenceSchema, thing),
  ),
  list(
    "/api/sightings",
    "sightings",
    () => "sighting",
    (thing) => parseWith(sightingSchema, thing),
  ),
];

function list(
  path: string,
  name: OfflineList["name"],
  stem: OfflineList["stem"],
  parse: OfflineList["parse"],
): OfflineList {
  return { path, name, stem, parse };
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
