import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewModels, fewReady } from "./catalogue.test-kit.ts";
import { type Listing, listingSchema } from "./listing.ts";
import { readListing } from "./read-listing.ts";

const valuesOf = ({ spans: _, doubts: __, ...values }: Listing) => values;
const read = (text: string) => readListing(text, fewReady);

/** What is said of each item, in a line. */
const items = (text: string) =>
  read(text).items.map((item) =>
    Object.entries({ ...item, price: item.price?.amountMinor ?? null })
      .filter(
        ([field, value]) =>
          value !== null &&
          !(Array.isArray(value) && value.length === 0) &&
          !(field === "quantity" && value === 1),
      )
      .filter(([field]) => !["maker", "model"].includes(field))
      .map(([field, value]) =>
        typeof value === "object" ? `${field} ${JSON.stringify(value)}` : `${field} ${value}`,
      )
      .join(", "),
  );

describe("what a reviewer found misread", () => {
  it.each([
    "Not a Northmoor Ombrel, just a copy. Driver RH £20",
    "fake Northmoor Ombrel driver £20",
    "replica of the Northmoor Ombrel driver head RH £20",
    "Northmoor Ombrel driver, £20. It's a copy but plays well",
    "Ombrel clone driver £20",
  ])("leaves out maker and model of a copy, with a doubt: %j", (text) => {
    const { items, doubts } = read(text);
    expect(items.map(({ maker, model, modelId }) => [maker, model, modelId])).toEqual([[null, null, null]]);
    expect(doubts.map(({ field }) => field)).toContain("items.0.model");
  });

  it.each([
    "Northmoor Ombrel driver, genuine, not a fake",
    "Not a fake Northmoor Ombrel driver",
    "Northmoor Ombrel driver with a copy of the receipt",
  ])("keeps maker and model where a copy is denied: %j", (text) =>
    expect(read(text).items[0]?.modelId).toBe("ombrel-driver"),
  );

  it.each([
    ["Irons 4,5,6,7,8,9,PW regular €140", ["4", "5", "6", "7", "8", "9", "PW"]],
    ["5,6,7,8,9,PW irons", ["5", "6", "7", "8", "9", "PW"]],
    ["Irons: 5 6 7 8 9 PW stiff", ["5", "6", "7", "8", "9", "PW"]],
  ])("takes a PW among irons for an iron: %j", (text, numbers) =>
    expect(read(text).items.map(({ clubType, clubNumber }) => `${clubType} ${clubNumber}`)).toEqual(
      numbers.map((number) => `iron ${number}`),
    ),
  );

  it("asks the price of all where each could be had apart", () => {
    const { asking, items } = read("Irons 5,6,7,8,9,PW,SW €140 right hand, will split at €25 each");
    expect(asking?.amountMinor).toBe(14000);
    expect(items.map(({ price }) => price?.amountMinor)).toEqual(Array(7).fill(2500));
  });

  it.each([
    ["3 drivers heads, 2 fairway heads", ["driver x3", "fairway x2"]],
    ["2 hybrid heads RH €50", ["hybrid x2"]],
    ["3 Wood head, 2 hybrids heads (3h and 4h)", ["fairway 3 x1", "hybrid 3 x1", "hybrid 4 x1"]],
    ["2 x Tolverne driver heads RH", ["driver x2"]],
    ["8 unbranded driver heads", ["driver x8"]],
    ["Fairwayholz 3 RH", ["fairway 3 x1"]],
  ])("counts %j", (text, counted) =>
    expect(
      read(text).items.map(({ clubType, clubNumber, quantity }) =>
        [clubType, clubNumber, `x${quantity}`].filter((word) => word !== null).join(" "),
      ),
    ).toEqual(counted),
  );

  it.each([
    ["Ombrel driver, not sure if reg or stiff", "flex"],
    ["Ombrel driver, 9.5 or 10.5 I think", "loftDeg"],
  ] as const)("leaves open what %j leaves open, with a doubt", (text, field) => {
    const { items, doubts } = read(text);
    expect(items[0]?.[field]).toBeNull();
    expect(doubts.map((doubt) => doubt.field)).toContain(`items.0.${field}`);
  });

  it.each([
    ["2 driver heads, one right handed, one left handed", ["right ", "left "]],
    ["Driver heads: one RH 9°, one LH 10.5°", ["right 9", "left 10.5"]],
    ["Wedges, RH: 52° - £25, 56° - £20", ["right 52", "right 56"]],
  ])("tells things apart: %j", (text, told) =>
    expect(read(text).items.map(({ hand, loftDeg }) => `${hand} ${loftDeg ?? ""}`)).toEqual(told),
  );

  it("never adds prices in two currencies", () => {
    const { asking, doubts } = read("Driver head £40 and shaft €20");
    expect(asking).toBeNull();
    expect(doubts.map(({ field }) => field)).toContain("asking");
  });

  it("takes no crowns of no said country for a price", () => {
    const { asking, doubts } = read("Ombrel driver 400 kr");
    expect(asking).toBeNull();
    expect(doubts.map(({ field }) => field)).toContain("asking");
  });

  it("reads what comes with a thing before the thing itself", () =>
    expect(read("Comes without cover but with wrench. Fenwrack driver").items).toMatchObject([
      { kind: "club", modelId: "fenwrack-driver", cover: false, wrench: true },
    ]));

  it("takes a family before a head for what the head fits", () =>
    expect(read("Pellowick Tarnlock hybrid head").items).toMatchObject([
      { kind: "head", maker: "Pellowick", clubType: "hybrid", adapterFamily: "Tarnlock" },
    ]));
});

