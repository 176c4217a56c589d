import type { Tables } from "../store/tables.ts";

/** The ids of parts that lines of the books name, whether the parts are there or not: no other part may take their costs over. */
export function namedParts(tables: Pick<Tables, "entries">): ReadonlySet<string> {
  return new Set(tables.entries.all().flatMap(({ value }) => value.parts ?? []));
}

/** The ids of sightings that lines of the books name, likewise. */
export function namedSightings(tables: Pick<Tables, "entries">): ReadonlySet<string> {
  return new Set(tables.entries.all().flatMap(({ value }) => value.sighting ?? []));
}
