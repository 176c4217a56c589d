import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Fault } from "../parts/fault.ts";
import type { Part } from "../parts/part.ts";
import { anItem } from "./deal.test-kit.ts";
import type { Subject } from "./evidence.ts";
import { modelFinder } from "./model-finder.ts";
import { conditionOf, subjectOfClub, subjectOfItem, subjectOfPart } from "./subject-of.ts";

const ombrel: CatalogueModel = {
  id: "ombrel-driver",
  kind: "head",
  maker: "Northmoor",
  model: "Ombrel",
  clubType: "driver",
  adapterFamily: "Quillon 2",
  year: 2021,
};
const fairway: CatalogueModel = { ...ombrel, id: "ombrel-fairway", clubType: "fairway" };
const finder = modelFinder([ombrel, fairway]);

describe("conditionOf", () => {
  it.each<[Fault[], string | undefined]>([
    [[], undefined],
    [["sky-mark"], "fair"],
    [["sky-mark", "rust"], "fair"],
    [["sky-mark", "rust", "grip-worn"], "poor"],
    [["rattle"], "fair"],
    // Something that must not be sold has no grade.
    [["crack"], undefined],
  ])("of %o is %s", (faults, condition) => {
    expect(conditionOf(faults)).toBe(condition);
  });
});

describe("subjectOfItem", () => {
  it("fills in from the catalogue what the words do not say, and never against them", () => {
    expect(subjectOfItem(anItem({ modelId: "ombrel-driver", year: 2022, hand: "left" }), ombrel)).toEqual({
      kind: "head",
      modelId: "ombrel-driver",
      maker: "Northmoor",
      model: "Ombrel",
      year: 2022,
      clubType: "driver",
      hand: "left",
      adapterFamily: "Quillon 2",
    });
  });

  it("says of a shaft alone whether an adapter is on it", () => {
    expect(subjectOfItem(anItem({ kind: "shaft", adapter: "fitted" }), undefined)).toEqual({
      kind: "shaft",
      adapter: "fitted",
    });
    expect(subjectOfItem(anItem({ kind: "head", adapter: "none" }), undefined)).toEqual({ kind: "head" });
  });

  it("keeps a set a set", () => {
    expect(subjectOfItem(anItem({ kind: "club", clubNumber: "4-PW" }), undefined).clubNumber).toBe("4-PW");
  });
});

describe("subjectOfPart", () => {
  it.each<[string, Part, Subject]>([
    [
      "a head of a catalogued model, told apart by its type",
      { id: "h", kind: "head", maker: "northmoor ", model: "OMBREL", clubType: "fairway", clubNumber: "3" },
      {
        kind: "head",
        modelId: "ombrel-fairway",
        maker: "northmoor ",
        model: "OMBREL",
        year: 2021,
        clubType: "fairway",
        clubNumber: "3",
        adapterFamily: "Quillon 2",
      },
    ],
    [
      "a head that may be either of two models",
      { id: "h", kind: "head", maker: "Northmoor", model: "Ombrel" },
      { kind: "head", maker: "Northmoor", model: "Ombrel" },
    ],
    [
      "a shaft by what it suits",
      { id: "s", kind: "shaft", suits: "hybrid", flex: "stiff" },
      { kind: "shaft", clubType: "hybrid", flex: "stiff", adapter: "none" },
    ],
    [
      "an adapter for either hand",
      { id: "a", kind: "adapter", family: "Tarnlock", hand: "either" },
      { kind: "adapter", adapterFamily: "Tarnlock" },
    ],
    ["a grip", { id: "g", kind: "grip", faults: ["grip-worn"] }, { kind: "grip", condition: "fair" }],
    [
      "a wrench",
      { id: "w", kind: "wrench", family: "Tarnlock" },
      { kind: "wrench", adapterFamily: "Tarnlock" },
    ],
  ])("knows %s", (_title, part, subject) => {
    expect(subjectOfPart(part, finder)).toEqual(subject);
  });

  it("knows the adapter that is on a shaft", () => {
    const shaft: Part = { id: "s", kind: "shaft", suits: "wood" };
    expect(subjectOfPart(shaft, finder, { id: "a", kind: "adapter", family: "Quillon 2" })).toEqual({
      kind: "shaft",
      clubType: "driver",
      adapter: "fitted",
      adapterFamily: "Quillon 2",
    });
  });
});

describe("subjectOfClub", () => {
  const head: Part = { id: "h", kind: "head", clubType: "driver", hand: "right", faults: ["sky-mark"] };
  const shaft: Part = { id: "s", kind: "shaft", flex: "regular", faults: ["paint-wear-shaft"] };
  const grip: Part = { id: "g", kind: "grip", faults: ["grip-worn"] };

  it("is the head's model with the shaft's flex, as worn as all its parts", () => {
    expect(subjectOfClub({ head, shaft, grip }, finder, { cover: true, wrench: null })).toEqual({
      kind: "club",
      clubType: "driver",
      hand: "right",
      flex: "regular",
      condition: "poor",
      cover: true,
    });
  });

  it("does not count the wear of a grip that is left out", () => {
    expect(subjectOfClub({ head, shaft }, finder, {}).condition).toBe("fair");
  });
});
