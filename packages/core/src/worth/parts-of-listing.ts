import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Listing, ListingItem } from "../listing/listing.ts";
import type { Fault } from "../parts/fault.ts";
import type { Joint } from "../parts/joint.ts";
import type { Adapter, ClubType, Head, Part, PartKind, Shaft } from "../parts/part.ts";
import { type ModelFinder, modelFinder } from "./model-finder.ts";
import { setNumbers } from "./set-numbers.ts";

/** What a listing's items are as parts of a bench. */
export interface ListingParts {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  /** For each part, the place of its item in the listing. */
  readonly itemOf: ReadonlyMap<string, number>;
  /** For each item, the things that are sold as one, a set among them: the ids of their parts. */
  readonly things: readonly (readonly (readonly string[])[])[];
}

/** Clubs and other things of one item that a judgement looks at: the others of them are like these. */
const judgedPieces = 60;

/** How many of several identical things a judgement counts, in what they bring and in what they cost to get here alike. */
export function judgedCopies(item: ListingItem): number {
  return Math.min(item.quantity, Math.max(1, Math.floor(judgedPieces / clubsOfSet(item).length)));
}

/**
 * The draft parts behind a listing: a complete club is its parts with their joints made, a set is its clubs. Only what the
 * words or the catalogue say is filled in; what the catalogue adds is the adapter family and the type of club of a model.
 * Ids are given by `idFor`, by default `listing-head`, `listing-head-2` and so on; how many of several identical things are
 * made is up to `copiesOf`, by default as many as a judgement counts.
 */
export function partsOfListing(
  listing: Listing,
  catalogue: readonly CatalogueModel[] | ModelFinder,
  idFor: (kind: PartKind) => string = countingIds("listing"),
  copiesOf: (item: ListingItem) => number = judgedCopies,
): ListingParts {
  const finder = "byId" in catalogue ? catalogue : modelFinder(catalogue);
  const parts: Part[] = [];
  const joints: Joint[] = [];
  const itemOf = new Map<string, number>();
  const make = (piece: ListingItem, place: number) => {
    const made = partsOfItem(piece, finder, idFor);
    parts.push(...made.parts);
    joints.push(...made.joints);
    for (const { id } of made.parts) itemOf.set(id, place);
    return made.parts.map(({ id }) => id);
  };
  const things = listing.items.map((item, place) => {
    const clubs = clubsOfSet(item);
    return Array.from({ length: copiesOf(item) }, () => clubs.flatMap((club) => make(club, place)));
  });
  return { parts, joints, itemOf, things };
}

/** Ids that count up by kind. */
export function countingIds(stem: string): (kind: PartKind) => string {
  const used = new Map<string, number>();
  return (kind) => {
    const count = (used.get(kind) ?? 0) + 1;
    used.set(kind, count);
    return count === 1 ? `${stem}-${kind}` : `${stem}-${kind}-${count}`;
  };
}

/** The clubs of a set, each an item of its own; one thing alone where it is no set. A set's loft is nobody's in it. */
function clubsOfSet(item: ListingItem): ListingItem[] {
  const numbers = item.clubNumber === null ? [null] : setNumbers(item.clubNumber);
  return numbers.map((clubNumber) => ({
    ...item,
    clubNumber,
    loftDeg: numbers.length > 1 ? null : item.loftDeg,
  }));
}

interface Made {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
}

function partsOfItem(item: ListingItem, finder: ModelFinder, idFor: (kind: PartKind) => string): Made {
  const model = finder.byId(item.modelId);
  const draft = { item, model, idFor };
  switch (item.kind) {
    case "club":
      return clubParts(draft);
    case "head":
      return withExtras(draft, { parts: [headOf(draft), ...looseAdapter(draft)], joints: [] });
    case "shaft":
      return withExtras(draft, shaftParts(draft));
    case "adapter":
      return withExtras(draft, { parts: [adapterOf(draft)], joints: [] });
    case "grip":
      return { parts: [stated({ ...named(draft, "grip"), ...faultsFor(item, "grip") })], joints: [] };
    case "cover":
      return { parts: [stated({ ...named(draft, "cover"), clubType: typeOf(draft) })], joints: [] };
    case "wrench":
      return { parts: [stated({ ...named(draft, "wrench"), family: familyOf(draft) })], joints: [] };
  }
}

interface Draft {
  readonly item: ListingItem;
  readonly model: CatalogueModel | undefined;
  readonly idFor: (kind: PartKind) => string;
}

const typeOf = ({ item, model }: Draft): ClubType | undefined =>
  item.clubType ?? model?.clubType ?? undefined;
const familyOf = ({ item, model }: Draft) => item.adapterFamily ?? model?.adapterFamily ?? undefined;

/** A part without the fields that nobody stated. */
function stated(fields: Record<string, unknown>): Part {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined && value !== null),
  ) as Part;
}

function named({ item, idFor }: Draft, kind: PartKind) {
  const own = item.kind === kind || (item.kind === "club" && kind === "head");
  return {
    id: idFor(kind),
    kind,
    ...(own ? { maker: item.maker, model: item.model, year: item.year } : {}),
  };
}

