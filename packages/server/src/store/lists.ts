import type {
  CatalogueModel,
  Claim,
  Clearance,
  Entry,
  Evidence,
  Inspection,
  Joint,
  Measurement,
  Part,
  Sighting,
} from "@ferrule/core";
import type { DocumentTable, Placed } from "./document-table.ts";

/** Everything that is kept in a list, by the name of its list. */
export interface Listed {
  readonly parts: Part;
  readonly joints: Joint;
  readonly claims: Claim;
  readonly models: CatalogueModel;
  readonly evidence: Evidence;
  readonly sightings: Sighting;
  readonly entries: Entry;
  readonly measurements: Measurement;
  readonly inspections: Inspection;
  readonly clearances: Clearance;
}

export type ListName = keyof Listed;

/** Parts before the joints that name them. */
export const listNames = [
  "parts",
  "joints",
  "claims",
  "models",
  "evidence",
  "sightings",
  "entries",
  "measurements",
  "inspections",
  "clearances",
] as const;

export type ListTables = { readonly [Name in ListName]: DocumentTable<Listed[Name]> };
export type Lists = { readonly [Name in ListName]: readonly Listed[Name][] };
export type PlacedLists = { readonly [Name in ListName]: readonly Placed<Listed[Name]>[] };

/** The table of a list, also where the compiler cannot tell which list it is. */
export function tableOf<Name extends ListName>(tables: ListTables, name: Name): DocumentTable<Listed[Name]> {
  return tables[name] as unknown as DocumentTable<Listed[Name]>;
}

/** One of the lists, likewise. */
export function listOf<Name extends ListName>(lists: Lists, name: Name): readonly Listed[Name][] {
  return lists[name] as unknown as readonly Listed[Name][];
}

/** What some work comes to for every list. */
export function mapLists(work: <Name extends ListName>(name: Name) => readonly Listed[Name][]): Lists {
  return Object.fromEntries(listNames.map((name) => [name, work(name)])) as unknown as Lists;
}
