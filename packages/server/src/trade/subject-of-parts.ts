import type { CatalogueModel, Part, Subject } from "@ferrule/core";

type PartOf<Kind extends Part["kind"]> = Extract<Part, { kind: Kind }>;

/** Parts that are sold as one thing, by kind. */
type ThingParts = { readonly [Kind in Part["kind"]]?: PartOf<Kind> };

/** In this order, what a thing is chiefly. */
const chiefKinds = ["head", "shaft", "adapter", "grip", "cover", "wrench"] as const;

/**
 * What parts that go for one price are, for comparing prices: a head with a shaft is a club, anything else is its chief part.
 * Nothing where there are two of a kind: a lot says what none of its things is worth.
 */
export function subjectOfParts(
  parts: readonly Part[],
  catalogue: readonly CatalogueModel[],
): Subject | undefined {
  const thing = Object.fromEntries(parts.map((part) => [part.kind, part])) as ThingParts;
  const chief = chiefKinds.map((kind) => thing[kind]).find((part) => part !== undefined);
  if (chief === undefined || Object.keys(thing).length < parts.length) return undefined;
  const { head, shaft, adapter } = thing;
  const model = modelOf(chief, catalogue);
  return stated<Subject>({
    kind: head && shaft ? "club" : chief.kind,
    modelId: model?.id,
    maker: chief.maker,
    model: chief.model,
    year: chief.year ?? model?.year ?? undefined,
    clubType: head?.clubType ?? model?.clubType ?? undefined,
    clubNumber: head?.clubNumber,
    hand: head?.hand,
    flex: shaft?.flex,
    adapter: head ? undefined : shaft && (adapter ? "fitted" : "none"),
    adapterFamily: familyOf(thing) ?? model?.adapterFamily ?? undefined,
    cover: head && suitsCover(head) ? thing.cover !== undefined : undefined,
    wrench: head?.socket?.type === "receiver" ? thing.wrench !== undefined : undefined,
  });
}

/** The one model of the catalogue that has this name; a head may stand there as the club that it makes. */
function modelOf(part: Part, catalogue: readonly CatalogueModel[]): CatalogueModel | undefined {
  const nameOf = ({ maker, model }: { maker?: string; model?: string }) =>
    `${maker ?? ""}|${model ?? ""}`.toLowerCase();
  if (part.maker === undefined || part.model === undefined) return undefined;
  const type = part.kind === "head" ? part.clubType : undefined;
  const alike = catalogue.filter(
    (model) =>
      nameOf(model) === nameOf(part) &&
      (model.kind === part.kind || (part.kind === "head" && model.kind === "club")) &&
      (!type || !model.clubType || type === model.clubType),
  );
  return alike.length === 1 ? alike[0] : undefined;
}

function familyOf({ head, adapter, wrench }: ThingParts): string | undefined {
  if (head) return head.socket?.type === "receiver" ? head.socket.family : undefined;
  return adapter?.family ?? wrench?.family;
}

/** Irons and wedges are sold without covers, so that one is missing says nothing. */
function suitsCover({ clubType }: PartOf<"head">): boolean {
  return clubType !== undefined && clubType !== "iron" && clubType !== "wedge";
}

function stated<T extends object>(fields: { readonly [Key in keyof T]: T[Key] | undefined }): T {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
}
