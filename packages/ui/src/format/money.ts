export const currencies = ["EUR", "GBP", "USD"] as const;
export type Currency = (typeof currencies)[number];

/** "€28.00". */
export function moneyText(amountMinor: number, currency: string): string {
  return new Intl.NumberFormat("en-GB", {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
  }).format(amountMinor / 100);
}

/** Whole minor units from what somebody typed, such as "28", "28.50" or "€ 28,50"; `undefined` when it is no amount. */
export function parseMoney(text: string): number | undefined {
  const match = /^[€£$]?\s*(\d+)(?:[.,](\d{1,2}))?\s*[€£$]?$/.exec(text.trim());
  if (!match) return undefined;
  const [, whole = "0", rest = ""] = match;
  return Number(whole) * 100 + Number(rest.padEnd(2, "0"));
}

/** An amount as it is typed into a form: "28.50". */
export function moneyInput(amountMinor: number): string {
  return (amountMinor / 100).toFixed(2);
}
