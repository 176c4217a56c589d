import { type Entry, entrySchema, type NewEntry } from "@ferrule/core";
import { newId } from "../bench/new-id.ts";
import type { Tables } from "../store/tables.ts";

/** Writes lines of the books, each under a new id. Throws for one that the books could not be read with, so that nothing is written. */
export function writeEntries(tables: Tables, entries: readonly NewEntry[]): Entry[] {
  return entries.map((entry) => {
    const id = newId("entry", (taken) => tables.entries.get(taken) !== undefined);
    const named = entrySchema.parse({ ...entry, id });
    tables.entries.insert(named);
    return named;
  });
}
