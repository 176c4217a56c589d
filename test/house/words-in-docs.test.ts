import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { verdicts } from "../../packages/core/src/findings/verdict.ts";
import { itemKinds } from "../../packages/core/src/listing/catalogue.ts";
import {
  doubtSchema,
  intents,
  listingItemSchema,
  listingSchema,
  spanSchema,
} from "../../packages/core/src/listing/listing.ts";
import { faultNames } from "../../packages/core/src/parts/fault.ts";
import { skills } from "../../packages/core/src/parts/goal.ts";
import { clubTypes, flexes, lengthBases } from "../../packages/core/src/parts/part.ts";
import { dealVerdicts, ways } from "../../packages/core/src/worth/deal.ts";
import { entryTypes } from "../../packages/core/src/worth/entry.ts";
import { conditions } from "../../packages/core/src/worth/evidence.ts";
import { outcomes } from "../../packages/core/src/worth/sighting.ts";
import {
  closenessWords,
  dealVerdictWords,
  outcomeWords,
  wayWords,
} from "../../packages/ui/src/words/deal-words.ts";
import { entryWords } from "../../packages/ui/src/words/entry-words.ts";
import { intentWords } from "../../packages/ui/src/words/item-words.ts";
import { verdictWords } from "../../packages/ui/src/words/verdict-words.ts";

const root = new URL("../../", import.meta.url);
const text = (path: string) => readFileSync(new URL(path, root), "utf8");
/** Lines run on as they are read, so that words are found wherever a line ends. */
const prose = (path: string) => text(path).replace(/\s+/g, " ");

const missing = (names: readonly string[], page: string, mark: string) =>
  names.filter((name) => !page.includes(`${mark}${name}${mark}`));

/** The names that the first cells of a page's tables hold. */
const firstCells = (page: string) =>
  [...page.matchAll(/^\| ([^|]*) \|/gm)].flatMap(([, cell = ""]) =>
    [...cell.matchAll(/`([^`]+)`/g)].map(([, name = ""]) => name),
  );

describe("docs/vocabulary.md", () => {
  const page = prose("docs/vocabulary.md");

  it.each<[string, readonly string[]]>([
    ["field of a listing", Object.keys(listingSchema.shape)],
    ["field of an item", Object.keys(listingItemSchema.shape)],
    ["part of a span or a doubt", [...Object.keys(spanSchema.shape), ...Object.keys(doubtSchema.shape)]],
    ["kind of item", itemKinds],
    ["intent", intents],
    ["word of postage", ["included", "extra", "collection-only"]],
    ["type of club", clubTypes],
    ["flex", flexes],
    ["basis of a length", lengthBases],
    ["fault", faultNames],
    ["skill", skills],
    ["verdict on a club", verdicts],
    ["verdict on a listing", dealVerdicts],
    ["way", ways],
    ["outcome of a sighting", outcomes],
    ["condition", conditions],
    ["closeness", Object.keys(closenessWords)],
    ["type of entry", entryTypes],
  ])("says what each %s means", (_what, names) => {
    expect(names.length).toBeGreaterThan(1);
    expect(missing(names, page, "`")).toEqual([]);
  });

  it("has the words by which the page says them", () => {
    const said = [verdictWords, dealVerdictWords, wayWords, outcomeWords, entryWords, intentWords];
    expect(missing(said.flatMap(Object.values), page, "*")).toEqual([]);
  });
});

describe("docs/reading.md", () => {
  it("has a row for every field that is read, and for no other", () => {
    const fields = [...Object.keys(listingSchema.shape), ...Object.keys(listingItemSchema.shape)];
    const apart = ["spans", "doubts"];
    expect(firstCells(text("docs/reading.md")).sort()).toEqual(
      fields.filter((field) => !apart.includes(field)).sort(),
    );
  });
});

describe("docs/worth.md", () => {
  const page = text("docs/worth.md");
  const source = text("packages/core/src/worth/deal-verdict.ts");
  const key = ([, one = "", other = ""]: readonly string[]) => `${one} ${other}`;

  it("has a row for every reason of a verdict, with that verdict, and for no other", () => {
    const given = [...source.matchAll(/because\(\s*"([a-z-]+)",\s*"([a-z-]+)"/g)];
    const calls = [...source.matchAll(/because\(/g)].length;
    expect(given).toHaveLength(calls);
    const rows = [...page.matchAll(/^\| `([a-z-]+)` \| `([a-z-]+)` \|/gm)].map(
      ([row, code = "", verdict = ""]) => key([row, verdict, code]),
    );
    expect(new Set(rows)).toEqual(new Set(given.map(key)));
  });

  it("has a row for every way and every closeness", () => {
    const cells = firstCells(page);
    const names = [...ways, ...Object.keys(closenessWords)];
    expect(names.filter((name) => !cells.includes(name))).toEqual([]);
  });
});
