import { describe, expect, test } from "vitest";
import { rulesLength } from "./rules-length.ts";

const driver = {
  playingLengthIn: 45.5,
  lieDeg: 58,
  soleRadiusIn: 10,
  contactFromAxisIn: 1.5,
};

/** The same length found without the formula: turn the sole's circle and the axis as points, then drop to its lowest tangent. */
function rolledLength({ playingLengthIn, lieDeg, soleRadiusIn, contactFromAxisIn }: typeof driver): number {
  const turn = ((60 - lieDeg) * Math.PI) / 180;
  const centre = { x: -contactFromAxisIn, y: soleRadiusIn };
  const lie = (lieDeg * Math.PI) / 180;
  const grip = {
    x: playingLengthIn * Math.cos(lie),
    y: playingLengthIn * Math.sin(lie),
  };
  const height = (p: { x: number; y: number }) => p.x * Math.sin(turn) + p.y * Math.cos(turn);
  const groundHeight = height(centre) - soleRadiusIn;
  return (height(grip) - groundHeight) / Math.sin(Math.PI / 3);
}

describe("rulesLength", () => {
  test("is the playing length when the lie is 60° already", () => {
    expect(rulesLength({ ...driver, lieDeg: 60 })).toBe(45.5);
  });

  test.each([55, 56.5, 58, 59, 61, 62.5, 64])(
    "agrees with a sole rolled point by point at a lie of %d°",
    (lieDeg) => {
      expect(rulesLength({ ...driver, lieDeg })).toBeCloseTo(rolledLength({ ...driver, lieDeg }), 10);
    },
  );

  test("stays within 1/12 in of the trade's length for ordinary heads (tutelman.com/golf/measure/ruler.php)", () => {
    const heads = [
      { lieDeg: 58, soleRadiusIn: 10, contactFromAxisIn: 1.75 },
      { lieDeg: 59, soleRadiusIn: 12, contactFromAxisIn: 1.75 },
      { lieDeg: 60.5, soleRadiusIn: 15, contactFromAxisIn: 1.4 },
      { lieDeg: 62, soleRadiusIn: 20, contactFromAxisIn: 1.4 },
      { lieDeg: 63, soleRadiusIn: 20, contactFromAxisIn: 1.3 },
      { lieDeg: 64, soleRadiusIn: 20, contactFromAxisIn: 1.3 },
    ];
    for (const head of heads) {
      expect(Math.abs(rulesLength({ ...head, playingLengthIn: 40 }) - 40), JSON.stringify(head)).toBeLessThan(
        1 / 12,
      );
    }
  });

  test("a flatter lie than 60° reads longer, an upright one shorter, where the sole is nearly flat on the ground", () => {
    expect(rulesLength(driver)).toBeGreaterThan(45.5);
    expect(rulesLength({ ...driver, lieDeg: 62 })).toBeLessThan(45.5);
  });
});
