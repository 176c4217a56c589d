import type { Part } from "@ferrule/core";
import type { Database } from "./database.ts";
import { type DocumentTable, documentTable } from "./document-table.ts";

export type PartsTable = DocumentTable<Part>;

export function partsTable(database: Database): PartsTable {
  return documentTable<Part>(database, "parts");
}
