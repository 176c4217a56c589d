import { describe, expect, it } from "vitest";
import { readIronSets } from "./iron-sets.ts";
import { findLoftLists } from "./loft-lists.ts";
import { clubNumberIn, findNumberLists } from "./number-lists.ts";
import { readQuantity } from "./read-quantity.ts";
import { squeezeWords } from "./words.ts";

describe("findNumberLists", () => {
  const lists = (text: string) =>
    findNumberLists(text).map(({ numbers }) => numbers.map(({ value }) => value).join(" "));
  it.each([
    ["irons 5, 7 and 9", ["5 7 9"]],
    ["irons, heads only: 5, 7 and 9.", ["5 7 9"]],
    ["3 and 5 woods", ["3 5"]],
    ["hybrids 3 & 4", ["3 4"]],
    ["the 3, the 4 and the 5", ["3 4 5"]],
    ["irons 4-pw", []],
    ["iron 7", []],
  ])("%j", (text, expected) => expect(lists(text)).toEqual(expected));
});

describe("findLoftLists", () => {
  const lists = (text: string) =>
    findLoftLists(text).map(({ lofts }) => lofts.map(({ value }) => value).join(" "));
  it.each([
    ["52° and 58°", ["52 58"]],
    ["52°, 56° and 60°", ["52 56 60"]],
    ["(15 and 18)", ["15 18"]],
    ["10,5 and 12 grad", ["10.5 12"]],
    ["9°", []],
    ["40 and 44 inch", []],
  ])("%j", (text, expected) => expect(lists(text)).toEqual(expected));
});

describe("readIronSets", () => {
  it.each([
    ["4-PW", "4-PW"],
    ["5 to PW", "5-PW"],
    ["4-9+PW", "4-PW"],
    ["5 iron to pitching wedge", "5-PW"],
    ["3 thru SW", "3-SW"],
  ])("%j is %s", (text, set) =>
    expect(readIronSets(squeezeWords(text)).map(({ value }) => value)).toEqual([set]),
  );
});

describe("clubNumberIn", () => {
  it.each([
    ["3 wood", "3"],
    ["7i", "7"],
    ["sand wedge", "SW"],
    ["4-pw", null],
    ["driver", null],
  ])("%j has %j", (noun, number) => expect(clubNumberIn(noun)).toBe(number));
});

describe("readQuantity", () => {
  const quantity = (text: string, noun: string) => {
    const { plain } = squeezeWords(text);
    const start = plain.indexOf(noun);
    const phrase = { start, end: start + noun.length, plural: noun.endsWith("s") };
    return readQuantity(plain, phrase, 0, plain.length)?.value ?? null;
  };
  it.each([
    ["2x driver heads", "driver heads", 2],
    ["2 driver heads", "driver heads", 2],
    ["pair of wedges", "wedges", 2],
    ["grips x8", "grips", 8],
    ["6 no. grips", "grips", 6],
    ["job lot of 5 wood heads", "5 wood heads", 5],
    // What is in stock is not what is offered at the price.
    ["sleeves, 3 left", "sleeves", null],
    ["sleeves, 4 available", "sleeves", null],
    ["grips (6 available)", "grips", null],
    ["shafts: 4 x steel", "shafts", 4],
    ["box of 13 grips", "grips", 13],
    ["driver head", "driver head", null],
    ["10.5 heads", "heads", null],
    ["£40 heads", "heads", null],
  ])("%j", (text, noun, count) => expect(quantity(text, noun)).toBe(count));
});
