import { type CatalogueModel, type ReadyCatalogue, readyCatalogue } from "@ferrule/core";
import type { Tables } from "../store/tables.ts";

type Models = readonly CatalogueModel[];

/**
 * Catalogues made ready for reading with. A large one takes a second, so the stored one is made ready anew only when it has
 * changed, and of those that come with requests the last one is kept.
 */
export interface ReadyModels {
  all(): Models;
  ready(): ReadyCatalogue;
  /** The stored models and these; of two with one id the given one wins. */
  readyWith(given: Models): ReadyCatalogue;
  /** These models alone. */
  readyOnly(given: Models): ReadyCatalogue;
}

export function openReadyModels(tables: Tables): ReadyModels {
  const stamp = () => tables.stampOf(tables.models);
  const stored = keptLast<[], Models>(stamp, () => tables.models.all().map(({ value }) => value));
  const ready = keptLast<[], ReadyCatalogue>(stamp, () => readyCatalogue(stored()));
  const given = keptLast(
    (isWithStored: boolean, models: Models) =>
      `${isWithStored ? stamp() : "alone"} ${JSON.stringify(models)}`,
    (isWithStored, models) => readyCatalogue(isWithStored ? merged(stored(), models) : models),
  );
  return {
    all: stored,
    ready,
    readyWith: (models) => (models.length === 0 ? ready() : given(true, models)),
    readyOnly: (models) => given(false, models),
  };
}

function merged(stored: Models, given: Models): Models {
  const ids = new Set(given.map(({ id }) => id));
  return [...stored.filter(({ id }) => !ids.has(id)), ...given];
}

/** The last answer, kept for as long as its key is the same. */
function keptLast<Asked extends readonly unknown[], T>(
  keyOf: (...asked: Asked) => string,
  make: (...asked: Asked) => T,
): (...asked: Asked) => T {
  let kept: { readonly key: string; readonly value: T } | undefined;
  return (...asked) => {
    const key = keyOf(...asked);
    if (kept?.key !== key) kept = { key, value: make(...asked) };
    return kept.value;
  };
}
