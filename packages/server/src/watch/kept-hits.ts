import type { Hit, Sighting } from "@ferrule/core";
import type { KeptHit } from "../store/hits.ts";
import type { Tables } from "../store/tables.ts";

/** What was found of a watched thing in a listing. */
export interface FoundMatch {
  readonly watch: string;
  readonly item: number;
  readonly priceMinor: number | null;
}

export interface SeenHit extends Hit {
  /** What was wanted, and the words of the listing. */
  readonly wanted: string;
  readonly text: string;
  readonly asking: Sighting["listing"]["asking"];
  readonly verdict: NonNullable<Sighting["verdict"]> | null;
}

/** What is told of something that is watched; nothing where it is watched no more. */
export type TellWatch = (watch: string) => Pick<KeptHit, "text" | "clubs"> | undefined;

const isSame = (hit: KeptHit, match: FoundMatch) => hit.watch === match.watch && hit.item === match.item;

/** What a sighting hits now takes the place of what it hit before; what has been dealt with stays dealt with. */
export function keepHits(
  tables: Tables,
  sighting: Sighting,
  matches: readonly FoundMatch[],
  tell: TellWatch,
): void {
  for (const hit of tables.hits.ofSighting(sighting.id))
    if (!hit.isDealtWith && !matches.some((match) => isSame(hit, match))) tables.hits.remove(hit.id);
  addHits(tables, sighting, matches, tell);
}

/** The same where what it hit before stays. */
export function addHits(
  tables: Tables,
  { id, seenOn }: Sighting,
  matches: readonly FoundMatch[],
  tell: TellWatch,
): void {
  const before = tables.hits.ofSighting(id);
  for (const match of matches) {
    const known = before.find((hit) => isSame(hit, match));
    const told = tell(match.watch);
    if (known) tables.hits.replace({ ...known, ...told, priceMinor: match.priceMinor });
    else if (told) tables.hits.add({ ...match, ...told, sighting: id, on: seenOn, isDealtWith: false });
  }
}

/** A hit as it is shown under the cap of today. What has become of the listing deals with its hits too. */
export function seenHit(hit: KeptHit, sighting: Sighting, capMinor: number | null): SeenHit {
  const { text: wanted, priceMinor, ...rest } = hit;
  return {
    ...rest,
    wanted,
    isDealtWith:
      hit.isDealtWith || sighting.outcome !== "open" || sighting.boughtItems?.includes(hit.item) === true,
    overMinor: priceMinor === null || capMinor === null ? null : priceMinor - capMinor,
    text: sighting.text,
    asking: sighting.listing.asking,
    verdict: sighting.verdict ?? null,
  };
}
