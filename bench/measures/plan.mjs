import { solvePlan } from "../../packages/core/dist/index.js";
import { greedyDraft } from "../../packages/core/dist/plan/greedy-plan.js";
import { planProgramme } from "../../packages/core/dist/plan/plan-programme.js";
import { readyPacking } from "../../packages/core/dist/plan/ready-packing.js";
import { loadHighsSolver } from "../../packages/server/dist/plan/highs-solver.js";
import { plainModel } from "../plain-plan.mjs";
import { seededPlan } from "../seeded-plan.mjs";

/** Heads, shafts, adapters, listings, and how many seconds each way may take. */
export const sizes = [
  [100, 100, 35, 17, 4],
  [300, 300, 100, 50, 8],
  [1000, 1000, 400, 300, 20],
];
export const numberOf = ([heads, shafts, adapters]) => heads + shafts + adapters;
export const sizeText = ([heads, shafts, adapters, listings, seconds]) =>
  `${heads + shafts + adapters} parts and ${listings} listings, ${seconds} s`;
export const about =
  "Both solve the same seeded model in the same time; the plain model has a column for every club of single parts, and none at all where there are too many.";
const seed = 1;

export async function ready() {
  const highs = await loadHighsSolver();
  return async ([heads, shafts, adapters, listings, seconds]) => {
    const model = seededPlan({ heads, shafts, adapters, listings }, seed);
    const start = performance.now();
    const { netMinor, boundMinor } = await solvePlan(model, highs, {
      ...{ seconds, relativeGap: 0.0005, now: () => performance.now() },
    });
    const ours = (performance.now() - start) / 1000;
    const greedy = greedyDraft(readyPacking(model)).net;
    if (netMinor < greedy) throw new Error("the plan is worse than greedy");
    if (boundMinor < netMinor) throw new Error("the bound is below the plan");
    const plain = await solvePlain(model, highs, seconds);
    const euros = (minor) => (minor === null ? null : minor / 100);
    const what = "net of the plan (more is better)";
    return [
      { what, unit: "euros", against: "greedy", ours: euros(netMinor), baseline: euros(greedy) },
      { what, unit: "euros", against: "the plain model", ours: euros(netMinor), baseline: euros(plain.net) },
      {
        ...{ what: "most that it may fall short of the best", unit: "%", against: "the plain model" },
        ...{ ours: shortOf(netMinor, boundMinor), baseline: shortOf(plain.net, plain.bound) },
      },
      { what: "making the plan", unit: "s", against: "the plain model", ours, baseline: plain.seconds },
    ];
  };
}

const shortOf = (net, bound) => (net === null || bound === null ? null : (100 * (bound - net)) / bound);

async function solvePlain(model, highs, seconds) {
  const plain = plainModel(model);
  if (plain.model === null) return { net: null, bound: null, seconds: null };
  const packing = readyPacking(plain.model);
  const all = packing.uses.map((_, place) => place);
  const start = performance.now();
  const { objective, bound } = await highs(planProgramme(packing, all, true).programme, {
    ...{ seconds, relativeGap: 0.0005 },
  });
  return { net: objective, bound, seconds: (performance.now() - start) / 1000 };
}
