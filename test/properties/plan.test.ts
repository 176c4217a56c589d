import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";
import { solvePlan } from "../../packages/core/src/plan/solve-plan.ts";
import { loadHighsSolver } from "../../packages/server/src/plan/highs-solver.ts";
import { bestByTrying } from "../oracle/plan-brute-force.ts";
import { weighChoice } from "../oracle/plan-checks.ts";
import { smallPlan } from "../oracle/plan-random.ts";

let highs: LinearSolver;
beforeAll(async () => {
  highs = await loadHighsSolver();
});

const now = () => performance.now();
const exact = { seconds: 10, relativeGap: 0, now };
const runs = { numRuns: 400, seed: 20261125 };

describe("the best plan of a small bench", () => {
  it("brings what trying everything brings, breaks nothing, and proves it", async () => {
    await fc.assert(
      fc.asyncProperty(smallPlan, async (model) => {
        const solution = await solvePlan(model, highs, exact);
        expect(solution.netMinor).toBe(bestByTrying(model));
        expect(solution).toMatchObject({ boundMinor: solution.netMinor, gap: 0, stopped: false });
        expect(weighChoice(model, solution.choice)).toEqual({ net: solution.netMinor, breaks: [] });
      }),
      runs,
    );
  });

  it("does not depend on the order in which things are given", async () => {
    const shuffled = (model: PlanModel) =>
      fc.record({
        resources: shuffle(model.resources),
        uses: shuffle(model.uses),
        bundles: shuffle(model.bundles),
        trips: shuffle(model.trips),
        limits: fc.constant(model.limits),
      });
    await fc.assert(
      fc.asyncProperty(
        smallPlan.chain((model) => fc.tuple(fc.constant(model), shuffled(model))),
        async ([model, other]) => {
          expect(await solvePlan(other, highs, exact)).toEqual(await solvePlan(model, highs, exact));
        },
      ),
      { ...runs, numRuns: 150 },
    );
  });
});

function shuffle<T>(things: readonly T[]): fc.Arbitrary<T[]> {
  return fc.shuffledSubarray([...things], { minLength: things.length });
}
