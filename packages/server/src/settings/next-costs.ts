import type { CostSettings, Refusal } from "@ferrule/core";
import { inCurrency } from "../trade/in-currency.ts";

/**
 * The costs once these are put in. Where they are in another currency, amounts that are not among them are converted at the
 * rate for the old one: as given, as it comes with them, or the other way round as it was typed in before.
 */
export function nextCosts(
  before: CostSettings,
  part: Partial<CostSettings>,
  given: number | undefined,
): { readonly costs: CostSettings } | { readonly refusals: readonly Refusal[] } {
  const { currency: old } = before;
  const { currency = old } = part;
  if (currency === old) return { costs: { ...before, ...part } };
  const known = before.rates[currency];
  const rate = given ?? part.rates?.[old] ?? (known === undefined ? undefined : 1 / known);
  if (rate === undefined && hasAmountsLeft(before, part)) {
    const expected = `${old}, or a rate: how much ${currency} one ${old} is worth, for amounts of ${old} that stay`;
    return { refusals: [{ field: "costs.currency", got: JSON.stringify(currency), expected }] };
  }
  const left = rate === undefined ? { ...before, currency } : inCurrency(before, currency, rate);
  return { costs: { ...left, ...part, rates: ratesIn(before, part, currency, rate) } };
}

function ratesIn(
  before: CostSettings,
  part: Partial<CostSettings>,
  currency: string,
  rate: number | undefined,
): CostSettings["rates"] {
  const told = Object.entries(part.rates ?? {});
  const kept =
    rate === undefined ? [] : Object.entries(before.rates).map(([code, of]) => [code, of * rate] as const);
  const old = rate === undefined ? [] : [[before.currency, rate] as const];
  return Object.fromEntries([...kept, ...told, ...old].filter(([code]) => code !== currency));
}

const amounts = [
  "hourValueMinor",
  "leastNetMinor",
  "packagingMinor",
  "perKmMinor",
  "holdingPerWeekMinor",
  "services",
  "feeTables",
] as const;

function hasAmountsLeft(before: CostSettings, part: Partial<CostSettings>): boolean {
  const work = part.work === undefined && Object.values(before.work).some(({ costMinor }) => costMinor);
  return work || amounts.some((name) => part[name] === undefined);
}
