import type { Joint } from "@ferrule/core";
import type { Database } from "./database.ts";
import { type DocumentTable, documentTable } from "./document-table.ts";

export type JointsTable = DocumentTable<Joint>;

export function jointsTable(database: Database): JointsTable {
  return documentTable<Joint>(database, "joints");
}
