import { convertMinor } from "../money.ts";
import type { Money } from "../parts/part.ts";
import type { CostSettings } from "./cost-settings.ts";

/** Money in the bench's currency, at the rate the user typed in; nothing where there is none. */
export function convertedMinor(
  { amountMinor, currency }: Money,
  costs: Pick<CostSettings, "currency" | "rates">,
): number | undefined {
  if (currency === costs.currency) return amountMinor;
  const rate = costs.rates[currency];
  return rate === undefined ? undefined : convertMinor(amountMinor, currency, costs.currency, rate);
}
