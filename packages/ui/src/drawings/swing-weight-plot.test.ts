import { describe, expect, it } from "vitest";
import { inchTicks, type SwingPoint, swingDomains, swingPoint } from "./swing-weight-plot.ts";

const club: SwingPoint = {
  lengthIn: 45,
  lowIn: 44.9,
  highIn: 45.1,
  points: 32,
  lowPoints: 30.5,
  highPoints: 33.5,
};

describe("swingDomains", () => {
  it("holds the intervals, the target and where every change leads, with room around them", () => {
    const heavier = { ...club, points: 36 };
    const { lengthIn, points } = swingDomains([club], { playingLengthIn: 44, swingWeightPoints: 30 }, [
      { label: "8 g head", to: heavier },
    ]);
    expect(lengthIn[0]).toBeLessThan(44);
    expect(lengthIn[1]).toBeGreaterThan(45.1);
    expect(points[0]).toBeLessThan(30);
    expect(points[1]).toBeGreaterThan(36);
  });

  it("needs no target", () => {
    expect(swingDomains([club], {}, []).points[0]).toBeLessThan(30.5);
  });
});

describe("swingPoint", () => {
  it("is nothing where the length or the swing weight is not known", () => {
    expect(swingPoint({ playingLengthIn: null, swingWeight: null } as never)).toBeUndefined();
  });
});

describe("inchTicks", () => {
  it.each([
    [44.1, 45.9, 5, [44.5, 45, 45.5]],
    [36.9, 37.4, 4, [37, 37.125, 37.25, 37.375]],
    [30, 46, 4, [30, 35, 40, 45]],
  ])("from %d to %d in, at most %d of them, stand where a rule has marks", (low, high, most, wanted) => {
    expect(inchTicks(low, high, most)).toEqual(wanted);
  });
});
