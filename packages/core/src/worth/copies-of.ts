import type { Candidate } from "./candidate-clubs.ts";
import type { ListingParts } from "./parts-of-listing.ts";

/** The same club made of each of several identical things: the candidate itself first. */
export function copiesOf(candidate: Candidate, offered: ListingParts): Candidate[] {
  const items = [...new Set(candidate.takes.flatMap((id) => offered.itemOf.get(id) ?? []))];
  const copies = Math.min(...items.map((item) => offered.things[item]?.length ?? 1));
  const others = Array.from({ length: copies - 1 }, (_, at) => copied(candidate, items, at + 1, offered));
  return [candidate, ...others];
}

function copied(
  candidate: Candidate,
  items: readonly number[],
  copy: number,
  { things }: ListingParts,
): Candidate {
  const names = new Map<string, string>();
  for (const item of items) {
    const [first, other] = [things[item]?.[0] ?? [], things[item]?.[copy] ?? []];
    first.forEach((id, at) => {
      names.set(id, other[at] ?? id);
    });
  }
  const named = (id: string) => names.get(id) ?? id;
  const { club, takes } = candidate;
  const [head, shaft, grip] = [named(club.head), named(club.shaft), named(club.grip)];
  const adapter = club.adapter === null ? null : named(club.adapter);
  const undoes = club.undoes.map((joint) => ({
    ...joint,
    parts: [named(joint.parts[0]), named(joint.parts[1])] as [string, string],
  }));
  const id = [head, adapter ?? "-", shaft, grip].join("+");
  return { ...candidate, club: { ...club, id, head, adapter, shaft, grip, undoes }, takes: takes.map(named) };
}
