import { expect, it } from "vitest";
import { readMoney } from "./read-money.ts";
import { squeezeWords } from "./words.ts";

const roles = (text: string) => readMoney(squeezeWords(text)).map(({ role, units }) => `${role} ${units}`);

it.each([
  ["Asking £45 ono", ["asking 45"]],
  ["£20 each or £35 both", ["each 20", "together 35"]],
  ["£20 each or £35 for the pair", ["each 20", "together 35"]],
  ["£10 a piece", ["each 10"]],
  ["€8 pro Stück", ["each 8"]],
  ["was £120 now £95", ["other 120", "asking 95"]],
  ["cost me £399 new, £95", ["other 399", "asking 95"]],
  ["RRP £300. £120", ["other 300", "asking 120"]],
  ["paid €300, want €120", ["other 300", "asking 120"]],
  ["£38 + £4.50 p&p", ["asking 38", "postage 4.5"]],
  ["£38, postage £4.50", ["asking 38", "postage 4.5"]],
  ["85 € VB, Versand 5,49 €", ["asking 85", "postage 5.49"]],
  ["90 €, envoi 4,20 €", ["asking 90", "postage 4.2"]],
  ["€30, can post for €6", ["asking 30", "postage 6"]],
  ["£80 posted", ["asking 80"]],
  ["bought in 2020 for £380. £95", ["other 380", "asking 95"]],
  ["Offers around £20", ["other 20"]],
  ["offers over £90", ["asking 90"]],
  ["starts at £0.99", ["asking 0.99"]],
  ["£25 the lot", ["together 25"]],
  ["70 € l'ensemble", ["together 70"]],
  ["40 ono", ["asking 40"]],
  ["£55 each, 100 for the pair", ["each 55", "together 100"]],
  ["postage a tenner, £50", ["postage 10", "asking 50"]],
  ["adapter available for €15 extra. €25", ["other 15", "asking 25"]],
  ["400 kr", ["asking 400"]],
  ["3 left, 10.5 degrees, 44 inches", []],
])("%j", (text, expected) => expect(roles(text)).toEqual(expected));

it.each([
  "€40 collected or €46 posted",
  "€46 posted or €40 if collected",
  "40 € abgeholt, 46 € inkl. Versand",
  "€40 pick up / €46 shipped",
])("%j is €40 with €6 for postage", (text) => {
  const found = readMoney(squeezeWords(text));
  expect(found.find(({ role }) => role === "asking")?.money?.amountMinor).toBe(4000);
  expect(found.find(({ role }) => role === "postage")?.money?.amountMinor).toBe(600);
});

it("gives a price without a currency that of the others, and no money where there is none", () => {
  expect(readMoney(squeezeWords("25 ono, p&p £4"))[0]?.money).toEqual({ amountMinor: 2500, currency: "GBP" });
  expect(readMoney(squeezeWords("25 ono"))[0]).toMatchObject({
    money: null,
    doubt: expect.stringContaining("currency"),
  });
});

it("takes a bare dollar for the one that is named in full", () => {
  expect(readMoney(squeezeWords("A$90 or $15 post")).map(({ money }) => money?.currency)).toEqual([
    "AUD",
    "AUD",
  ]);
});
