import type { ClubType } from "../parts/part.ts";
import type { CatalogueModel, ItemKind } from "./catalogue.ts";
import type { NameFound } from "./find-model.ts";
import { isHeadLike } from "./item-draft.ts";
import type { ReadyCatalogue } from "./ready-catalogue.ts";

/** What the names said of an item come to: a model, or a maker alone, with the name that says it. */
export interface ModelChoice {
  readonly maker: string | null;
  readonly model: CatalogueModel | null;
  readonly makerAt: NameFound | null;
  readonly modelAt: NameFound | null;
  /** A name that may mean several models, which the words do not tell apart. */
  readonly undecided: NameFound | null;
}

interface Asked {
  readonly kind: ItemKind;
  readonly type: ClubType | null;
  readonly year: number | null;
  /** The names said of the item, in order; a maker's name alone, too. */
  readonly names: readonly NameFound[];
}

const kindFits = (item: ItemKind, model: ItemKind) => (isHeadLike(item) ? isHeadLike(model) : item === model);

const narrowed = <Model>(models: readonly Model[], keeps: (model: Model) => boolean): readonly Model[] => {
  const kept = models.filter(keeps);
  return kept.length > 0 ? kept : models;
};

/** The models a name may mean for this item, as far as the words tell them apart. */
function candidatesOf(
  name: NameFound,
  { kind, type, year }: Asked,
  maker: string | null,
): readonly CatalogueModel[] {
  const fitting = name.models.filter(
    (model) => kindFits(kind, model.kind) && (!type || !model.clubType || model.clubType === type),
  );
  if (fitting.length < 2) return fitting;
  const ofMaker = maker === null ? fitting : narrowed(fitting, (model) => model.maker === maker);
  const ofType = type === null ? ofMaker : narrowed(ofMaker, (model) => model.clubType === type);
  return year === null ? ofType : narrowed(ofType, (model) => model.year === year);
}

/** Settles which model of the catalogue an item is; a maker alone where only the maker is sure. */
export function chooseModel(asked: Asked, { makerKinds }: ReadyCatalogue): ModelChoice {
  const makes = (maker: string) =>
    [...(makerKinds.get(maker) ?? [])].some((kind) => kindFits(asked.kind, kind));
  const makerAt = asked.names.find(({ maker }) => maker !== null && makes(maker)) ?? null;
  const maker = makerAt?.maker ?? null;
  let undecided: NameFound | null = null;
  for (const name of asked.names) {
    const candidates = candidatesOf(name, asked, maker);
    const [model] = candidates;
    const contrary = model !== undefined && maker !== null && model.maker !== maker;
    if (candidates.length === 1 && model && !contrary)
      return { maker: model.maker, model, makerAt: makerAt ?? name, modelAt: name, undecided: null };
    if (candidates.length > 1) undecided ??= name;
  }
  return { maker, model: null, makerAt, modelAt: null, undecided };
}
