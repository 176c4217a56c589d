import { roundMinor } from "../money.ts";
import type { DealLine } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { OfferedThing } from "./listing-things.ts";
import type { Kept, PlanPrices } from "./plan-prices.ts";
import { gainsOfSales, worthSelling } from "./sale.ts";
import type { Waited } from "./wait-sum.ts";

/**
 * Keeping things of the listing for what the bench will make of them, at the prices of the plan; the rest is sold as it is.
 * What is known of the wait for the one missing part, where there is one, is `waited`.
 */
export function keepSum(
  things: readonly OfferedThing[],
  context: DealContext,
  prices: PlanPrices,
  waited: Waited,
): Waited {
  const kept = prices.keep(context).filter(({ thing, gain }) => gain.value > asItIs(things[thing]));
  if (kept.length === 0)
    return "sum" in waited
      ? { why: [{ code: "not-worth-waiting", text: "the bench makes no more of it than it would sell for" }] }
      : waited;
  const isKept = new Set(kept.map(({ thing }) => thing));
  const others = worthSelling(
    things.flatMap(({ asItIs: { sale } }, at) => (isKept.has(at) || !sale ? [] : [sale])),
  );
  const sales = [...kept.flatMap((each) => each.sales), ...others];
  const gains = [...kept.map(({ gain }) => gain), ...gainsOfSales(others)];
  const spent = total(sales.map(({ gain }) => gain.value)) - total(gains.map(({ value }) => value));
  const known = "sum" in waited ? waited.sum : undefined;
  const onBench = kept.flatMap(({ uses }) => uses).filter((id) => context.shelf.parts.has(id));
  return {
    sum: {
      way: "wait",
      gains,
      lines: [...sales.flatMap(({ lines }) => lines), otherPartsLine(spent)].filter(
        ({ amountMinor }) => amountMinor !== 0,
      ),
      minutes: total([...kept, ...others].map(({ minutes }) => minutes)),
      spentMinor:
        total(kept.map(({ outlayMinor }) => outlayMinor)) +
        total(others.map(({ listingFeeMinor }) => listingFeeMinor)),
      days: known?.days ?? null,
      clubs: [],
      usesParts: [...new Set(onBench)],
      risks: known?.risks ?? [],
      reasons: kept.map(reasonOf),
      waiting: known?.waiting ?? null,
    },
  };
}

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

const asItIs = (thing: OfferedThing | undefined) => Math.max(0, thing?.asItIs.sale?.gain.value ?? 0);

const otherPartsLine = (spent: number): DealLine => ({
  code: "other-parts",
  text: "the other parts at what they are worth to the bench, and the work",
  amountMinor: -roundMinor(spent),
});

const reasonOf = ({ titles, waits }: Kept) => ({
  code: "kept-for",
  text: `kept for ${titles.join(" and ")}, ${waits ? "with what may be counted on to come" : "with what is here"}`,
});
