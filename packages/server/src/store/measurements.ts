import type { Measurement } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export function measurementsTable(database: Database): DocumentTable<Measurement> {
  return documentTable<Measurement>(database, "measurements");
}
