import { describe, expect, it } from "vitest";
import { corpusNames, readCatalogue, readCorpus } from "./corpus.ts";
import { scoreReadings } from "./score.ts";

const catalogue = readCatalogue();

describe.each(corpusNames)("%s.jsonl", (name) => {
  it("keeps to the shape of a listing, each under a name of its own", () => {
    const ids = readCorpus(name).map(({ id }) => id);
    expect(ids.length).toBeGreaterThanOrEqual(75);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("spells makers, models and adapter families as the catalogue does", () => {
    const families = new Set(catalogue.map(({ adapterFamily }) => adapterFamily));
    const makers = new Set(catalogue.map(({ maker }) => maker));
    for (const { id, expect: facts } of readCorpus(name))
      for (const { kind, maker, model, modelId, clubType, adapterFamily } of facts.items) {
        const known = catalogue.find((each) => each.id === modelId);
        if (modelId !== null) {
          expect({ maker, model }, id).toEqual({ maker: known?.maker, model: known?.model });
          expect(known?.kind, id).toBe(kind === "club" ? "head" : kind);
          if (clubType !== null) expect(known?.clubType ?? clubType, id).toBe(clubType);
        } else expect(model, id).toBeNull();
        if (maker !== null) expect(makers, id).toContain(maker);
        if (adapterFamily !== null) expect(families, id).toContain(adapterFamily);
      }
  });

  // Two of the files are the halves of one, which had ten of each.
  it("has five or more of every field", () => {
    const same = readCorpus(name).map(({ expect: facts }) => ({ expected: facts, got: facts }));
    const few = scoreReadings(same).fields.filter(({ instances }) => instances < 5);
    expect(few.map(({ field, instances }) => `${field}: ${instances}`)).toEqual([]);
  });
});

describe("the whole corpus", () => {
  it("comes to 150 listings or more, no two alike", () => {
    const texts = corpusNames.flatMap(readCorpus).map(({ text }) => text);
    expect(texts.length).toBeGreaterThanOrEqual(150);
    expect(new Set(texts).size).toBe(texts.length);
  });
});
