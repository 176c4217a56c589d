import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Part } from "../parts/part.ts";

/** Looks models of the catalogue up, by id and by what a part of the bench says of itself. */
export interface ModelFinder {
  readonly byId: (id: string | null | undefined) => CatalogueModel | undefined;
  readonly ofPart: (part: Part) => CatalogueModel | undefined;
}

const plain = (...words: readonly (string | null | undefined)[]) =>
  words.map((word) => (word ?? "").trim().toLowerCase().replace(/\s+/gu, " ")).join("|");

/** A catalogue made ready for looking models up. */
export function modelFinder(catalogue: readonly CatalogueModel[]): ModelFinder {
  const ids = new Map(catalogue.map((model) => [model.id, model]));
  const names = new Map<string, CatalogueModel[]>();
  for (const model of catalogue) {
    const key = plain(model.maker, model.model);
    names.set(key, [...(names.get(key) ?? []), model]);
  }
  const find = (part: Part) => {
    if (part.maker === undefined || part.model === undefined) return undefined;
    const alike = (names.get(plain(part.maker, part.model)) ?? []).filter((model) => mayBe(part, model));
    return alike.length === 1 ? alike[0] : undefined;
  };
  // Parts of the bench are asked about again and again.
  const known = new WeakMap<Part, { readonly model: CatalogueModel | undefined }>();
  const ofPart = (part: Part) => {
    const found = known.get(part) ?? { model: find(part) };
    known.set(part, found);
    return found.model;
  };
  return { byId: (id) => (id ? ids.get(id) : undefined), ofPart };
}

/** A head may be catalogued as itself or as the club it makes; other kinds only as themselves. */
function mayBe(part: Part, model: CatalogueModel): boolean {
  if (part.kind !== "head") return part.kind === model.kind;
  const isHead = model.kind === "head" || model.kind === "club";
  return isHead && (!part.clubType || !model.clubType || part.clubType === model.clubType);
}
