import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Part } from "../parts/part.ts";
import { extrasMatter, gradeName, monthOf } from "./adjusted-price.ts";
import { guessReasons, shelfLines, waitDaysOf } from "./build-sum.ts";
import { isSet, marketOf, typeOf } from "./closeness.ts";
import { modelFinder } from "./model-finder.ts";
import { modelYears } from "./model-years.ts";
import { chargedMassG, measuresOf } from "./parcel-measures.ts";
import type { PlanPrices } from "./plan-prices.ts";
import { factorBits, factorEffect, factorNames, factorsIn } from "./price-factors.ts";
import { pricedShelf } from "./priced-shelf.ts";
import { unsafeFaults } from "./unsafe-faults.ts";

describe("what a thing's price is adjusted by", () => {
  it.each([
    ["as-new", "asNew"],
    ["good", null],
    ["fair", "fair"],
    ["poor", "poor"],
  ] as const)("is for %s the factor %s", (condition, name) => {
    expect(gradeName(condition)).toBe(name);
  });

  it("is the month of its day", () => {
    expect([monthOf("2026-01-31"), monthOf("2026-12-01")]).toEqual([0, 11]);
  });

  it.each([
    ["head", "driver", true, true],
    ["club", "hybrid", true, true],
    ["club", "putter", true, false],
    ["head", "iron", false, false],
    ["club", "wedge", false, false],
    ["shaft", "driver", false, false],
  ] as const)("is for a %s of a %s the cover: %s, the wrench: %s", (kind, clubType, cover, wrench) => {
    const subject = { kind, clubType };
    expect([extrasMatter(subject, "cover"), extrasMatter(subject, "wrench")]).toEqual([cover, wrench]);
  });
});

describe("the measures of a parcel", () => {
  const parcel = { massG: 900, lengthCm: 20, widthCm: 110, heightCm: 10 };

  // 2 × (20 + 10) round the longest side of 110; 20 × 110 × 10 / 1,000,000.
  it("are of a box, whichever way its sides are written", () => {
    const expected = {
      longestCm: 110,
      girthCm: 60,
      lengthPlusGirthCm: 170,
      lengthPlusTwoDiametersCm: null,
      volumeM3: 0.022,
    };
    expect(measuresOf({ ...parcel, shape: "box" })).toEqual(expected);
    expect(measuresOf({ ...parcel, shape: "box", lengthCm: 110, widthCm: 10, heightCm: 20 })).toEqual(
      expected,
    );
  });

  it("are of a tube by its greater diameter", () => {
    const tube = measuresOf({ massG: 500, shape: "tube", lengthCm: 100, widthCm: 6, heightCm: 8 });
    expect(tube).toMatchObject({ longestCm: 100, lengthPlusTwoDiametersCm: 116, volumeM3: 0.0048 });
    expect(tube.girthCm).toBeCloseTo(25.1327, 4);
    expect(tube.lengthPlusGirthCm).toBeCloseTo(125.1327, 4);
    expect(measuresOf({ massG: 1, shape: "tube", lengthCm: 5, widthCm: 9, heightCm: 2 }).longestCm).toBe(9);
  });

  // 0.022 m³ at 200 kg for a cubic metre are 4.4 kg.
  it("count by volume where that is more than it weighs", () => {
    expect(chargedMassG({ ...parcel, shape: "box" }, 200)).toBeCloseTo(4400, 9);
    expect(chargedMassG({ ...parcel, shape: "box" }, 10)).toBe(900);
    expect(chargedMassG({ ...parcel, shape: "box" }, null)).toBe(900);
  });
});

