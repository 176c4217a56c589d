import type { ListingItem, Subject } from "@ferrule/core";

/** What to note a price under: the item by itself, or the finished club that it is part of. Only what is known. */
export function subjectOfItem(item: ListingItem, as: "itself" | "club"): Subject {
  const {
    maker,
    model,
    modelId,
    year,
    clubType,
    clubNumber,
    hand,
    flex,
    adapter,
    adapterFamily,
    cover,
    wrench,
  } = item;
  const asClub = as === "club";
  const known = {
    kind: asClub ? "club" : item.kind,
    maker,
    model,
    modelId: asClub && item.kind !== "club" ? null : modelId,
    year,
    clubType,
    clubNumber,
    hand,
    flex,
    adapter: asClub ? null : adapter,
    adapterFamily,
    cover,
    wrench,
  };
  return Object.fromEntries(
    Object.entries(known).filter(([, value]) => value !== null),
  ) as unknown as Subject;
}
