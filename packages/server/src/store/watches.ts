import type { Watch } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

/** What the user says about a want of the bench. */
export type WatchMarks = Pick<Watch, "id" | "pinned" | "muted" | "capMinor" | "place" | "note"> & {
  readonly by: "bench";
};

/** What is watched by hand, and what is said about wants of the bench. */
export type KeptWatch = Watch | WatchMarks;

export type WatchesTable = DocumentTable<KeptWatch>;

export function watchesTable(database: Database): WatchesTable {
  return documentTable<KeptWatch>(database, "watches");
}
