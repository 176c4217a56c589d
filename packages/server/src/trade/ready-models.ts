import { type CatalogueModel, type ReadyCatalogue, readyCatalogue } from "@ferrule/core";
import type { Tables } from "../store/tables.ts";

/** The stored catalogue made ready for reading with; made anew only when the catalogue has changed. */
export interface ReadyModels {
  all(): readonly CatalogueModel[];
  ready(): ReadyCatalogue;
  /** The stored models and these; of two with one id the given one wins. */
  readyWith(given: readonly CatalogueModel[]): ReadyCatalogue;
}

export function openReadyModels(tables: Tables): ReadyModels {
  const stored = lastOnly(
    () => tables.stampOf(tables.models),
    () => tables.models.all().map(({ value }) => value),
  );
  const ready = lastOnly(
    () => tables.stampOf(tables.models),
    () => readyCatalogue(stored()),
  );
  return {
    all: stored,
    ready,
    readyWith: (given) => (given.length === 0 ? ready() : readyCatalogue(mergedModels(stored(), given))),
  };
}

function mergedModels(
  stored: readonly CatalogueModel[],
  given: readonly CatalogueModel[],
): readonly CatalogueModel[] {
  const ids = new Set(given.map(({ id }) => id));
  return [...stored.filter(({ id }) => !ids.has(id)), ...given];
}

/** The last answer, kept for as long as the stamp is the same. */
function lastOnly<T>(stampOf: () => string, make: () => T): () => T {
  let kept: { readonly stamp: string; readonly value: T } | undefined;
  return () => {
    const stamp = stampOf();
    if (kept?.stamp !== stamp) kept = { stamp, value: make() };
    return kept.value;
  };
}
