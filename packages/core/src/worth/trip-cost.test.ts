import { describe, expect, it } from "vitest";
import { timeMinor, tripCost } from "./trip-cost.ts";
import { workCost } from "./work-cost.ts";

// Plain arithmetic; derived, no published source.

const costs = { perKmMinor: 30, minutesPerKm: 1.2, hourValueMinor: 1500 };

describe("the cost of a trip", () => {
  it.each([
    ["goes by the distance", { roundTripKm: 42 }, { moneyMinor: 1260, minutes: 50.4, timeMinor: 1260 }],
    [
      "takes the minutes it is told",
      { roundTripKm: 42, minutes: 70 },
      { moneyMinor: 1260, minutes: 70, timeMinor: 1750 },
    ],
    [
      "is time alone on foot",
      { roundTripKm: 0, minutes: 15 },
      { moneyMinor: 0, minutes: 15, timeMinor: 375 },
    ],
    [
      "rounds each part once",
      { roundTripKm: 0.15, minutes: 0.1 },
      { moneyMinor: 5, minutes: 0.1, timeMinor: 3 },
    ],
  ])("%s", (_what, trip, expected) =>
    expect(tripCost(trip, costs)).toEqual({
      ...expected,
      totalMinor: expected.moneyMinor + expected.timeMinor,
    }),
  );

  it("counts no time where an hour is worth nothing", () =>
    expect(timeMinor(90, { hourValueMinor: 0 })).toBe(0));
});

describe("the cost of work", () => {
  const steps = [
    { step: "bond-tip", minutes: 25, costMinor: 150 },
    { step: "grip-on", minutes: 10, costMinor: 100 },
  ];

  it.each([
    ["goes by the table", {}, 35, 250, 875],
    ["takes the user's own figures first", { "grip-on": { minutes: 4, costMinor: 650 } }, 29, 800, 725],
    ["takes one of them alone", { "grip-on": { costMinor: 0 } }, 35, 150, 875],
    ["leaves figures of other steps alone", { ferrule: { minutes: 99 } }, 35, 250, 875],
  ])("%s", (_what, work, minutes, materialMinor, time) =>
    expect(workCost(steps, { work, hourValueMinor: 1500 })).toEqual({
      minutes,
      materialMinor,
      timeMinor: time,
      totalMinor: materialMinor + time,
    }),
  );

  it("is nothing where nothing is done, and is not misled by a step with an odd name", () => {
    expect(workCost([], { work: {}, hourValueMinor: 1500 }).totalMinor).toBe(0);
    const odd = [{ step: "constructor", minutes: 6, costMinor: 10 }];
    expect(workCost(odd, { work: {}, hourValueMinor: 1500 }).totalMinor).toBe(160);
  });
});
