import type { CostSettings, Refusal } from "@ferrule/core";

/** The bench's own currency, and what others are worth in it. */
export type Rates = Pick<CostSettings, "currency" | "rates">;

/** Why an amount in this currency cannot be brought to the bench's own. */
export function rateRefusals(
  from: string,
  rate: number | undefined,
  { currency, rates }: Rates,
  field = "rate",
): Refusal[] {
  if (from === currency || rate !== undefined || rates[from] !== undefined) return [];
  return [{ field, got: "nothing", expected: `how much ${currency} one ${from} was worth that day` }];
}
