import { mergePatch, type Watch } from "@ferrule/core";
import { newId } from "../bench/new-id.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { Tables } from "../store/tables.ts";
import { isWantId } from "./bench-watches.ts";
import { watchRefusals } from "./hand-watch.ts";

/** A change of what the user says about something that is watched; null takes it back. */
export type WatchChange = {
  readonly [Key in "pinned" | "muted" | "capMinor" | "place" | "note"]?: Watch[Key] | null;
};

/** Something watched by hand, which is given an id where it has none. */
export type NewWatch = Omit<Watch, "id"> & { readonly id?: string };

export function addWatch(tables: Tables, given: NewWatch): Outcome<Watch> {
  const isTaken = (id: string) => tables.watches.get(id) !== undefined || isWantId(id);
  if (given.id !== undefined && isTaken(given.id))
    return problem("id-taken", `Something is watched under the id "${given.id}" already`);
  const watch: Watch = { ...given, id: given.id ?? newId("watch", isTaken), by: "hand" };
  const refusals = watchRefusals(watch);
  if (refusals.length > 0) return problem("bad-request", "This cannot be watched for", refusals);
  tables.watches.insert(watch);
  return done(watch);
}

/** Of a want of the bench only what the user says of it is kept: the want itself is made of the bench each time. */
export function changeWatch(tables: Tables, watch: Watch, change: WatchChange): Outcome<Watch> {
  const changed = mergePatch(watch, change) as Watch;
  const { kind: _kind, needs: _needs, text: _text, ...marks } = changed;
  const kept = changed.by === "hand" ? changed : { ...marks, by: "bench" as const };
  if (tables.watches.get(watch.id)) tables.watches.replace(watch.id, kept);
  else tables.watches.insert(kept);
  return done(changed);
}

export function removeWatch(tables: Tables, id: string): Outcome<Watch> {
  const kept = tables.watches.get(id)?.value;
  if (kept?.by !== "hand") return notWatched(id, " by hand");
  tables.watches.remove(id);
  return done(kept);
}

export function notWatched(id: string, how = ""): Outcome<never> {
  return problem("not-found", `Nothing is watched${how} under the id "${id}"`);
}
