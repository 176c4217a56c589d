import type { Outcome } from "../errors.ts";
import type { Tables } from "../store/tables.ts";
import { type Bought, type BuyRequest, buyListing } from "./buy-listing.ts";
import type { Costs } from "./costs.ts";
import type { Market } from "./expectation.ts";
import type { ReadyModels } from "./ready-models.ts";
import { type SellRequest, type Sold, sellParts } from "./sell-parts.ts";

/** Buying and selling, each whole or not at all, and on disk when it returns. */
export interface Trade {
  buy(sighting: string, request: BuyRequest): Outcome<Bought>;
  sell(request: SellRequest): Outcome<Sold>;
}

export function openTrade(tables: Tables, costs: Costs, models: ReadyModels, today: () => string): Trade {
  const market = (): Market => ({
    catalogue: models.all(),
    evidence: tables.evidence.all().map(({ value }) => value),
    costs: costs.read(),
    today: today(),
  });
  return {
    buy: (sighting, request) => buyListing(tables, market(), sighting, request),
    sell: (request) => sellParts(tables, market(), request),
  };
}