describe("readListing", () => {
  it.each([
    [
      "Northmoor Ombrel driver head only 10.5 RH £45",
      ["kind head, modelId ombrel-driver, clubType driver, loftDeg 10.5, hand right"],
    ],
    ["Driver, no shaft, RH", ["kind head, clubType driver, hand right"]],
    [
      "Fenwrack driver, fitted with Reedlace 60 stiff, cover but no tool",
      ["kind club, modelId fenwrack-driver, clubType driver, flex stiff, cover true, wrench false"],
    ],
    [
      "Reedlace 60 S with Tarnlock adapter",
      ["kind shaft, modelId reedlace-60, flex stiff, adapter fitted, adapterFamily Tarnlock"],
    ],
    ["Adapter to suit Kestrelyn Fenwrack drivers, RH", ["kind adapter, hand right"]],
    ["Reedlace 60 shaft pulled from my Fenwrack driver", ["kind shaft, modelId reedlace-60"]],
    [
      "Lapwick irons, heads only: 5 and 7, all RH, £10 each",
      [
        "kind head, modelId lapwick-irons, clubType iron, clubNumber 5, hand right, price 1000",
        "kind head, modelId lapwick-irons, clubType iron, clubNumber 7, hand right, price 1000",
      ],
    ],
    ["Lapwick irons 4-PW", ["kind club, modelId lapwick-irons, clubType iron, clubNumber 4-PW"]],
    ["job lot of 5 wood heads", ["kind head, quantity 5, clubType fairway"]],
    [
      "Two driver heads, one Ombrel RH, one Fenwrack LH",
      [
        "kind head, modelId ombrel-driver, clubType driver, hand right",
        "kind head, modelId fenwrack-driver, clubType driver, hand left",
      ],
    ],
    [
      "3 Tarnlock adapters and 10 Knarl 58 grips",
      [
        "kind adapter, quantity 3, modelId tarnlock, adapterFamily Tarnlock",
        "kind grip, quantity 10, modelId knarl-58",
      ],
    ],
    ["Ombrel headcover", ["kind cover, modelId ombrel-cover"]],
    ["covers, copper coloured", ["kind cover"]],
    ["Copper wedge", ["kind club, modelId copper-wedge, clubType wedge"]],
    [
      "1) Fenwrack driver £60\n2) Knarl 58 grip £3",
      [
        "kind club, modelId fenwrack-driver, clubType driver, price 6000",
        "kind grip, modelId knarl-58, price 300",
      ],
    ],
    [
      "Wedges 52° and 58°, RH",
      [
        "kind club, clubType wedge, loftDeg 52, hand right",
        "kind club, clubType wedge, loftDeg 58, hand right",
      ],
    ],
    [
      "3 wood and 5 wood heads",
      ["kind head, clubType fairway, clubNumber 3", "kind head, clubType fairway, clubNumber 5"],
    ],
    ["nothing of the kind", []],
  ])("%j", (text, expected) => expect(items(text)).toEqual(expected));

  it("leaves the model open where the words do not tell several apart, and says so", () => {
    const {
      items: [item],
      doubts,
    } = read("Northmoor Ombrel head RH");
    expect(item).toMatchObject({ maker: "Northmoor", model: null, modelId: null });
    expect(doubts.map(({ text }) => text).join()).toMatch(/Ombrel.*several models/u);
  });

  it.each([
    ["2 x Reedlace 60 shafts, £20 each", 4000, [2000]],
    ["2 x Reedlace 60 shafts, £20 each or £35 both", 3500, [2000]],
    ["Ombrel driver £50, Fenwrack driver £40", 9000, [5000, 4000]],
    ["ten Knarl 58 grips £15", 1500, [null]],
    ["Fenwrack driver, was £120 now £95", 9500, [null]],
    ["Wanted: Fenwrack driver, will pay £40", null, [null]],
    ["Fenwrack driver 40 ono", null, [null]],
  ])("%j asks %j for the whole", (text, asking, prices) => {
    const listing = read(text);
    expect(listing.asking?.amountMinor ?? null).toBe(asking);
    expect(listing.items.map(({ price }) => price?.amountMinor ?? null)).toEqual(prices);
  });

  it("says when a price has no currency, and when a text is too long to be read whole", () => {
    expect(read("Fenwrack driver 40 ono").doubts.map(({ field }) => field)).toEqual(["asking"]);
    expect(read(`Fenwrack driver ${"x ".repeat(5000)}`).doubts.at(-1)?.text).toMatch(
      /longer than any listing/u,
    );
  });

  it("takes a catalogue as it is stored, too", () => {
    expect(readListing("Fenwrack driver", fewModels)).toEqual(read("Fenwrack driver"));
  });
});

