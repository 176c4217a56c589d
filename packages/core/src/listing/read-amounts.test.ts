import { expect, it } from "vitest";
import { minorOf, numberOf, readAmounts } from "./read-amounts.ts";
import { squeezeWords } from "./words.ts";

const amounts = (text: string) =>
  readAmounts(squeezeWords(text))
    .filter(({ currency, slang }) => currency !== null || slang)
    .map(({ units, currency }) => `${units} ${currency}`);

it.each([
  ["£40", "40 GBP"],
  ["40 quid", "40 GBP"],
  ["40GBP", "40 GBP"],
  ["€45,50", "45.5 EUR"],
  ["45,50 €", "45.5 EUR"],
  ["1.250,00 €", "1250 EUR"],
  ["$1,250.00", "1250 USD"],
  ["£1,250", "1250 GBP"],
  ["£1.2k", "1200 GBP"],
  ["A$60", "60 AUD"],
  ["60 AUD", "60 AUD"],
  ["C$35", "35 CAD"],
  ["35 $ C", "35 CAD"],
  ["NZ$70", "70 NZD"],
  ["60 bucks", "60 USD"],
  ["50,- €", "50 EUR"],
  ["CHF 80", "80 CHF"],
  ["900 kr (SEK)", "900 SEK"],
  ["a tenner", "10 null"],
])("%j is a sum of money", (text, amount) => expect(amounts(text)).toEqual([amount]));

it.each(["call 087 105 2021", "10.5 degrees", "45 inches", "2021 model", "5 wood"])("%j is none", (text) =>
  expect(amounts(text)).toEqual([]),
);

it("reads a comma and a dot each as what it is", () => {
  expect(["12.50", "12,5", "1,250", "1.250", "1.250,5", "1'250"].map(numberOf)).toEqual([
    12.5, 12.5, 1250, 1250, 1250.5, 1250,
  ]);
});

it("counts whole minor units, as many as the currency has", () => {
  // ISO 4217: the yen has no minor unit.
  expect([minorOf(12.5, "GBP"), minorOf(0.99, "EUR"), minorOf(500, "JPY")]).toEqual([1250, 99, 500]);
});
