import type { CatalogueModel } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type CatalogueTable = DocumentTable<CatalogueModel>;

export function catalogueTable(database: Database): CatalogueTable {
  return documentTable<CatalogueModel>(database, "catalogue");
}
