import type { Part } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type PartsTable = DocumentTable<Part>;

export function partsTable(database: Database): PartsTable {
  return documentTable<Part>(database, "parts");
}
