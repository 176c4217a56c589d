import type { Clearance } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export function clearancesTable(database: Database): DocumentTable<Clearance> {
  return documentTable<Clearance>(database, "clearances");
}
