import type { Listing, ListingItem } from "../listing/listing.ts";
import type { Want } from "../resolve/result.ts";
import { answersWant } from "../worth/answers-want.ts";
import { askingOf } from "../worth/asking-of.ts";
import { convertedMinor } from "../worth/converted.ts";
import type { CostSettings } from "../worth/cost-settings.ts";
import type { ModelFinder } from "../worth/model-finder.ts";
import type { Watch } from "./watch.ts";

/** An item of a listing that is on the watchlist. */
export interface Match {
  readonly watch: Watch;
  readonly item: number;
  /** What is asked for one of it; null where the words do not price it alone. */
  readonly priceMinor: number | null;
}

/** The watchlist, made ready for listing after listing. */
export type WatchIndex = (listing: Listing, place?: string) => Match[];

/** The fields that name an adapter family: whoever wants one wants nothing else. */
const familyFields = ["adapter.family", "socket.family", "family"];

/**
 * Indexes a watchlist by kind and adapter family, so that an item is held against the few that could want it and not against
 * all. Muted ones match nothing.
 */
export function watchIndex(
  watches: readonly Watch[],
  finder: ModelFinder,
  costs: Pick<CostSettings, "currency" | "rates">,
): WatchIndex {
  const byKey = new Map<string, Watch[]>();
  for (const watch of watches) {
    if (watch.muted) continue;
    const key = keyOf(watch.kind, familyFields.flatMap((field) => watch.needs[field] ?? [])[0]);
    byKey.set(key, [...(byKey.get(key) ?? []), watch]);
  }
  return (listing, place) => {
    if (listing.intent === "wanted") return [];
    return listing.items.flatMap((item, at) => {
      const model = finder.byId(item.modelId);
      const family = item.adapterFamily ?? model?.adapterFamily ?? undefined;
      const keys = [keyOf(item.kind, family), keyOf(item.kind, undefined)];
      const near = [...new Set(keys)].flatMap((key) => byKey.get(key) ?? []);
      return near
        .filter((watch) => isAt(watch, place) && answersWant(item, model, wantOf(watch)))
        .map((watch) => ({ watch, item: at, priceMinor: priceOf(item, listing, costs) }));
    });
  };
}

const keyOf = (kind: string, family: unknown) => `${kind} ${typeof family === "string" ? family : ""}`;

const isAt = (watch: Watch, place: string | undefined) =>
  watch.place === undefined || watch.place.trim().toLowerCase() === place?.trim().toLowerCase();

const wantOf = ({ id, kind, needs, text }: Watch): Want => ({
  id,
  kind,
  needs,
  text,
  completes: [],
  count: 0,
});

function priceOf(
  item: ListingItem,
  listing: Listing,
  costs: Pick<CostSettings, "currency" | "rates">,
): number | null {
  const alone = listing.items.length === 1 && item.quantity === 1 ? askingOf(listing) : null;
  const price = item.price ?? alone;
  return price ? (convertedMinor(price, costs) ?? null) : null;
}
