import type { Sighting } from "@ferrule/core";
import { type DocumentTable, documentTable } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

export type SightingsTable = DocumentTable<Sighting>;

export function sightingsTable(database: Database): SightingsTable {
  return documentTable<Sighting>(database, "sightings");
}