/** Words as listings are made of, for texts that no person wrote. */
const scraps = [
  "Northmoor",
  "Ombrel",
  "Fenwrack 10",
  "driver",
  "head",
  "heads",
  "shaft",
  "Reedlace 60",
  "S",
  "RH",
  "left handed",
  "10.5",
  "9°",
  '45"',
  "and",
  "with",
  "no",
  "for",
  "£40",
  "each",
  "both",
  "+ p&p",
  ",",
  ".",
  "\n",
  "2 x",
  "pair of",
  "3 wood",
  "irons 4-PW",
  "cover",
  "wrench",
  "adapter",
  "Tarnlock",
  "sky mark",
  "dents",
  "ono",
  "€1.250,00",
  "swap",
  "wanted",
  "(",
  ")",
  "1)",
  "🔥",
  "stiff",
  "60g",
];
const listingText = fc.array(fc.constantFrom(...scraps), { maxLength: 40 }).map((words) => words.join(" "));

describe("any reading", () => {
  it("never throws, and its spans are words of the text", () => {
    const text = fc.oneof(listingText, fc.string({ unit: "binary", maxLength: 300 }));
    fc.assert(
      fc.property(text, (words) => {
        const listing = readListing(words, fewReady);
        expect(listingSchema.safeParse(listing).error).toBeUndefined();
        for (const span of listing.spans) expect(words.slice(span.start, span.end)).toBe(span.words);
        for (const { start, end } of listing.doubts) expect((start ?? 0) <= (end ?? words.length)).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it("has a span for every fact of every item", () => {
    fc.assert(
      fc.property(listingText, (text) => {
        const { items: found, spans } = readListing(text, fewReady);
        const fields = new Set(spans.map(({ field }) => field));
        found.forEach((item, place) => {
          for (const [field, value] of Object.entries(item)) {
            const said = value !== null && !Array.isArray(value) && !(field === "quantity" && value === 1);
            if (said) expect(fields).toContain(`items.${place}.${field}`);
          }
        });
      }),
      { numRuns: 100 },
    );
  });

  it("is the same shouted, whispered and spread out", () => {
    fc.assert(
      fc.property(listingText, (text) => {
        const plain = valuesOf(read(text));
        expect(valuesOf(read(text.toUpperCase()))).toEqual(plain);
        expect(valuesOf(read(text.toLowerCase()))).toEqual(plain);
        expect(valuesOf(read(text.replaceAll(" ", "   ")))).toEqual(plain);
        expect(valuesOf(read(` ${text.replaceAll(" ", " \t")} `))).toEqual(plain);
      }),
      { numRuns: 100 },
    );
  });

  it.each([
    "1",
    "a",
    "driver head ",
    "£1 ",
    "5, ",
    "no dents, ",
    "for the old ",
    "10.5 ",
    "4-pw ",
    "Ombrel ",
    "\n",
    "🔥",
  ])("takes hardly more than its share of time for four times as many of %j", (unit) => {
    const text = (size: number) => unit.repeat(Math.ceil(size / unit.length)).slice(0, size);
    const fewMs = cpuMs(() => read(text(2000)));
    // In step with the text it is four times as long, and sixteen where it grows with the square. A listing is read no further.
    expect(cpuMs(() => read(text(8000)))).toBeLessThan(10 * (fewMs + leastMs));
  });
});

/** What is as short as this says nothing of how it grows. */
const leastMs = 8;

/** The processor's time for a piece of work, the least of three. */
function cpuMs(work: () => unknown): number {
  const once = () => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
  return Math.min(once(), once(), once());
}
