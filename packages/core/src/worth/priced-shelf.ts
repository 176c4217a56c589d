import { roundMinor } from "../money.ts";
import type { PlanPrices } from "./plan-prices.ts";
import type { ShelfCosts } from "./shelf-worth.ts";

/** What the shelf loses by parts at the prices of the plan; what the plan does not know is reckoned as without it. */
export function pricedShelf({ ofPart }: PlanPrices, otherwise: ShelfCosts): ShelfCosts {
  const split = (ids: readonly string[]) => {
    const unknown = ids.filter((id) => ofPart(id) === undefined);
    const pricedMinor = ids.reduce((sum, id) => sum + (ofPart(id) ?? 0), 0);
    return { unknown, pricedMinor };
  };
  return {
    of: (ids) => {
      const { unknown, pricedMinor } = split(ids);
      const rest = otherwise.of(unknown);
      return { amountMinor: roundMinor(pricedMinor + rest.amountMinor), guessed: rest.guessed };
    },
    atLeast: (ids) => {
      const { unknown, pricedMinor } = split(ids);
      return pricedMinor + otherwise.atLeast(unknown);
    },
  };
}
