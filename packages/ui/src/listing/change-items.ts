import { type Doubt, emptyItem, type Listing, type Span } from "@ferrule/core";

/** The listing with one more item, to be filled in. */
export function withItem(listing: Listing): Listing {
  return { ...listing, items: [...listing.items, emptyItem("head")] };
}

/** The listing without one of its items; what was read of the later ones moves up with them. */
export function withoutItem(listing: Listing, index: number): Listing {
  return {
    ...listing,
    items: listing.items.filter((_item, at) => at !== index),
    spans: moved<Span>(listing.spans, index),
    doubts: moved<Doubt>(listing.doubts, index),
  };
}

function moved<T extends { readonly field: string | null }>(all: readonly T[], index: number): T[] {
  return all.flatMap((one) => {
    const [, at, rest = ""] = /^items\.(\d+)(.*)$/.exec(one.field ?? "") ?? [];
    if (at === undefined || Number(at) < index) return [one];
    return Number(at) === index ? [] : [{ ...one, field: `items.${Number(at) - 1}${rest}` }];
  });
}
