import { describe, expect, it } from "vitest";
import { headOutline, inAxisFrame } from "./head-outline.ts";

describe("inAxisFrame", () => {
  // Derived, no published source: the ground meets the axis at the lie angle, so a point up the axis stays on it.
  it.each([56, 60, 64, 71])("keeps the axis straight at a lie of %d degrees", (lieDeg) => {
    const lieRad = (lieDeg * Math.PI) / 180;
    const { alongIn, offIn } = inAxisFrame([-2 * Math.cos(lieRad), 2 * Math.sin(lieRad)], lieDeg);
    expect(alongIn).toBeCloseTo(-2, 12);
    expect(offIn).toBeCloseTo(0, 12);
  });

  it("turns the ground by the lie, towards the toe", () => {
    const { alongIn, offIn } = inAxisFrame([1, 0], 60);
    expect(alongIn).toBeCloseTo(0.5, 12);
    expect(offIn).toBeCloseTo(Math.sqrt(3) / 2, 12);
  });
});

it("sizes a head by its readings, and keeps the scale of its kind without them", () => {
  const usual = headOutline({ clubType: "driver" }, 60);
  const doubled = headOutline({ clubType: "driver", heelToToeIn: 9.5, soleToCrownIn: { value: 4.8 } }, 60);
  expect(doubled.start.alongIn).toBeCloseTo(2 * usual.start.alongIn, 12);
  expect(doubled.curves).toHaveLength(usual.curves.length);
});
