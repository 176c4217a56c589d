import type { Evidence } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type EvidenceTable = DocumentTable<Evidence>;

export function evidenceTable(database: Database): EvidenceTable {
  return documentTable<Evidence>(database, "evidence");
}
