import { readFileSync } from "node:fs";
import type { Bench, CatalogueModel, CostSettings, Evidence, Sighting } from "@ferrule/core";
import { beforeAll, describe, expect, it } from "vitest";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import { planBench } from "../../packages/core/src/plan/plan-bench.ts";
import type { PlanInput } from "../../packages/core/src/plan/plan-input.ts";
import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";
import { planSetup } from "../../packages/core/src/plan/plan-setup.ts";
import { solvePlan } from "../../packages/core/src/plan/solve-plan.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import { loadHighsSolver } from "../../packages/server/src/plan/highs-solver.ts";
import { reference } from "../reference-tables.ts";

const table = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url), "utf8"));
const bench = table("demo/bench") as Bench;

const fifthOf = <T extends { amountMinor: number }>(price: T): T => ({
  ...price,
  amountMinor: Math.round(price.amountMinor / 5),
});

const input: PlanInput = {
  ...{ bench, rules, reference },
  catalogue: table("demo/catalogue") as CatalogueModel[],
  evidence: table("demo/evidence") as Evidence[],
  // Those that were bought or went are for sale once more, at a fifth of the price, so that the plan has something to choose from.
  sightings: (table("demo/sightings") as Sighting[]).map(({ listing, boughtItems: _bought, ...rest }) => ({
    ...rest,
    outcome: "open",
    listing: { ...listing, asking: listing.asking && fifthOf(listing.asking) },
  })),
  costs: table("reference/first-costs") as CostSettings,
  today: "2026-11-25",
  wishes: { budgetMinor: null, minutes: null, mostOfType: {}, hours: "at-own-rate", leastPerHourMinor: null },
};

let highs: LinearSolver;
beforeAll(async () => {
  highs = await loadHighsSolver();
});
const options = { seconds: 20, relativeGap: 1e-4, now: () => performance.now() };
const solve = (model: PlanModel) => solvePlan(model, highs, options);

describe("the plan of the bench of the example", () => {
  it("names parts that are there, each in one thing to do, and its sums add up", {
    timeout: 60_000,
  }, async () => {
    const plan = await planBench(input, solve);
    expect(plan.gap).toBeLessThanOrEqual(1e-4);
    const { offers } = planSetup(input);
    const here = new Set([...bench.parts, ...offers.flatMap(({ parts }) => parts)].map(({ id }) => id));
    for (const { parts } of plan.actions) expect(parts.filter((id) => !here.has(id))).toEqual([]);
    const used = plan.actions
      .filter((action) => ["build", "sell", "wait"].includes(action.do))
      .flatMap(({ parts }) => parts);
    expect(new Set(used).size).toBe(used.length);
    expect(used.filter((id) => plan.kept.includes(id))).toEqual([]);
    expect(plan.actions.reduce((sum, { netMinor }) => sum + netMinor, 0)).toBe(plan.netMinor);
    for (const what of ["fetch", "buy", "build", "sell"])
      expect(plan.actions.some((action) => action.do === what)).toBe(true);
    // Words and parts of a step speak of the same things.
    for (const { work } of plan.actions)
      for (const { parts, text } of work) for (const id of parts) expect(text).toContain(` ${id}`);
    expect(plan.nextBest?.netMinor).toBeLessThanOrEqual(plan.netMinor);
    expect(plan.nextBest?.actions.length).toBeGreaterThan(0);
  });
});
