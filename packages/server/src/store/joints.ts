import type { Joint } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type JointsTable = DocumentTable<Joint>;

export function jointsTable(database: Database): JointsTable {
  return documentTable<Joint>(database, "joints");
}
