import { expect, test } from "vitest";
import { bottomOfBoreThroughAdapter, cutLength, playingLength } from "./playing-length.ts";

test("a shaft cut for a playing length plays at that length", () => {
  const parts = { bbgmIn: 1.375, capThicknessIn: 0.125 };
  expect(
    playingLength({
      ...parts,
      cutLengthIn: cutLength({ ...parts, playingLengthIn: 45.5 }),
    }),
  ).toBe(45.5);
});

test("a tip that stops below the seat plays lower in the head, and one above it higher", () => {
  expect(
    bottomOfBoreThroughAdapter({
      seatToGroundIn: 2.25,
      tipStopFromSeatIn: 0.5,
    }),
  ).toBe(1.75);
  expect(
    bottomOfBoreThroughAdapter({
      seatToGroundIn: 2.25,
      tipStopFromSeatIn: -0.25,
    }),
  ).toBe(2.5);
});
