import { expect, test } from "vitest";
import { shimWall } from "./shim-wall.ts";

test("a tip as wide as its bore leaves no room for a shim, and a wider one less than none", () => {
  expect(shimWall({ boreDiameterIn: 0.37, tipDiameterIn: 0.37 })).toBe(0);
  expect(shimWall({ boreDiameterIn: 0.355, tipDiameterIn: 0.37 })).toBeCloseTo(-0.0075, 12);
});
