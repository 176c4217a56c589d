import { describe, expect, test } from "vitest";
import { cantileverFrequency, cantileverRigidity, cantileverRoot } from "./cantilever.ts";

/** The frequency equation as the textbooks print it. */
function residual(beta: number, massRatio: number): number {
  const tip = Math.cos(beta) * Math.sinh(beta) - Math.sin(beta) * Math.cosh(beta);
  return 1 + Math.cos(beta) * Math.cosh(beta) + massRatio * beta * tip;
}

describe("cantileverRoot", () => {
  const ratios = [0, 0.01, 0.3, 1, 1.6, 4, 30, 1000];
  const modes = [1, 2, 3, 4, 5];
  test.each(ratios.flatMap((massRatio) => modes.map((mode) => [massRatio, mode] as const)))(
    "solves the printed equation for a mass ratio of %d in mode %d",
    (massRatio, mode) => {
      const root = cantileverRoot({ massRatio, mode });
      const before = residual(root * (1 - 1e-9), massRatio);
      const after = residual(root * (1 + 1e-9), massRatio);
      expect(before * after).toBeLessThan(0);
    },
  );

  test("a heavier tip lowers every root, and none leaves its place", () => {
    for (const mode of modes) {
      const roots = ratios.map((massRatio) => cantileverRoot({ massRatio, mode }));
      for (const [i, root] of roots.entries()) {
        if (i > 0) expect(root).toBeLessThan(roots[i - 1]!);
        expect(root).toBeGreaterThan((mode - 1) * Math.PI);
      }
    }
  });
});

describe("cantileverFrequency", () => {
  const beam = { beamLengthM: 1.016, beamMassKg: 0.055, tipMassKg: 0.2 };

  test("gives back the rigidity it was computed from", () => {
    const { angularRadPerS } = cantileverFrequency({
      ...beam,
      rigidityNM2: 30,
    });
    expect(cantileverRigidity({ ...beam, angularRadPerS })).toBeCloseTo(30, 10);
  });

  test("tends to the massless spring as the beam's mass goes to nothing", () => {
    const massless = cantileverFrequency({
      ...beam,
      beamMassKg: 0,
      rigidityNM2: 30,
    });
    const light = cantileverFrequency({
      ...beam,
      beamMassKg: 1e-6,
      rigidityNM2: 30,
    });
    expect(massless.angularRadPerS).toBeCloseTo(Math.sqrt((3 * 30) / (0.2 * 1.016 ** 3)), 12);
    expect(light.cpm / massless.cpm).toBeCloseTo(1, 5);
  });
});
