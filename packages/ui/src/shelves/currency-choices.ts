import type { CostSettings } from "@ferrule/core";
import { currencies } from "../format/money.ts";

/** The currencies an amount can be in: the bench's own first, then those that have a rate, then the common ones. */
export function currencyChoices(
  { currency, rates }: CostSettings,
  used?: string,
): Readonly<Record<string, string>> {
  const all = [currency, ...Object.keys(rates), ...currencies, ...(used ? [used] : [])];
  return Object.fromEntries(all.map((code) => [code, code]));
}
