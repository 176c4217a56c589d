import { type Money, minorDigits } from "@ferrule/core";

/** "41.71 EUR", as it can also be typed; what goes out has a minus. */
export function moneyText({ amountMinor, currency }: Money): string {
  return `${amountText(amountMinor, currency)} ${currency}`;
}

/** "41.71": whole minor units with their decimals, exactly. */
export function amountText(amountMinor: number, currency: string): string {
  const decimals = minorDigits(currency);
  const digits = String(Math.abs(Math.round(amountMinor))).padStart(decimals + 1, "0");
  const whole = digits.slice(0, digits.length - decimals);
  const text = decimals === 0 ? whole : `${whole}.${digits.slice(-decimals)}`;
  return Math.round(amountMinor) < 0 ? `-${text}` : text;
}
