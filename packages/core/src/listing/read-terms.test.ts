import { describe, expect, it } from "vitest";
import { readIntent } from "./read-intent.ts";
import { readMoney } from "./read-money.ts";
import { readNegotiable } from "./read-negotiable.ts";
import { readPostage } from "./read-postage.ts";
import { squeezeWords } from "./words.ts";

describe("readIntent", () => {
  it.each([
    ["WTB driver head", "wanted"],
    ["Wanted: driver head", "wanted"],
    ["ISO Tarnlock adapter", "wanted"],
    ["Looking for a left handed 7 iron", "wanted"],
    ["Suche Driver", "wanted"],
    ["Busco madera 3", "wanted"],
    ["Swap my driver for a fairway", "swap"],
    ["Trade: hybrid for iron", "swap"],
    ["PX my driver", "swap"],
    ["For sale: driver", "sell"],
    ["Verkaufe Driver", "sell"],
    ["Looking for 60 quid", null],
    ["Looking for around 45 euros", null],
    ["Looking for 4 iron shafts", "wanted"],
    ["Evening all, after a Brackwater adapter", "wanted"],
    ["Hi folks, looking for a 3 wood", "wanted"],
    ["driver, £18 or swap for balls", "sell"],
    ["No swaps. £20", "sell"],
    ["driver, right hand", null],
  ])("%j is %j", (text, intent) => {
    const words = squeezeWords(text);
    expect(readIntent(words, readMoney(words)[0]?.start ?? null)?.value ?? null).toBe(intent);
  });
});

describe("readNegotiable", () => {
  it.each([
    ["£40 ono", true],
    ["£40 OBO", true],
    ["€40 VB", true],
    ["40 € à débattre", true],
    ["make me an offer", true],
    ["open to offers", true],
    ["offers over £50", true],
    ["price neg", true],
    ["no offers", false],
    ["price is firm", false],
    ["40 € Fixpreis", false],
    ["12 € ferme", false],
    ["I wouldn't be offended by a near offer", true],
    ["£40 firm", false],
    ["Festpreis 40 €", false],
    ["prix ferme", false],
    ["no lowballs", false],
    ["right hand, £40", null],
  ])("%j is %j", (text, negotiable) =>
    expect(readNegotiable(squeezeWords(text))?.value ?? null).toBe(negotiable),
  );
});

describe("readPostage", () => {
  it.each([
    ["£40 posted", "included"],
    ["£40 inc p&p", "included"],
    ["free postage", "included"],
    ["free postage or collect", "included"],
    ["25 € inkl. Versand", "included"],
    ["port compris", "included"],
    ["envío incluido", "included"],
    ["verzending inbegrepen", "included"],
    ["£40 + p&p", "extra"],
    ["plus postage", "extra"],
    ["postage at cost", "extra"],
    ["can post at buyer's expense", "extra"],
    ["shipping not included", "extra"],
    ["frais de port en sus", "extra"],
    ["zzgl. Versand", "extra"],
    ["collection only", "collection-only"],
    ["local pickup only", "collection-only"],
    ["no postage", "collection-only"],
    ["nur Abholung", "collection-only"],
    ["kun henting", "collection-only"],
    ["60 €, Abholung", "collection-only"],
    ["Abholung oder Versand", null],
    ["Prices include postage.", "included"],
    ["cash on collection", null],
    ["post or collect", null],
    ["right hand", null],
  ])("%j is %j", (text, postage) => expect(readPostage(squeezeWords(text), [])?.value ?? null).toBe(postage));

  it("lets an amount win over a word", () => {
    const words = squeezeWords("£40, collection or £6 postage");
    expect(readPostage(words, readMoney(words))?.value).toEqual({ amountMinor: 600, currency: "GBP" });
  });
});
