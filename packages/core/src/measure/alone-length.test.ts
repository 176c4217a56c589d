import { describe, expect, it } from "vitest";
import { aloneLength, type ShaftInHand } from "./alone-length.ts";
import { adapter, grip, shippedTypical, woodShaft } from "./club.test-kit.ts";

const of = (length: ShaftInHand["shaft"]["length"], more: Partial<ShaftInHand> = {}) =>
  aloneLength({ shaft: { ...woodShaft, length }, ...more }, shippedTypical);

// What each basis includes is common practice, no source.
describe("aloneLength", () => {
  it("takes a length of the shaft alone as it is", () => {
    expect(of({ lengthIn: 44, basis: "shaft-alone" })).toEqual({
      value: 44,
      plusMinus: 0.125,
      source: "stated",
    });
  });

  it("takes the end of the adapter off a length with an adapter", () => {
    const length = of({ lengthIn: 44, basis: "with-adapter" }, { adapter, bonded: true });
    expect(length?.value).toBeCloseTo(44 - 0.3, 9);
    expect(length?.plusMinus).toBeCloseTo(Math.hypot(0.125, 0.15), 9);
    expect(length?.source).toBe("typical");
  });

  it("takes the cap off too where the shaft with an adapter is gripped", () => {
    expect(
      of({ lengthIn: 44, basis: "with-adapter" }, { adapter, bonded: true, grip, gripped: true })?.value,
    ).toBeCloseTo(44 - 0.3 - 0.125, 9);
  });

  it("takes the old head's BBGM and a cap off a playing length", () => {
    expect(of({ lengthIn: 45.5, basis: "playing" })?.value).toBeCloseTo(45.5 - 1.25 - 0.125, 9);
  });

  it("covers every basis where none is stated, and says that it rests on a typical reading", () => {
    for (const basis of [undefined, "unstated"] as const) {
      const unstated = of({ lengthIn: 45, basis });
      const low = unstated!.value - 1.96 * unstated!.plusMinus;
      const high = unstated!.value + 1.96 * unstated!.plusMinus;
      for (const possible of ["shaft-alone", "with-adapter", "playing"] as const) {
        const value = of({ lengthIn: 45, basis: possible })!.value;
        expect(value).toBeGreaterThan(low);
        expect(value).toBeLessThan(high);
      }
      expect(unstated!.source).toBe("typical");
    }
  });

  it("takes the tip trim off a raw length where that is known", () => {
    const shaft = { ...woodShaft, length: undefined, rawLengthIn: 46 };
    expect(aloneLength({ shaft: { ...shaft, tip: { trimmedIn: 0.5 } } }, shippedTypical)?.value).toBe(45.5);
    expect(aloneLength({ shaft }, shippedTypical)).toBeUndefined();
  });

  it("knows nothing of a shaft without a length", () => {
    expect(of(undefined)).toBeUndefined();
  });
});
