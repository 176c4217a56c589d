import { expect, test } from "vitest";
import { addressTriangle, lieKeepingHandHeight } from "./address-triangle.ts";

test("the lie that keeps the hands as high keeps them as high", () => {
  const lieDeg = lieKeepingHandHeight({
    lengthIn: 38.5,
    lieDeg: 59,
    newLengthIn: 37,
  });
  const before = addressTriangle({ lengthIn: 38.5, lieDeg: 59 });
  expect(addressTriangle({ lengthIn: 37, lieDeg }).heightIn).toBeCloseTo(before.heightIn, 10);
});

test("no lie lifts the grip of a club that is too short to the same height", () => {
  expect(lieKeepingHandHeight({ lengthIn: 38.5, lieDeg: 59, newLengthIn: 30 })).toBeNaN();
});
