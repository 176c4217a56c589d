import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FactReader } from "./mention.ts";
import { readAdapter } from "./read-adapter.ts";
import { readClubType } from "./read-club-type.ts";
import { readExtras } from "./read-extras.ts";
import { readFaults } from "./read-faults.ts";
import { readFlex } from "./read-flex.ts";
import { readHand } from "./read-hand.ts";
import { readLength } from "./read-length.ts";
import { readLoft } from "./read-loft.ts";
import { readShaftMass } from "./read-shaft-mass.ts";
import { readShaftMaterial } from "./read-shaft-material.ts";
import { readTip } from "./read-tip.ts";
import { readYear } from "./read-year.ts";
import { prepareWords } from "./words.ts";

const readers: readonly FactReader[] = [
  readAdapter,
  readClubType,
  readExtras,
  readFaults,
  readFlex,
  readHand,
  readLength,
  readLoft,
  readShaftMass,
  readShaftMaterial,
  readTip,
  readYear,
];

const textLength = 20_000;
const repeated = [
  " ",
  "1",
  "1 ",
  "1.",
  "44.5 ",
  "44 1/2",
  "44 and a half ",
  "5,",
  "5 and ",
  "2019 ",
  "a",
  "a ",
  "no ",
  "no, ",
  "rust ",
  "no rust, ",
  "stiff ",
  "s",
  "s ",
  "r + ",
  "flex ",
  "flex: ",
  "60g ",
  "60 s ",
  "tip ",
  "tip (",
  ".335 ",
  "335 tip ",
  "parallel ",
  "loft ",
  "loft: is of ",
  "bent about ",
  "9-12 ",
  "with ",
  "with a b c d ",
  "inc.",
  "w/",
  "adapter ",
  "no adapter or ",
  "sleeve is is ",
  "grip ",
  "grip is a bit ",
  "grip has been very ",
  "needs a new re",
  "if it there is ",
  "scratch on ",
  "scratch, or ",
  "dent on the ",
  "cover ",
  "headcover - ",
  "right ",
  "left hand ",
  "not a left ",
  "wedge 56, ",
  "56/",
  "irons 5, ",
  "4-",
  "4 - p ",
  "hybrid ",
  "wood ",
  "3 wood ",
  "forty five ",
  "twenty",
  "length is ",
  "45 in ",
  "1130mm",
  "\n",
  "(",
  "-",
  "- ",
  "°",
  "½",
  "'",
  '"',
  "é",
  "🔥",
  "graphite ",
  "steel fibre ",
  "regular + ",
  "x - ",
  "shaft - s ",
  "model: ",
  "a 2019 b ",
  "x x ",
  "plays at to ",
];

/** What a text without facts may take, and what each fact that is found may take. A quadratic pattern takes seconds. */
const textMs = 20;
const factMs = 0.025;

/** By how much the best of three readings takes too long, in ms: the machine may be busy with something else. */
function overMs(reader: FactReader, unit: string): number {
  const words = prepareWords(unit.repeat(Math.ceil(textLength / unit.length)).slice(0, textLength));
  const facts = reader(words).length;
  return Math.min(...[1, 2, 3].map(() => timeOf(() => reader(words)))) - textMs - factMs * facts;
}

describe("every small reader", () => {
  it.each(readers.map((reader) => ({ name: reader.name, reader })))(
    "$name reads 20,000 characters of any one thing repeated in step with their number",
    ({ reader }) => expect(repeated.filter((unit) => overMs(reader, unit) > 0)).toEqual([]),
  );

  it("never throws, and marks words that lie inside the text", () => {
    const pieces = fc.array(fc.oneof(fc.constantFrom(...repeated), fc.string({ unit: "binary" })), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(pieces, (parts) => {
        const words = prepareWords(parts.join(""));
        for (const { start, end } of readers.flatMap((reader) => reader(words))) {
          expect(start).toBeGreaterThanOrEqual(0);
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(words.text.length);
        }
      }),
    );
  });
});

function timeOf(work: () => unknown): number {
  const startedMs = performance.now();
  work();
  return performance.now() - startedMs;
}
