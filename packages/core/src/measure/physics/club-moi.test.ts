import { describe, expect, test } from "vitest";
import { clubBalance } from "./club-balance.ts";
import { clubMoi, rodOwnMoi } from "./club-moi.ts";

const club = [
  { massG: 50, cgFromButtIn: 4, ownMoiGIn2: 0 },
  {
    massG: 60,
    cgFromButtIn: 21.875,
    ownMoiGIn2: rodOwnMoi({ massG: 60, lengthIn: 43.5 }),
  },
  { massG: 200, cgFromButtIn: 44, ownMoiGIn2: 0 },
];

describe("clubMoi", () => {
  test("is least about the balance point", () => {
    const balanceIn = clubBalance(club);
    const least = clubMoi(club, balanceIn);
    expect(clubMoi(club, balanceIn - 0.1)).toBeGreaterThan(least);
    expect(clubMoi(club, balanceIn + 0.1)).toBeGreaterThan(least);
  });

  test("a rod cut in two is still the same rod", () => {
    const whole = [
      {
        massG: 60,
        cgFromButtIn: 20,
        ownMoiGIn2: rodOwnMoi({ massG: 60, lengthIn: 40 }),
      },
    ];
    const half = {
      massG: 30,
      ownMoiGIn2: rodOwnMoi({ massG: 30, lengthIn: 20 }),
    };
    expect(
      clubMoi([
        { ...half, cgFromButtIn: 10 },
        { ...half, cgFromButtIn: 30 },
      ]),
    ).toBeCloseTo(clubMoi(whole), 9);
  });
});
