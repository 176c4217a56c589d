import type { Inspection } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export function inspectionsTable(database: Database): DocumentTable<Inspection> {
  return documentTable<Inspection>(database, "inspections");
}
