import type { Entry } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type BooksTable = DocumentTable<Entry>;

export function booksTable(database: Database): BooksTable {
  return documentTable<Entry>(database, "books");
}
