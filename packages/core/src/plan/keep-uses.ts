import type { ReadyBench } from "../resolve/ready-bench.ts";
import type { DealContext } from "../worth/deal-context.ts";
import type { PlanPrices } from "../worth/plan-prices.ts";
import { thingOf } from "../worth/thing.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import { type MeaningfulUse, type Roles, sharesOf } from "./meaningful-use.ts";
import type { StockType } from "./stock.ts";
import { waitsOf } from "./wait-uses.ts";

interface KeepDesk {
  readonly ready: ReadyBench;
  readonly context: DealContext;
  readonly roles: Roles;
}

/** What may come is worth a little less than what is had today, so that of two equal choices the sure one is taken. From memory. */
const shareOfTheSure = 0.97;

/** Keeping each thing for later, at what its parts are worth to the bench. */
export function keepUses(
  types: readonly StockType[],
  { ready, context, roles }: KeepDesk,
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
        ...whatIsMissing(type, { ready, context, roles }),
      },
    ];
  });
}

/** The one part that would complete it alone, where there is such a one, and what to pay for it. */
function whatIsMissing(type: StockType, { ready, context, roles }: KeepDesk) {
  const alone = waitsOf(type, ready, context, roles).filter(
    ({ parts }) => parts.length === type.parts.length,
  );
  const [best] = alone.sort((one, other) => other.netMinor - one.netMinor);
  return best?.want ? { want: best.want, takeAtOrUnderMinor: best.takeAtOrUnderMinor ?? 0 } : {};
}

/** By those of the type that the prices know. */
function worthOf({ instances }: StockType, { ofPart }: PlanPrices): number {
  const known = instances.find(({ parts }) => parts.every(({ id }) => ofPart(id) !== undefined));
  return (known?.parts ?? []).reduce((sum, { id }) => sum + (ofPart(id) ?? 0), 0);
}
