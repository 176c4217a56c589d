import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draftOf } from "../../packages/core/src/plan/draft.ts";
import { dualBound, plainPrices } from "../../packages/core/src/plan/dual-bound.ts";
import { greedyDraft } from "../../packages/core/src/plan/greedy-plan.ts";
import { guideOf, scoresByNet, scoresByScarcity } from "../../packages/core/src/plan/guide.ts";
import { improve } from "../../packages/core/src/plan/improve-draft.ts";
import { leanModel } from "../../packages/core/src/plan/lean-model.ts";
import { neighbourhoodOf, withKept } from "../../packages/core/src/plan/neighbourhood.ts";
import { readyPacking } from "../../packages/core/src/plan/ready-packing.ts";
import { reducePacking } from "../../packages/core/src/plan/reduce-packing.ts";
import { splitPacking } from "../../packages/core/src/plan/split-packing.ts";
import { bestByTrying } from "../oracle/plan-brute-force.ts";
import { parkMiller } from "../oracle/plan-packings.ts";
import { smallPlan } from "../oracle/plan-random.ts";

const runs = { numRuns: 300, seed: 20261127 };
const never = () => false;

describe("the steps to a plan", () => {
  it("exchange for the better only, never to more than there is nor more than there is to find", () => {
    fc.assert(
      fc.property(smallPlan, (model) => {
        const packing = readyPacking(model);
        for (const scores of [scoresByNet(packing), scoresByScarcity(packing)]) {
          const draft = greedyDraft(packing, scores);
          const greedy = draft.net;
          improve(draft, guideOf(packing, scores), never);
          expect(draft.holds).toBe(true);
          expect(draft.net).toBeGreaterThanOrEqual(greedy);
          expect(draft.net).toBeLessThanOrEqual(bestByTrying(model));
          // What is counted while it changes is what is counted anew.
          expect(draftOf(packing, draft.counts).net).toBe(draft.net);
        }
      }),
      runs,
    );
  });

  it("let go of a part of a choice and lose nothing: the part is a choice in what was left, and makes the whole again", () => {
    fc.assert(
      fc.property(smallPlan, fc.integer({ min: 1, max: 2 ** 31 - 2 }), fc.nat(10), (model, seed, tenths) => {
        const packing = readyPacking(model);
        const draft = greedyDraft(packing);
        const next = parkMiller(seed);
        const all = packing.uses.map((_, place) => place);
        const draw = () => next() / 2147483647;
        const around = neighbourhoodOf(packing, draft.counts, all, tenths / 10, 1000, draw);
        expect(withKept(around, around.start)).toEqual(draft.counts);
        const again = draftOf(around.packing, around.start);
        expect(again.counts).toEqual(around.start);
        expect(draftOf(packing, around.fixed).net + again.net).toBe(draft.net);
      }),
      runs,
    );
  });

  it("leave out and split apart nothing that the best needs, and bound all of it without a solver", () => {
    fc.assert(
      fc.property(smallPlan, (model) => {
        const best = bestByTrying(model);
        const reduced = reducePacking(readyPacking(model));
        const parts = splitPacking(reduced);
        const uses = parts.flatMap((part) => part.uses.map(({ id }) => id));
        expect(uses.toSorted()).toEqual(reduced.uses.map(({ id }) => id).toSorted());
        const kept = model.uses.filter(({ id }) => uses.includes(id));
        const bundleIds = reduced.bundles.flatMap(({ ids }) => ids);
        const bundles = model.bundles.filter(({ id }) => bundleIds.includes(id));
        expect(bestByTrying({ ...model, uses: kept, bundles })).toBe(best);
        const bound = parts.reduce((sum, part) => sum + dualBound(part, plainPrices(part)).bound, 0);
        expect(bound).toBeGreaterThanOrEqual(best - 1e-6);
      }),
      runs,
    );
  });

  it("leave out beforehand nothing that the best needs, whatever the limits and the counts", () => {
    const limits = fc.record({
      budgetMinor: fc.option(fc.nat(60), { nil: null }),
      minutes: fc.option(fc.nat(60), { nil: null }),
    });
    fc.assert(
      fc.property(smallPlan, limits, fc.nat(2), (model, other, more) => {
        const { limits: _own, ...lean } = leanModel(model);
        const resources = model.resources.map((each, at) =>
          at === 0 ? { ...each, count: each.count + more } : each,
        );
        for (const within of [model.limits, { ...model.limits, ...other }])
          expect(bestByTrying({ ...lean, resources, limits: within })).toBe(
            bestByTrying({ ...model, resources, limits: within }),
          );
      }),
      runs,
    );
  });
});
