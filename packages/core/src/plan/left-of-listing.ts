import type { Listing } from "../listing/listing.ts";
import type { Sighting } from "../worth/sighting.ts";

/**
 * What a listing still offers once some of its items have been bought. A price for the whole tells nothing of the rest: that
 * costs what its own items are priced at, where they are.
 */
export function leftOfListing({ listing, boughtItems = [] }: Sighting): Listing {
  if (boughtItems.length === 0) return listing;
  const items = listing.items.filter((_, at) => !boughtItems.includes(at));
  return { ...listing, items, asking: null };
}
