import { expect, test } from "vitest";
import { clubMass } from "./club-mass.ts";

test("clubMass adds up the masses, and nothing weighs nothing", () => {
  expect(clubMass([{ massG: 50 }, { massG: 60.5 }, { massG: 200 }])).toBe(310.5);
  expect(clubMass([])).toBe(0);
});
