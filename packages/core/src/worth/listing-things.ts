import type { ListingItem } from "../listing/listing.ts";
import type { Part } from "../parts/part.ts";
import type { DealContext } from "./deal-context.ts";
import { subjectOfItem } from "./subject-of.ts";
import { saleOfThing, type Thing } from "./thing.ts";
import { titleOfItem } from "./titles.ts";

/** One thing that the listing offers, and the item of the listing that it is one of. */
export interface OfferedThing {
  readonly item: number;
  readonly parts: readonly Part[];
  readonly asItIs: Thing;
}

/** Everything the listing offers, thing by thing: a set is one, three heads are three. */
export function listingThings(context: DealContext): OfferedThing[] {
  return context.offered.things.flatMap((copies, item) =>
    copies.map((ids) => {
      const parts = ids.map((id) => context.parts.get(id) as Part);
      return { item, parts, asItIs: offeredThing(item, parts, context) };
    }),
  );
}

/** One of an item as it comes: what it is sold as is what the words call it. */
function offeredThing(place: number, parts: readonly Part[], context: DealContext): Thing {
  const item = context.input.listing.items[place] as ListingItem;
  const resale = context.resale(subjectOfItem(item, context.finder.byId(item.modelId)));
  const title = titleOfItem({ ...item, quantity: 1 });
  return { title, parts, resale, sale: saleOfThing(title, item.kind, parts, resale, context) };
}
