import type { ClubDimensions } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { clubLayout } from "./club-layout.ts";
import { clubSentence, dimensionLabel } from "./club-words.ts";

// A 43 in club with 1 in of BBGM takes a 42 in shaft, without a cap: tutelman.com/golf/design/flex4.php. A hosel of 2.375 in
// with 1.125 in of the shaft in it leaves a BBGM of 1.25 in: Hireko blog, January 2011.
const plain: ClubDimensions = {
  playingLengthIn: 43,
  cutLengthIn: 42,
  uncutLengthIn: 42,
  tipTrimIn: 0,
  buttTrimIn: 0,
  bbgmIn: 1,
  insertionIn: 1.125,
  seatToGroundIn: null,
  capThicknessIn: 0,
  gripLengthIn: 10.5,
  lieDeg: 58,
  typical: [],
};

const lengthOf = (name: string, dimensions: ClubDimensions, balance: number | null = null) => {
  const layout = clubLayout(
    dimensions,
    balance === null ? null : { value: balance, low: balance, high: balance },
  );
  const one = layout?.dimensions.find((dimension) => dimension.name === name);
  return one && one.toIn - one.fromIn;
};

describe("clubLayout", () => {
  it.each([
    ["playing-length", plain, 43],
    ["cut-length", plain, 42],
    ["bbgm", plain, 1],
    ["insertion", plain, 1.125],
    ["grip", plain, 10.5],
    ["fulcrum", plain, 14], // US patent 1,953,916
    // With a cap of 1/8 in the same shaft makes a club that much longer (derived, no published source).
    ["cut-length", { ...plain, capThicknessIn: 0.125, playingLengthIn: 43.125 }, 42],
  ])("draws %s as long as the core measures it", (name, dimensions, wanted) => {
    expect(lengthOf(name, dimensions)).toBeCloseTo(wanted, 12);
  });

  it("measures the balance point from the grip's end, and the hosel from its mouth to the ground", () => {
    expect(lengthOf("balance", plain, 33.266)).toBeCloseTo(33.266, 12);
    const layout = clubLayout({ ...plain, bbgmIn: 1.25 }, null);
    expect((layout?.holder?.toIn ?? 0) - (layout?.holder?.fromIn ?? 0)).toBeCloseTo(2.375, 12);
  });

  it("lays the shaft as it came where it would lie, what is cut sticking out on either side", () => {
    const { uncut, buttCut, tipCut, shaft } =
      clubLayout({ ...plain, buttTrimIn: 1.5, tipTrimIn: 0.5 }, null) ?? {};
    expect(uncut).toEqual({ fromIn: -1.5, toIn: 42.5 });
    expect(buttCut).toEqual({ fromIn: -1.5, toIn: 0 });
    expect(tipCut).toEqual({ fromIn: shaft?.toIn, toIn: 42.5 });
  });

  it("shows what is added at the butt instead of a cut", () => {
    const layout = clubLayout({ ...plain, buttTrimIn: -1 }, null);
    expect(layout?.buttCut).toBeUndefined();
    expect(layout?.extension).toEqual({ fromIn: 0, toIn: 1 });
  });

  it("draws nothing of a club whose length is not known, and leaves out single things that are not", () => {
    expect(clubLayout({ ...plain, playingLengthIn: null }, null)).toBeUndefined();
    expect(lengthOf("insertion", { ...plain, insertionIn: null })).toBeUndefined();
    expect(lengthOf("balance", plain)).toBeUndefined();
  });
});

describe("the words of a club's drawing", () => {
  const layout = clubLayout(plain, null);

  it("marks what rests on a typical figure", () => {
    const bbgm = layout?.dimensions.find(({ name }) => name === "bbgm");
    expect(bbgm && dimensionLabel(bbgm, [], "in")).toBe("BBGM 1 in");
    expect(bbgm && dimensionLabel(bbgm, ["bbgmIn"], "in")).toBe("BBGM ≈ 1 in");
    expect(bbgm && dimensionLabel(bbgm, [], "cm")).toBe("BBGM 2.5 cm");
  });

  it("say every number in one sentence", () => {
    const text = layout ? clubSentence(layout, ["gripLengthIn"], "in") : "";
    for (const words of [
      "Playing length 43 in",
      "tip to butt 42 in",
      "in the bore 1.125 in (1 1/8)",
      "a typical figure",
    ])
      expect(text).toContain(words);
  });
});
