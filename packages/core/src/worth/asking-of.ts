import type { Listing } from "../listing/listing.ts";
import type { Money } from "../parts/part.ts";

/**
 * What is asked for everything that a listing offers: the price of the whole where one is named, else the sum of the prices
 * of its items where each has one in the same currency. Nothing where neither is so.
 */
export function askingOf({ asking, items }: Pick<Listing, "asking" | "items">): Money | null {
  if (asking) return asking;
  const priced = items.flatMap(({ price, quantity }) => (price ? { price, quantity } : []));
  const currency = priced[0]?.price.currency;
  if (currency === undefined || priced.length < items.length) return null;
  if (priced.some(({ price }) => price.currency !== currency)) return null;
  const amountMinor = priced.reduce((sum, { price, quantity }) => sum + price.amountMinor * quantity, 0);
  return { amountMinor, currency };
}
