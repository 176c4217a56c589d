import { describe, expect, it } from "vitest";
import type { Given } from "./command.ts";
import { moneyOption } from "./money-option.ts";
import { moneyText } from "./money-text.ts";
import { WrongUse } from "./wrong-use.ts";

/** Decimals of each currency: ISO 4217, table A.1, column "minor unit". */
const rows: readonly (readonly [number, string, string])[] = [
  [4171, "EUR", "41.71 EUR"],
  [5, "GBP", "0.05 GBP"],
  [-350, "USD", "-3.50 USD"],
  [0, "EUR", "0.00 EUR"],
  [1200, "JPY", "1200 JPY"],
  [1234, "KWD", "1.234 KWD"],
];

describe("money in words", () => {
  it.each(rows)("%d minor units of %s are %s", (amountMinor, currency, text) => {
    expect(moneyText({ amountMinor, currency })).toBe(text);
  });
});

const given = (budget: string | undefined): Given => ({
  words: [],
  isOn: () => false,
  value: () => budget,
  values: () => [],
});

describe("an amount as an option", () => {
  it.each([
    ["50", "EUR", 5000],
    ["50.2", "EUR", 5020],
    ["0.29", "EUR", 29],
    ["1200", "JPY", 1200],
    ["1.234", "KWD", 1234],
  ])("%s of %s is %d minor units", (text, currency, amountMinor) => {
    expect(moneyOption(given(text), "budget", currency)).toBe(amountMinor);
  });

  it.each([
    ["fifty", "EUR"],
    ["50,00", "EUR"],
    ["1.005", "EUR"],
    ["1.5", "JPY"],
    ["-5", "EUR"],
    ["", "EUR"],
    ["99999999999", "EUR"],
  ])("%j of %s is refused with what was expected", (text, currency) => {
    expect(() => moneyOption(given(text), "budget", currency)).toThrow(WrongUse);
    expect(() => moneyOption(given(text), "budget", currency)).toThrow(`expected an amount of ${currency}`);
  });

  it("that was not given is nothing", () => {
    expect(moneyOption(given(undefined), "budget", "EUR")).toBeUndefined();
  });
});
