import { describe, expect, test } from "vitest";
import { clubBalance, clubFirstMoment } from "./club-balance.ts";
import { clubMass } from "./club-mass.ts";

describe("clubBalance", () => {
  test("is the mean of the places weighted by mass", () => {
    const components = [
      { massG: 100, cgFromButtIn: 10 },
      { massG: 300, cgFromButtIn: 30 },
    ];
    expect(clubMass(components)).toBe(400);
    expect(clubFirstMoment(components)).toBe(10000);
    expect(clubBalance(components)).toBe(25);
  });

  test("is not a number when there is nothing to balance", () => {
    expect(clubBalance([])).toBeNaN();
  });
});
