import { describe, expect, it } from "vitest";
import { fewReady } from "./catalogue.test-kit.ts";
import { findNames } from "./find-model.ts";
import { squeezeWords } from "./words.ts";

const found = (text: string) => {
  const words = squeezeWords(text);
  return findNames(words, fewReady).map(({ start, end, models, maker }) =>
    [words.text.slice(start, end), maker ?? "", ...models.map(({ id }) => id)].join(" | "),
  );
};

describe("findNames", () => {
  it.each([
    ["Fenwrack driver head", ["Fenwrack |  | fenwrack-driver"]],
    ["Northmoor Ombrel II driver", ["Northmoor Ombrel II | Northmoor | ombrel-2-driver"]],
    ["OMBREL2 head", ["OMBREL2 |  | ombrel-2-driver"]],
    ["Fenwrack 10 10.5 RH", ["Fenwrack 10 |  | fenwrack-10-driver"]],
    ["Fenwrack 10° RH", ["Fenwrack |  | fenwrack-driver"]],
    ["Fenwrack 10.5 RH", ["Fenwrack |  | fenwrack-driver"]],
    ["Ombrel 2 wood", ["Ombrel |  | ombrel-driver | ombrel-fairway | ombrel-cover"]],
    ["fenwrak driver", ["fenwrak |  | fenwrack-driver"]],
    ["Fewnrack driver", ["Fewnrack |  | fenwrack-driver"]],
    ["Northmor driver", ["Northmor | Northmoor"]],
    ["two Fenwracks", ["Fenwracks |  | fenwrack-driver"]],
    ["a driver of no name", []],
    ["a shaft and a cover", []],
    ["ready to play", []],
  ])("%j", (text, names) => expect(found(text)).toEqual(names));

  it("says of an everyday word that it is one", () => {
    const ordinary = (text: string) => findNames(squeezeWords(text), fewReady).map((name) => name.ordinary);
    expect(ordinary("copper finish")).toEqual([true]);
    expect(ordinary("Fenwrack")).toEqual([false]);
  });
});
