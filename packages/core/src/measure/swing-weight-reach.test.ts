import { expect, test } from "vitest";
import type { Reading } from "../parts/reading.ts";
import { swingWeightReach, swingWeightSpread } from "./swing-weight-reach.ts";

const exact = (value: number): Reading => ({ value, plusMinus: 0, source: "measured" });

/** Grip 50 g at 4.0 in, shaft 60 g at 21.875 in (a uniform 43.5 in under a cap of 0.125 in), head 200 g at 44.0 in. */
const workedClub = {
  headMassG: exact(200),
  cgAlongAxisIn: exact(0.625),
  adapterMassG: exact(0),
  shaftMassG: exact(60),
  balanceFromTipIn: exact(21.75),
  aloneLengthIn: exact(43.5),
  bbgmIn: exact(1),
  capThicknessIn: exact(0.125),
  gripMassG: exact(50),
  cgFromCapIn: exact(4),
};

test("the worked club comes to 5972.5 g·in, C8.38 (derived by hand, no published source)", () => {
  expect(swingWeightReach({ readings: workedClub })?.points).toBeCloseTo(28.38, 2);
});

test("a gram on the head at 44 in is worth 30/49.612 of a point (derived from 14 in and 1.75 oz·in)", () => {
  expect(swingWeightReach({ readings: workedClub })?.headPointsPerG).toBeCloseTo(30 / 49.612, 4);
});

// By hand: the head comes 0.5 in nearer (100 g·in); the shaft was 60 g at 21.875 in (472.5 g·in about 14 in) and is 43/43.5 of
// that mass at 21.625 in (452.24 g·in). Together 120.26 g·in, at 49.612 g·in a point.
test("half an inch cut off the butt is worth 2.42 points here (derived, no published source)", () => {
  const whole = swingWeightReach({ readings: workedClub })?.points ?? 0;
  const shorter = swingWeightReach({ readings: workedClub, builtLengthIn: 44.125 })?.points ?? 0;
  expect(whole - shorter).toBeCloseTo(120.26 / 49.612, 3);
});

test("the interval reaches 1.96 standard uncertainties, and the vaguest reading is named", () => {
  const readings = { ...workedClub, headMassG: { value: 200, plusMinus: 2, source: "stated" } as const };
  const { low, high, vaguest } = swingWeightSpread({ readings });
  expect(high - low).toBeCloseTo(2 * 1.96 * 2 * (30 / 49.612), 3);
  expect(vaguest).toBe("headMassG");
});

test("a balance point that no shaft has gives no swing weight", () => {
  expect(swingWeightReach({ readings: { ...workedClub, balanceFromTipIn: exact(40) } })).toBeUndefined();
});
