import { minorDigits } from "@ferrule/core";

export const currencies = ["EUR", "GBP", "USD", "AUD", "CAD"] as const;
export type Currency = (typeof currencies)[number];

/** "€28.00"; money out carries a true minus: "−€28.00". */
export function moneyText(amountMinor: number, currency: string): string {
  return written(amountMinor, currency, minorDigits(currency));
}

/** As `moneyText`, without the minor units where they are none: "€28". */
export function roundMoneyText(amountMinor: number, currency: string): string {
  return moneyText(amountMinor, currency).replace(/\.0+$/, "");
}

/** "€45 (€30–€61)": whole units where the interval is wider than cents deserve, else to the minor unit. */
export function moneyIntervalText(
  { valueMinor, lowMinor, highMinor }: { valueMinor: number; lowMinor: number; highMinor: number },
  currency: string,
): string {
  const digits = minorDigits(currency);
  const isWide = highMinor - lowMinor >= 10 * 10 ** digits;
  const text = (amountMinor: number) => written(amountMinor, currency, isWide ? 0 : digits);
  const [low, high] = [text(lowMinor), text(highMinor)];
  if (low === high) return text(valueMinor);
  return `${text(valueMinor)} (${low}${low.startsWith("−") || high.startsWith("−") ? " to " : "–"}${high})`;
}

function written(amountMinor: number, currency: string, decimals: number): string {
  const text = new Intl.NumberFormat("en-GB", {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(Math.abs(amountMinor) / 10 ** minorDigits(currency));
  return amountMinor < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/**
 * Whole minor units from what somebody typed, such as "28", "28,50" or "€ 28.50"; `undefined` when it is no amount, or has more
 * decimals than the currency.
 */
export function parseMoney(text: string, currency = "EUR"): number | undefined {
  const match = /^[€£$]?\s*(\d{1,9})(?:[.,](\d{1,3}))?\s*[€£$]?$/.exec(text.trim());
  const digits = minorDigits(currency);
  const [, whole = "0", rest = ""] = match ?? [];
  if (!match || rest.length > digits) return undefined;
  return Number(whole) * 10 ** digits + Number(rest.padEnd(digits, "0"));
}

/** An amount as it is typed into a form: "28.50". */
export function moneyInput(amountMinor: number, currency = "EUR"): string {
  const digits = minorDigits(currency);
  return (amountMinor / 10 ** digits).toFixed(digits);
}
