import type { Claim } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type ClaimsTable = DocumentTable<Claim>;

export function claimsTable(database: Database): ClaimsTable {
  return documentTable<Claim>(database, "claims");
}
