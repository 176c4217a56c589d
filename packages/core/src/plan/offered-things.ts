import type { ListingItem } from "../listing/listing.ts";
import type { Part } from "../parts/part.ts";
import type { DealContext } from "../worth/deal-context.ts";
import { subjectOfItem } from "../worth/subject-of.ts";
import { saleOfThing } from "../worth/thing.ts";
import { titleOfItem } from "../worth/titles.ts";
import type { MeaningfulUse, Roles } from "./meaningful-use.ts";
import type { Offer } from "./offers.ts";
import { sellAs } from "./sell-uses.ts";
import type { StockType } from "./stock.ts";

/** One of an item of a listing, by the parts that stand for its own: a set is one, a head with its cover is one. */
interface OfferedThing {
  readonly item: ListingItem;
  readonly parts: readonly Part[];
}

/** The things of listings that lie there as more than one, each sort of them once. */
export function offeredThings(offers: readonly Offer[], types: readonly StockType[]): OfferedThing[] {
  const standsFor = new Map(
    types.flatMap(({ parts, instances }) =>
      instances.flatMap((instance) =>
        instance.parts.map((part, at) => [part.id, parts[at] as Part] as const),
      ),
    ),
  );
  const found = new Map<string, OfferedThing>();
  for (const { sighting, things } of offers) {
    for (const [at, copies] of things.entries()) {
      const item = sighting.listing.items[at];
      const parts = copies[0]?.flatMap((id) => standsFor.get(id) ?? []) ?? [];
      if (!item || isOneThing(parts, types) || new Set(parts).size < parts.length) continue;
      found.set(parts.map(({ id }) => id).join("+"), { item, parts });
    }
  }
  return [...found.values()];
}

const isOneThing = (parts: readonly Part[], types: readonly StockType[]) =>
  parts.length <= 1 || types.some((type) => parts.every((part) => type.parts.includes(part)));

/** Selling such a thing as the listing sells it: a set as a set, a head with its cover. */
export function asOfferedUses(
  things: readonly OfferedThing[],
  context: DealContext,
  roles: Roles,
): MeaningfulUse[] {
  return things.flatMap(({ item, parts }) => {
    const resale = context.resale(subjectOfItem(item, context.finder.byId(item.modelId)));
    const title = titleOfItem({ ...item, quantity: 1 });
    return sellAs(parts, { title, sale: saleOfThing(title, item.kind, parts, resale, context) }, roles);
  });
}

/** The cover and the wrench that come with a single head or club, by its head: a club that is built of the head has them too. */
export function extrasOfHeads(things: readonly OfferedThing[]): Map<string, readonly Part[]> {
  return new Map(
    things.flatMap(({ parts }) => {
      const heads = parts.filter(({ kind }) => kind === "head");
      const extras = parts.filter(({ kind }) => kind === "cover" || kind === "wrench");
      return heads.length === 1 && heads[0] && extras.length > 0 ? [[heads[0].id, extras] as const] : [];
    }),
  );
}
