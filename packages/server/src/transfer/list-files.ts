import {
  type CatalogueModel,
  catalogueModelSchema,
  type Entry,
  type Evidence,
  entrySchema,
  evidenceSchema,
  type Sighting,
} from "@ferrule/core";
import { entryColumns, evidenceColumns, modelColumns, sightingColumns } from "./list-columns.ts";
import type { ListFile } from "./list-target.ts";

/** A list about the bench as a file: how it is read, and the columns that an export always has. */
export interface ListSheet<T> extends ListFile<T> {
  readonly always: readonly string[];
}

export const modelsSheet: ListSheet<CatalogueModel> = {
  list: "models",
  columns: modelColumns,
  schema: catalogueModelSchema.partial({ id: true }),
  required: ["kind", "maker", "model"],
  stem: "model",
  where: "in the catalogue",
  always: ["id", "kind", "maker", "model"],
};

export const evidenceSheet: ListSheet<Evidence> = {
  list: "evidence",
  columns: evidenceColumns,
  schema: evidenceSchema.partial({ id: true }),
  required: ["on", "what", "kind"],
  money: "price",
  stem: "price",
  where: "in the evidence",
  always: ["id", "on", "what", "price.amountMinor", "price.currency", "kind"],
};

export const entriesSheet: ListSheet<Entry> = {
  list: "entries",
  columns: entryColumns,
  schema: entrySchema.partial({ id: true }),
  required: ["on", "type"],
  money: "amount",
  stem: "entry",
  where: "in the books",
  always: ["id", "on", "type", "amount.amountMinor", "amount.currency"],
};

/** The log is written as CSV and not read from it. */
export const sightingsSheet = {
  columns: sightingColumns,
  always: ["id", "seenOn", "outcome", "text"],
  rowOf: sightingRow,
} as const;

/** What was read at first, and where in the words each fact stands, is in the JSON of the sighting and not in its row. */
function sightingRow({ read: _read, listing, ...rest }: Sighting): object {
  const { spans: _spans, doubts: _doubts, ...said } = listing;
  return { ...rest, listing: said };
}
