import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";
import { solvePlan } from "../../packages/core/src/plan/solve-plan.ts";
import { loadHighsSolver } from "../../packages/server/src/plan/highs-solver.ts";
import { weighChoice } from "../oracle/plan-checks.ts";
import { glpkBest } from "../oracle/plan-glpk.ts";
import { smallPlan } from "../oracle/plan-random.ts";

const { seededPlan } = (await import(new URL("../../bench/seeded-plan.mjs", import.meta.url).href)) as {
  seededPlan: (sizes: Readonly<Record<string, number>>, seed: number) => PlanModel;
};

let highs: LinearSolver;
let byGlpk: Awaited<ReturnType<typeof glpkBest>>;
beforeAll(async () => {
  highs = await loadHighsSolver();
  byGlpk = await glpkBest();
});

const exact = { seconds: 60, relativeGap: 0, now: () => performance.now() };

describe("plans against GLPK", () => {
  it("bring the same on small models", async () => {
    await fc.assert(
      fc.asyncProperty(smallPlan, async (model) => {
        const { netMinor } = await solvePlan(model, highs, exact);
        expect(netMinor).toBe(Math.round(byGlpk(model)));
      }),
      { numRuns: 150, seed: 20261126 },
    );
  });

  it.each([1, 2, 3])("bring the same on a bench of twelve heads (seed %i)", async (seed) => {
    const model = seededPlan({ heads: 12, shafts: 12, adapters: 5, listings: 6, places: 3 }, seed);
    const { netMinor, boundMinor, choice } = await solvePlan(model, highs, exact);
    expect(weighChoice(model, choice)).toEqual({ net: netMinor, breaks: [] });
    expect(netMinor).toBe(Math.round(byGlpk(model)));
    expect(boundMinor).toBe(netMinor);
  });

  it.each([1, 2])(
    "bring no more than GLPK's relaxation on a bench of a hundred heads (seed %i)",
    async (seed) => {
      const model = seededPlan({ heads: 100, shafts: 100, adapters: 30, listings: 20 }, seed);
      const { netMinor, boundMinor, choice } = await solvePlan(model, highs, {
        ...exact,
        relativeGap: 0.005,
      });
      const relaxed = byGlpk(model, true);
      expect(weighChoice(model, choice)).toEqual({ net: netMinor, breaks: [] });
      expect(boundMinor).toBeLessThanOrEqual(relaxed + 1e-3);
      expect(netMinor).toBeGreaterThanOrEqual(0.995 * relaxed);
    },
  );
});
