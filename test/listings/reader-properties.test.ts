import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Listing, listingSchema, readListing, readyCatalogue } from "../../packages/core/src/index.ts";
import { readCatalogue, readCorpus, tuningNames } from "./corpus.ts";
import { differencesOf } from "./score.ts";

const catalogue = readyCatalogue(readCatalogue());
const texts = tuningNames.flatMap(readCorpus).map(({ text }) => text);
const read = (text: string) => readListing(text, catalogue);

/** Words that sellers use, and anything at all between them. */
const anyWords = fc
  .array(
    fc.oneof(
      fc.string({ unit: "binary", maxLength: 8 }),
      fc.constantFrom(...texts.flatMap((text) => text.split(/\s+/u))),
      fc.constantFrom("£", "€", "½", '"', "0.335", "10.5", "4-PW", "x3", "\n", "1.250,00", "😀", "º"),
    ),
    { maxLength: 40 },
  )
  .map((pieces) => pieces.join(" "));

function expectWellFormed(text: string, listing: Listing): void {
  expect(listingSchema.parse(listing)).toEqual(listing);
  for (const { start, end, words } of listing.spans) {
    expect(start).toBeLessThan(end);
    expect(text.slice(start, end)).toBe(words);
    expect(end).toBeLessThanOrEqual(text.length);
  }
  for (const { start, end } of listing.doubts) {
    expect(start === null).toBe(end === null);
    if (start !== null && end !== null) expect(0 <= start && start <= end && end <= text.length).toBe(true);
  }
}

const factKeys = (listing: Listing): string[] => [
  ...(["intent", "asking", "negotiable", "postage"] as const).filter((field) => listing[field] !== null),
  ...listing.items.flatMap(({ faults, deniedFaults }, at) =>
    [
      ...faults.map((fault) => `faults.${fault}`),
      ...deniedFaults.map((fault) => `deniedFaults.${fault}`),
    ].map((fault) => `items.${at}.${fault}`),
  ),
];

describe("reading any words", () => {
  it("gives a listing whose spans and doubts lie inside them, and never throws", () => {
    fc.assert(
      fc.property(anyWords, (text) => expectWellFormed(text, read(text))),
      { numRuns: 300 },
    );
  });

  it("says of each fault, and of each fact of the listing, where it stands", () => {
    for (const text of texts) {
      const listing = read(text);
      expectWellFormed(text, listing);
      const spanned = new Set(listing.spans.map(({ field }) => field));
      const unspanned = factKeys(listing).filter((key) => !spanned.has(key));
      // A plain description of a thing offered is a sale without a word that says so.
      expect(
        unspanned.filter((key) => key !== "intent"),
        text,
      ).toEqual([]);
    }
  });

  it("gives the same listing every time", () => {
    for (const text of texts) expect(read(text)).toEqual(read(text));
  });
});

describe("reading the same words written otherwise", () => {
  const sameFacts = (change: (text: string) => string) =>
    texts
      .map((text) => ({ text, differences: differencesOf(read(text), read(change(text))) }))
      .filter(({ differences }) => differences.length > 0);

  it("is the same with blanks added", () => {
    expect(sameFacts((text) => `\n  ${text.replaceAll(" ", "  ").replaceAll("\n", " \n")} \n`)).toEqual([]);
  });

  it("is the same in capitals", () => {
    expect(sameFacts((text) => text.toUpperCase())).toEqual([]);
  });

  it("is the same in small letters", () => {
    expect(sameFacts((text) => text.toLowerCase())).toEqual([]);
  });
});
