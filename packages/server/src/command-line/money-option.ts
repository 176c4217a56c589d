import { minorDigits } from "@ferrule/core";
import { minorText } from "../transfer/decimal-money.ts";
import type { Given } from "./command.ts";
import { WrongUse } from "./wrong-use.ts";

const mostMinor = 1_000_000_000;

/** An amount such as 50 or 50.25 in whole minor units of the bench's currency; nothing where the option was not given. */
export function moneyOption(given: Given, option: string, currency: string): number | undefined {
  const text = given.value(option);
  if (text === undefined) return undefined;
  const digits = minorDigits(currency);
  const amountMinor = Number(minorText(text, digits) ?? Number.NaN);
  if (amountMinor >= 0 && amountMinor <= mostMinor) return amountMinor;
  const decimals = digits === 0 ? "without decimals" : `with at most ${digits} decimals`;
  throw new WrongUse(
    `--${option} is ${JSON.stringify(text)}, expected an amount of ${currency} ${decimals}, such as 50`,
  );
}