describe("the years of models", () => {
  const head = (year?: number) => ({ kind: "head" as const, ...(year === undefined ? {} : { year }) });
  const years = modelYears([
    { key: "quillon", thing: head(2018) },
    { key: "quillon", thing: head(2020) },
    { key: "quillon", thing: head() },
    { key: "tarn", thing: head() },
    { key: "brack", thing: head() },
    { key: "brack", thing: head(2011) },
  ]);

  it("are the newest that was stated, of a thing of its own age", () => {
    expect(years.yearOf("quillon", head())).toBe(2020);
    expect(years.yearOf("quillon", head(2018))).toBe(2020);
    expect(years.yearOf("quillon", head(2022))).toBe(2020);
    expect(years.yearOf("brack", head())).toBe(2011);
  });

  it("are its own for a thing of another age, of no model, or of one that nobody noted", () => {
    expect(years.yearOf("quillon", head(2017))).toBe(2017);
    expect(years.yearOf("quillon", head(2023))).toBe(2023);
    expect(years.yearOf(undefined, head(2001))).toBe(2001);
    expect(years.yearOf("larkspindle", head(2002))).toBe(2002);
    expect(years.yearOf("tarn", head(2003))).toBeUndefined();
  });

  it("part two ages of one name", () => {
    expect(years.modelOf("quillon", head(2018))).toBe("quillon");
    expect(years.modelOf("quillon", head(2017))).toBe("quillon of 2017");
    expect(years.modelOf("quillon", head())).toBe("quillon");
    expect(years.modelOf("tarn", head(2003))).toBe("tarn");
  });
});

describe("the factors in a price", () => {
  const loading = (name: string) => ({ effect: { name, mean: 0, variance: 1, spread: null }, times: 1 });

  it("are told again from their bits, all months as one", () => {
    expect(factorsIn(factorBits([loading("fair"), loading("noCover"), loading("model")]))).toEqual([
      "fair",
      "noCover",
    ]);
    for (const month of [0, 5, 11])
      expect(factorsIn(factorBits([loading(factorEffect("season", month))]))).toEqual(["season"]);
    expect(factorsIn(factorBits(factorNames.map((name) => loading(name))))).toEqual([...factorNames]);
    expect(factorsIn(0)).toEqual([]);
  });
});

describe("the shelf at the prices of the plan", () => {
  const known: Readonly<Record<string, number>> = { H: 1000.4, S: 200.2 };
  const prices = { ofPart: (id: string) => known[id] } as unknown as PlanPrices;
  const otherwise = {
    of: (ids: readonly string[]) => ({ amountMinor: 30 * ids.length, guessed: [...ids] }),
    atLeast: (ids: readonly string[]) => 20 * ids.length,
  };
  const shelf = pricedShelf(prices, otherwise);

  it("is what the plan knows, and for the rest what it is without", () => {
    expect(shelf.of(["H", "S", "X"])).toEqual({ amountMinor: 1231, guessed: ["X"] });
    expect(shelf.of(["H"])).toEqual({ amountMinor: 1000, guessed: [] });
    expect(shelf.atLeast(["H", "X", "Y"])).toBeCloseTo(1040.4, 9);
  });
});

