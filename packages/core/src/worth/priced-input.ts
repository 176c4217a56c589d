import type { DealInput } from "./deal-input.ts";
import type { PlanPrices } from "./plan-prices.ts";

/** What a judgement rests on, with what parts are worth to the whole bench where that has been worked out: without it each part is looked at alone. */
export interface PricedInput extends DealInput {
  readonly prices?: PlanPrices;
}
