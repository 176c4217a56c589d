import type { CatalogueModel, Entry, Evidence, Refusal, Sighting } from "@ferrule/core";
import type { Deletion } from "../store/deletions.ts";
import { type Listed, type ListName, tableOf } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import { openShelf, type Shelf } from "./shelf.ts";

/** A list about the bench: a delete takes one thing from it, and is told as that thing. */
export type ListShelf<T> = Shelf<T, T>;

export function modelsShelf(tables: Tables): ListShelf<CatalogueModel> {
  return openList(tables, "models", { noun: "model", where: "in the catalogue" });
}

export function evidenceShelf(tables: Tables): ListShelf<Evidence> {
  return openList(tables, "evidence", { noun: "price", where: "in the evidence" });
}

export function sightingsShelf(tables: Tables): ListShelf<Sighting> {
  return openList(tables, "sightings", { noun: "sighting", where: "in the log" });
}

/** `currency` is the bench's own: a line in another needs a rate. */
export function entriesShelf(tables: Tables, currency: () => string): ListShelf<Entry> {
  const refusals = (entry: Entry) => missingRate(entry, currency());
  return openList(tables, "entries", { noun: "entry", where: "in the books", refusals });
}

function missingRate({ amount, rate }: Entry, currency: string): Refusal[] {
  if (amount.currency === currency || rate !== undefined) return [];
  const expected = `how much ${currency} one ${amount.currency} was worth that day`;
  return [{ field: "rate", got: "nothing", expected }];
}

interface ListWords<T> {
  readonly noun: string;
  readonly where: string;
  refusals?(value: T): Refusal[];
}

function openList<Name extends Exclude<ListName, "parts" | "joints" | "claims">>(
  tables: Tables,
  name: Name,
  { noun, where, refusals = () => [] }: ListWords<Listed[Name]>,
): ListShelf<Listed[Name]> {
  return openShelf<Listed[Name], Listed[Name]>(tables, {
    noun,
    where,
    table: tableOf(tables, name),
    stem: () => noun,
    refusals,
    deletion: (placed) => ({ [name]: [placed] }),
    tell: (deletion: Deletion) => deletion[name]?.[0]?.value as Listed[Name],
  });
}
