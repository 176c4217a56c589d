import type { Claim } from "@ferrule/core";
import type { Database } from "./database.ts";
import { type DocumentTable, documentTable } from "./document-table.ts";

export type ClaimsTable = DocumentTable<Claim>;

export function claimsTable(database: Database): ClaimsTable {
  return documentTable<Claim>(database, "claims");
}
