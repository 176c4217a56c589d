import { describe, expect, it } from "vitest";
import { type AnnotatedListing, readCorpus } from "./corpus.ts";
import { differencesOf, printTable, scoreReadings } from "./score.ts";

type Facts = AnnotatedListing["expect"];
const [sample] = readCorpus("tuning");
const silent = Object.fromEntries(Object.keys(sample!.expect.items[0]!).map((field) => [field, null]));
const item = (fields: object) => ({ ...silent, quantity: 1, faults: [], deniedFaults: [], ...fields });
const listing = (items: object[], fields: object = {}) =>
  ({ intent: null, asking: null, negotiable: null, postage: null, items, ...fields }) as Facts;
const tally = (expected: Facts, got: Facts) => {
  const { right, wrong, missed } = scoreReadings([{ expected, got }]).overall;
  return { right, wrong, missed };
};
const head = (fields: object) => item({ kind: "head", ...fields });
const money = { amountMinor: 2500, currency: "EUR" };

describe("scoreReadings", () => {
  it.each([
    ["a fact read right", head({ hand: "left" }), head({ hand: "left" }), 2, 0, 0],
    ["a fact missed", head({ hand: "left" }), head({}), 1, 0, 1],
    ["a fact that the words do not say", head({}), head({ hand: "left" }), 1, 1, 0],
    ["a fact read wrong, which is both", head({ hand: "left" }), head({ hand: "right" }), 1, 1, 1],
    ["money by amount", head({ price: money }), head({ price: { ...money, amountMinor: 2501 } }), 1, 1, 1],
    ["money by currency", head({ price: money }), head({ price: { ...money, currency: "GBP" } }), 1, 1, 1],
    ["one thing, which is not counted", head({ quantity: 1 }), head({ quantity: 1 }), 1, 0, 0],
    ["several things", head({ quantity: 2 }), head({ quantity: 1 }), 1, 0, 1],
    ["each fault", head({ faults: ["crack", "rust"] }), head({ faults: ["rust", "rattle"] }), 2, 1, 1],
    ["a fault denied for asserted", head({ faults: ["crack"] }), head({ deniedFaults: ["crack"] }), 1, 1, 1],
    ["a cover that is said to be absent", head({ cover: false }), head({ cover: false }), 2, 0, 0],
    [
      "a length within a hundredth of an inch",
      head({ length: { lengthIn: 44.49, basis: "playing" } }),
      head({ length: { lengthIn: 44.4882, basis: "playing" } }),
      2,
      0,
      0,
    ],
    [
      "a length on another basis",
      head({ length: { lengthIn: 44.5, basis: "playing" } }),
      head({ length: { lengthIn: 44.5, basis: "unstated" } }),
      1,
      1,
      1,
    ],
    [
      "a tip within a thousandth",
      head({ tip: { diameterIn: 0.335, form: null } }),
      head({ tip: { diameterIn: 0.3346, form: null } }),
      2,
      0,
      0,
    ],
    [
      "a tip of another form",
      head({ tip: { diameterIn: 0.355, form: "taper" } }),
      head({ tip: { diameterIn: 0.355, form: null } }),
      1,
      1,
      1,
    ],
  ])("counts %s", (_, expected, got, right, wrong, missed) =>
    expect(tally(listing([expected]), listing([got]))).toEqual({ right, wrong, missed }),
  );

  it("counts the facts of the listing itself", () => {
    const expected = listing([], { asking: money, postage: "extra", negotiable: false });
    const got = listing([], { asking: money, postage: { amountMinor: 400, currency: "EUR" } });
    expect(tally(expected, got)).toEqual({ right: 1, wrong: 1, missed: 2 });
  });

  it("pairs items whatever their order", () => {
    const items = [head({ clubNumber: "3" }), head({ clubNumber: "5" }), item({ kind: "grip" })];
    expect(tally(listing(items), listing(items.toReversed()))).toEqual({ right: 5, wrong: 0, missed: 0 });
  });

  it("pairs two of a kind before two that agree in other facts", () => {
    const expected = listing([head({ maker: "Orvane", hand: "left" })]);
    const got = listing([item({ kind: "club", maker: "Orvane", hand: "left" }), head({})]);
    expect(differencesOf(expected, got)).toContainEqual({ key: "hand", expected: "left", got: undefined });
  });

  it("counts an item that was not read as missed, and one that is not there as wrong", () => {
    const one = listing([head({ hand: "left" })]);
    expect(tally(one, listing([]))).toEqual({ right: 0, wrong: 0, missed: 2 });
    expect(tally(listing([]), one)).toEqual({ right: 0, wrong: 2, missed: 0 });
  });

  it("finds every annotation in full agreement with itself", () => {
    const same = readCorpus("tuning").map(({ expect: facts }) => ({ expected: facts, got: facts }));
    const { overall, fields } = scoreReadings(same);
    expect([overall, ...fields].filter(({ f1 }) => f1 !== 1)).toEqual([]);
  });

  it("works out precision, recall and F1 from the counts", () => {
    const expected = listing([head({ hand: "left", flex: "stiff", year: 2020 })]);
    const got = listing([head({ hand: "left", flex: "stiff", loftDeg: 9, maker: "Orvane" })]);
    const { overall } = scoreReadings([{ expected, got }]);
    expect(overall).toMatchObject({ instances: 4, precision: 3 / 5, recall: 3 / 4, f1: 6 / 9 });
  });
});

describe("printTable", () => {
  it("gives a line to each field and one to all", () => {
    const facts = listing([head({ hand: "left" })]);
    expect(printTable(scoreReadings([{ expected: facts, got: facts }]))).toMatch(
      /hand +1 .*\n.*kind.*\nall +2 /,
    );
  });
});
