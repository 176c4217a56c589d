import type { CatalogueModel, Entry, Evidence, Measurement, Refusal, Sighting } from "@ferrule/core";
import type { Deletion } from "../store/deletions.ts";
import type { ThingNoun } from "../store/history.ts";
import { type Listed, type ListName, tableOf } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import { namedSightings } from "./named-parts.ts";
import { type Rates, rateRefusals } from "./rates.ts";
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
  return openList(tables, "sightings", {
    noun: "sighting",
    where: "in the log",
    named: () => namedSightings(tables),
  });
}

/** A line in another currency than the bench's needs a rate, of its own or typed in for that currency. */
export function entriesShelf(tables: Tables, rates: () => Rates): ListShelf<Entry> {
  const refusals = ({ amount, rate }: Entry) => rateRefusals(amount.currency, rate, rates());
  return openList(tables, "entries", { noun: "entry", where: "in the books", refusals });
}

export function measurementsShelf(tables: Tables): ListShelf<Measurement> {
  return openList(tables, "measurements", {
    noun: "measurement",
    where: "among the clubs that were measured",
  });
}

interface ListWords<T> {
  readonly noun: ThingNoun;
  readonly where: string;
  named?(): ReadonlySet<string>;
  refusals?(value: T): Refusal[];
}

function openList<Name extends Exclude<ListName, "parts" | "joints" | "claims">>(
  tables: Tables,
  name: Name,
  { noun, where, named, refusals = () => [] }: ListWords<Listed[Name]>,
): ListShelf<Listed[Name]> {
  return openShelf<Listed[Name], Listed[Name]>(tables, {
    noun,
    where,
    table: tableOf(tables, name),
    stem: () => noun,
    ...(named ? { named } : {}),
    refusals,
    deletion: (placed) => ({ [name]: [placed] }),
    tell: (deletion: Deletion) => deletion[name]?.[0]?.value as Listed[Name],
  });
}
