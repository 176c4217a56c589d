import type { DealContext } from "../worth/deal-context.ts";
import type { PlanPrices } from "../worth/plan-prices.ts";
import { thingOf } from "../worth/thing.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import { type MeaningfulUse, type Roles, sharesOf } from "./meaningful-use.ts";
import type { StockType } from "./stock.ts";

/** What may come is worth a little less than what is had today, so that of two equal choices the sure one is taken. From memory. */
const shareOfTheSure = 0.97;

/** Keeping each thing for later, at what its parts are worth to the bench. */
export function keepUses(
  types: readonly StockType[],
  context: DealContext,
  roles: Roles,
  prices: PlanPrices,
): MeaningfulUse[] {
  return types.flatMap((type) => {
    if (unsafeFaults(type.parts).length > 0) return [];
    const netMinor = Math.floor(shareOfTheSure * worthOf(type, prices));
    if (netMinor <= 0) return [];
    const ids = type.parts.map(({ id }) => id);
    return [
      {
        id: `wait ${ids.join("+")}`,
        ...{ do: "wait" as const, title: thingOf(type.parts, context).title, parts: ids },
        takes: sharesOf(ids, roles),
        ...{ netMinor, minutes: 0, outlayMinor: 0 },
      },
    ];
  });
}

/** By those of the type that the prices know. */
function worthOf({ instances }: StockType, { ofPart }: PlanPrices): number {
  const known = instances.find(({ parts }) => parts.every(({ id }) => ofPart(id) !== undefined));
  return (known?.parts ?? []).reduce((sum, { id }) => sum + (ofPart(id) ?? 0), 0);
}
