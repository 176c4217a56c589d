import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import type { PlanModel, PlanSolution } from "../../packages/core/src/plan/plan-model.ts";
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

  it("is found and proved however little time there is", async () => {
    await fc.assert(
      fc.asyncProperty(smallPlan, async (model) => {
        const solution = await solvePlan(model, highs, { ...exact, seconds: 0 });
        expect(solution).toMatchObject({ netMinor: bestByTrying(model), gap: 0, stopped: false });
      }),
      { ...runs, numRuns: 150 },
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

describe("a plan that could not be finished", () => {
  /** HiGHS that is no longer heard after so many calls, and a user who stops after so many questions. */
  const brokenOff = fc.record({ calls: fc.nat(2), questions: fc.nat(40) });

  it("is the best so far, breaks nothing, and its bound is never below what there is to find", async () => {
    await fc.assert(
      fc.asyncProperty(smallPlan, brokenOff, async (model, { calls, questions }) => {
        let [called, asked] = [0, 0];
        const failing: LinearSolver = async (programme, options) =>
          ++called > calls
            ? { status: "failed", values: null, objective: null, bound: null, prices: null }
            : highs(programme, options);
        const shouldStop = () => ++asked > questions;
        const solution = await solvePlan(model, failing, { ...exact, shouldStop });
        const best = bestByTrying(model);
        expect(weighChoice(model, solution.choice)).toEqual({ net: solution.netMinor, breaks: [] });
        expect(solution.netMinor).toBeLessThanOrEqual(best);
        expect(solution.boundMinor).toBeGreaterThanOrEqual(best);
        expect(solution.stopped).toBe(solution.boundMinor > solution.netMinor);
      }),
      { ...runs, numRuns: 200 },
    );
  });

  it("tells on the way only of plans that hold, each as good as the last or better proved", async () => {
    let times = 0;
    await fc.assert(
      fc.asyncProperty(smallPlan, async (model) => {
        const told: PlanSolution[] = [];
        await solvePlan(model, highs, { ...exact, onProgress: (sofar) => told.push(sofar) });
        times += told.length;
        told.forEach((sofar, at) => {
          expect(weighChoice(model, sofar.choice)).toEqual({ net: sofar.netMinor, breaks: [] });
          expect(sofar.boundMinor).toBeGreaterThanOrEqual(sofar.netMinor);
          const before = told[at - 1];
          if (before === undefined) return;
          expect(sofar.netMinor).toBeGreaterThanOrEqual(before.netMinor);
          expect(sofar.boundMinor).toBeLessThanOrEqual(before.boundMinor);
        });
      }),
      { ...runs, numRuns: 100 },
    );
    expect(times).toBeGreaterThan(20);
  });
});

function shuffle<T>(things: readonly T[]): fc.Arbitrary<T[]> {
  return fc.shuffledSubarray([...things], { minLength: things.length });
}
