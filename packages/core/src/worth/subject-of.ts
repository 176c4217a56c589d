import type { CatalogueModel } from "../listing/catalogue.ts";
import type { ListingItem } from "../listing/listing.ts";
import type { Fault } from "../parts/fault.ts";
import type { ClubType, Flex, Part } from "../parts/part.ts";
import type { Condition, Subject } from "./evidence.ts";
import type { ModelFinder } from "./model-finder.ts";

/** Faults that lower a price without forbidding a sale. */
const worn: ReadonlySet<Fault> = new Set([
  "sky-mark",
  "crown-scratch",
  "face-wear",
  "dent-head",
  "paint-wear-shaft",
  "rust",
  "grip-worn",
  "rattle",
  "other",
]);

/** The grade that stated faults put a thing in; without a fault nobody has said anything. */
export function conditionOf(faults: readonly Fault[]): Condition | undefined {
  const count = faults.filter((fault) => worn.has(fault)).length;
  if (count === 0) return undefined;
  return count > 2 ? "poor" : "fair";
}

/** Without what is not known. */
function stated<T extends object>(fields: { readonly [Key in keyof T]: T[Key] | null | undefined }): T {
  const known: Partial<T> = {};
  for (const key in fields) {
    const value = fields[key];
    if (value !== undefined && value !== null) known[key] = value as T[typeof key];
  }
  return known as T;
}

/** What an item of a listing is, for finding what its like went for. */
export function subjectOfItem(item: ListingItem, model: CatalogueModel | undefined): Subject {
  return stated<Subject>({
    kind: item.kind,
    modelId: item.modelId,
    maker: item.maker ?? model?.maker,
    model: item.model ?? model?.model,
    year: item.year ?? model?.year,
    clubType: item.clubType ?? model?.clubType,
    clubNumber: item.clubNumber,
    hand: item.hand,
    flex: item.flex,
    // On a head or a club it says whether one comes with it, which prices noted of such things do not tell apart.
    adapter: item.kind === "shaft" ? item.adapter : null,
    adapterFamily: item.adapterFamily ?? model?.adapterFamily,
    condition: conditionOf(item.faults),
    cover: item.cover,
    wrench: item.wrench,
  });
}

/** What a loose part is; `adapter` says what is on a shaft's tip. */
export function subjectOfPart(part: Part, finder: ModelFinder, adapter?: Part): Subject {
  const model = finder.ofPart(part);
  return stated<Subject>({
    kind: part.kind,
    modelId: model?.id,
    maker: part.maker,
    model: part.model,
    year: part.year ?? model?.year,
    clubType: typeOf(part) ?? model?.clubType,
    clubNumber: part.kind === "head" ? part.clubNumber : undefined,
    hand: handOf(part),
    flex: part.kind === "shaft" ? part.flex : undefined,
    adapter: part.kind === "shaft" ? (adapter ? "fitted" : "none") : undefined,
    adapterFamily: familyOf(part) ?? (adapter && familyOf(adapter)) ?? model?.adapterFamily,
    condition: conditionOf(part.faults ?? []),
  });
}

/** What a finished club is: its head's model with its shaft's flex, and what is said of cover and wrench. */
export function subjectOfClub(
  parts: { readonly head: Part; readonly shaft: Part; readonly grip?: Part | undefined },
  finder: ModelFinder,
  extras: { readonly cover?: boolean | null; readonly wrench?: boolean | null },
): Subject {
  const faults = [parts.head, parts.shaft, ...(parts.grip ? [parts.grip] : [])];
  return stated<Subject>({
    ...subjectOfPart(parts.head, finder),
    kind: "club",
    flex: flexOf(parts.shaft),
    adapter: undefined,
    condition: conditionOf(faults.flatMap((part) => part.faults ?? [])),
    cover: extras.cover,
    wrench: extras.wrench,
  });
}

/** A shaft is for a sort of clubs; of woods the driver stands for all. */
const typeOfSort = { wood: "driver", hybrid: "hybrid", iron: "iron", putter: "putter" } as const;

function typeOf(part: Part): ClubType | undefined {
  if (part.kind === "shaft") return part.suits && typeOfSort[part.suits];
  return part.kind === "head" || part.kind === "cover" ? part.clubType : undefined;
}

function flexOf(shaft: Part): Flex | undefined {
  return shaft.kind === "shaft" ? shaft.flex : undefined;
}

function handOf(part: Part) {
  const hand = part.kind === "head" || part.kind === "adapter" ? part.hand : undefined;
  return hand === "either" ? undefined : hand;
}

function familyOf(part: Part): string | undefined {
  if (part.kind === "adapter" || part.kind === "wrench") return part.family;
  return part.kind === "head" && part.socket?.type === "receiver" ? part.socket.family : undefined;
}
