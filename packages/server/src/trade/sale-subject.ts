import {
  type CatalogueModel,
  modelFinder,
  type Part,
  type Subject,
  subjectOfClub,
  subjectOfPart,
} from "@ferrule/core";

type PartOf<Kind extends Part["kind"]> = Extract<Part, { kind: Kind }>;

/** Parts that are sold as one thing, by kind. */
type ThingParts = { readonly [Kind in Part["kind"]]?: PartOf<Kind> };

/** In this order, what a thing is chiefly. */
const chiefKinds = ["head", "shaft", "adapter", "grip", "cover", "wrench"] as const;

/**
 * What parts that go for one price are, for comparing prices: a head with a shaft is a club, anything else is its chief part.
 * Nothing where there are two of a kind: a lot says what none of its things is worth.
 */
export function saleSubject(
  parts: readonly Part[],
  catalogue: readonly CatalogueModel[],
): Subject | undefined {
  const thing = Object.fromEntries(parts.map((part) => [part.kind, part])) as ThingParts;
  const chief = chiefKinds.map((kind) => thing[kind]).find((part) => part !== undefined);
  if (chief === undefined || Object.keys(thing).length < parts.length) return undefined;
  const finder = modelFinder(catalogue);
  const { head, shaft, grip, adapter } = thing;
  const extras = head ? extrasOf(head, thing) : {};
  if (head && shaft) return subjectOfClub({ head, shaft, grip }, finder, extras);
  return { ...subjectOfPart(chief, finder, adapter), ...extras };
}

/** All that goes is known, so a cover or a wrench that is not there does not come with it. */
function extrasOf(head: PartOf<"head">, { cover, wrench }: ThingParts): Pick<Subject, "cover" | "wrench"> {
  return {
    ...(suitsCover(head) ? { cover: cover !== undefined } : {}),
    ...(head.socket?.type === "receiver" ? { wrench: wrench !== undefined } : {}),
  };
}

/** Irons and wedges are sold without covers, so that one is missing says nothing. */
function suitsCover({ clubType }: PartOf<"head">): boolean {
  return clubType !== undefined && clubType !== "iron" && clubType !== "wedge";
}