function headOf(draft: Draft): Head {
  const { item } = draft;
  return stated({
    ...named(draft, "head"),
    clubType: typeOf(draft),
    clubNumber: item.clubNumber,
    hand: item.hand,
    loftDeg: item.loftDeg,
    socket: socketOf(draft),
    ...faultsFor(item, "head"),
  }) as Head;
}

/** A receiver where the family is known or an adapter is spoken of; a bore where the words give its size; else not known. */
function socketOf(draft: Draft): Head["socket"] {
  const { item } = draft;
  const family = familyOf(draft);
  if (family !== undefined) return { type: "receiver", family };
  if (item.adapter === "fitted") return { type: "receiver" };
  if (item.kind !== "head" || !item.tip) return undefined;
  return stated({
    type: "bore",
    diameterIn: item.tip.diameterIn,
    form: item.tip.form,
  }) as unknown as Head["socket"];
}

function looseAdapter(draft: Draft): Part[] {
  return draft.item.adapter === "fitted" ? [adapterOf(draft)] : [];
}

function adapterOf(draft: Draft): Adapter {
  return stated({
    ...named(draft, "adapter"),
    family: familyOf(draft),
    hand: draft.item.hand,
    ...(draft.item.kind === "adapter" && draft.item.tip?.diameterIn
      ? { bore: stated({ diameterIn: draft.item.tip.diameterIn, form: draft.item.tip.form }) }
      : {}),
    ...faultsFor(draft.item, "adapter"),
  }) as Adapter;
}

const suitsOfType = {
  driver: "wood",
  fairway: "wood",
  hybrid: "hybrid",
  iron: "iron",
  wedge: "iron",
  putter: "putter",
} as const;

function shaftOf(draft: Draft): Shaft {
  const { item } = draft;
  const clubType = typeOf(draft);
  return stated({
    ...named(draft, "shaft"),
    suits: clubType && suitsOfType[clubType],
    material: item.shaftMaterial,
    flex: item.flex,
    massG: item.shaftMassG,
    length: item.length && { lengthIn: item.length.lengthIn, basis: lengthBasis(item) },
    tip: item.tip ? stated({ diameterIn: item.tip.diameterIn, form: item.tip.form }) : undefined,
    ...faultsFor(item, "shaft"),
  }) as Shaft;
}

/** The length that is said of a complete club is its playing length. */
function lengthBasis({ kind, length }: ListingItem) {
  return kind === "club" && length?.basis === "unstated" ? "playing" : length?.basis;
}

function shaftParts(draft: Draft): Made {
  const shaft = shaftOf(draft);
  if (draft.item.adapter !== "fitted") return { parts: [shaft], joints: [] };
  const adapter = adapterOf(draft);
  return { parts: [shaft, adapter], joints: [{ type: "bonded", parts: [adapter.id, shaft.id] }] };
}

/** A complete club: its head and its shaft joined, through an adapter where it is known to have one, and a grip. */
function clubParts(draft: Draft): Made {
  const head = headOf(draft);
  const shaft = shaftOf(draft);
  const grip = stated({ ...named(draft, "grip"), ...faultsFor(draft.item, "grip") });
  const adapters =
    head.socket?.type === "receiver" && draft.item.adapter !== "none" ? [adapterOf(draft)] : [];
  const joining: Joint[] = adapters.flatMap(({ id }): Joint[] => [
    { type: "screwed", parts: [head.id, id] },
    { type: "bonded", parts: [id, shaft.id] },
  ]);
  const direct: Joint[] =
    head.socket?.type === "receiver" ? [] : [{ type: "bonded", parts: [head.id, shaft.id] }];
  return withExtras(draft, {
    parts: [head, ...adapters, shaft, grip],
    joints: [...(adapters.length > 0 ? joining : direct), { type: "gripped", parts: [shaft.id, grip.id] }],
  });
}

/** Adds the cover and the wrench that come with a thing. */
function withExtras(draft: Draft, { parts, joints }: Made): Made {
  const { item, idFor } = draft;
  const cover = item.cover ? [stated({ id: idFor("cover"), kind: "cover", clubType: typeOf(draft) })] : [];
  const wrench = item.wrench
    ? [stated({ id: idFor("wrench"), kind: "wrench", family: familyOf(draft) })]
    : [];
  return { parts: [...parts, ...cover, ...wrench], joints };
}

/** Which part a fault is a fault of. Rust and unnamed damage belong to the shaft of a shaft, else to the head. */
const placesOfFaults: Readonly<Partial<Record<Fault, PartKind>>> = {
  "paint-wear-shaft": "shaft",
  "dent-shaft": "shaft",
  "crease-shaft": "shaft",
  "exposed-fibre": "shaft",
  "bent-shaft": "shaft",
  "grip-worn": "grip",
  "adapter-damaged": "adapter",
};

function faultsFor(item: ListingItem, kind: PartKind) {
  const main = item.kind === "club" ? "head" : item.kind;
  const here = (fault: Fault) => (placesOfFaults[fault] ?? main) === kind;
  const faults = item.faults.filter(here);
  const deniedFaults = item.deniedFaults.filter(here);
  return {
    ...(faults.length > 0 ? { faults } : {}),
    ...(deniedFaults.length > 0 ? { deniedFaults } : {}),
  };
}