describe("the models of a catalogue", () => {
  const model = (id: string, given: Partial<CatalogueModel> = {}) =>
    ({ id, kind: "head", maker: "Northmoor", model: "Ombrel", ...given }) as CatalogueModel;
  const part = (given: object) => ({ id: "P", maker: "Northmoor", model: "Ombrel", ...given }) as Part;
  const find = (models: readonly CatalogueModel[], given: object) =>
    modelFinder(models).ofPart(part(given))?.id;
  const head = { kind: "head" };

  it("are found by id", () => {
    const { byId } = modelFinder([model("a"), model("b")]);
    expect([byId("b")?.id, byId("c"), byId(null), byId(undefined)]).toEqual([
      "b",
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("are found by maker and model, capitals and blanks aside", () => {
    expect(find([model("a")], { ...head, maker: " NORTHMOOR", model: "ombrel " })).toBe("a");
    expect(find([model("a", { model: "Om  brel" })], { ...head, model: "om brel" })).toBe("a");
    expect(find([model("a")], { ...head, maker: "Orvane" })).toBeUndefined();
    expect(find([model("a")], { ...head, model: undefined })).toBeUndefined();
    expect(find([model("a")], { ...head, maker: undefined })).toBeUndefined();
  });

  it("are not guessed where two may be meant, and told apart by kind and type", () => {
    const two = [model("wood", { clubType: "driver" }), model("iron", { clubType: "iron" })];
    expect(find(two, head)).toBeUndefined();
    expect(find(two, { ...head, clubType: "iron" })).toBe("iron");
    expect(find([model("club", { kind: "club" })], head)).toBe("club");
    expect(find([model("s", { kind: "shaft" })], head)).toBeUndefined();
    expect(find([model("s", { kind: "shaft" }), model("h")], { kind: "shaft" })).toBe("s");
  });

  it("are the same on being asked again", () => {
    const finder = modelFinder([model("a")]);
    const one = part(head);
    expect(finder.ofPart(one)).toBe(finder.ofPart(one));
    expect(finder.ofPart(one)?.id).toBe("a");
  });
});

describe("which prices have to do with each other", () => {
  it("are those of heads with clubs, sets apart, and of a shaft with shafts", () => {
    expect(marketOf({ kind: "head" })).toBe("club");
    expect(marketOf({ kind: "club", clubNumber: "7" })).toBe("club");
    expect(marketOf({ kind: "club", clubNumber: "4-PW" })).toBe("set");
    expect(marketOf({ kind: "shaft", clubNumber: "4-PW" })).toBe("shaft");
    expect([isSet("4-PW"), isSet("PW")]).toEqual([true, false]);
  });

  it("are those of drivers and fairway woods together, on shafts alone", () => {
    expect(typeOf({ kind: "shaft", clubType: "fairway" })).toBe("driver");
    expect(typeOf({ kind: "head", clubType: "fairway" })).toBe("fairway");
    expect(typeOf({ kind: "shaft", clubType: "iron" })).toBe("iron");
  });
});

describe("the lines and reasons of building", () => {
  it("wait for glue by whole days", () => {
    const steps = (...minutes: number[]) => minutes.map((waitMinutes) => ({ waitMinutes }));
    expect([waitDaysOf([]), waitDaysOf(steps(1440)), waitDaysOf(steps(1440, 1))]).toEqual([0, 1, 2]);
  });

  it("take off what the shelf loses, where it loses anything", () => {
    expect(shelfLines({ amountMinor: 0, guessed: [] })).toEqual([]);
    expect(shelfLines({ amountMinor: 700, guessed: [] })).toMatchObject([
      { code: "shelf", amountMinor: -700 },
    ]);
  });

  it("name what is only guessed", () => {
    expect(guessReasons({ amountMinor: 7, guessed: [] })).toEqual([]);
    const [reason] = guessReasons({ amountMinor: 7, guessed: ["H1", "S2"] });
    expect(reason?.code).toBe("shelf-worth-guessed");
    expect(reason?.text).toContain("H1, S2");
  });
});

// Common practice, no source: a thing that can break or come apart in a swing is not sold to be swung.
describe("the faults with which a thing is not sold to be swung", () => {
  it.each([
    ["crack", true],
    ["caved-face", true],
    ["crease-shaft", true],
    ["dent-shaft", true],
    ["exposed-fibre", true],
    ["bent-shaft", true],
    ["adapter-damaged", true],
    ["loose-joint", true],
    ["sky-mark", false],
    ["rust", false],
    ["grip-worn", false],
  ] as const)("%s: %s", (fault, isOne) => {
    expect(unsafeFaults([{ id: "P", kind: "head", faults: ["crown-scratch", fault] }])).toEqual(
      isOne ? [fault] : [],
    );
  });

  it("are none of a part of which none is said", () => {
    expect(unsafeFaults([{ id: "P", kind: "head" }])).toEqual([]);
  });
});
