import type { PlanModel, PlanSolution } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { startPlan } from "./start-plan.ts";

const use = (id: string, resources: readonly string[], netMinor: number) => ({
  id,
  takes: resources.map((resource) => ({ resource, count: 1 })),
  netMinor,
  minutes: 0,
  outlayMinor: 0,
});

const model: PlanModel = {
  resources: [
    { id: "head", count: 2 },
    { id: "shaft", count: 1 },
  ],
  uses: [use("build", ["head", "shaft"], 50), use("sell the head", ["head"], 20)],
  bundles: [
    { id: "listing", gives: [{ resource: "shaft", count: 1 }], priceMinor: 10, minutes: 0, timeMinor: 0 },
  ],
  trips: [],
  limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
};

/** Triples of which so many are equally good that proving the best takes long. */
function hardModel(): PlanModel {
  const size = 40;
  const ids = Array.from({ length: size * 3 }, (_, at) => `r${at}`);
  const uses = Array.from({ length: 3000 }, (_, at) => {
    const place = (row: number, factor: number) =>
      ids[row * size + ((at * factor + (at >> 5) * row * 7) % size)] ?? "";
    return use(`u${at}`, [place(0, 1), place(1, 17), place(2, 29)], 1000 + ((at * 7919) % 97));
  });
  return { ...model, resources: ids.map((id) => ({ id, count: 1 })), uses, bundles: [] };
}

describe("a plan in a thread of its own", () => {
  it("is the best one, and better ones are told of on the way", async () => {
    const told: PlanSolution[] = [];
    const { solution } = startPlan(model, {
      seconds: 10,
      relativeGap: 0,
      onProgress: (sofar) => told.push(sofar),
    });
    expect(await solution).toMatchObject({
      choice: { uses: { build: 2 }, bundles: ["listing"] },
      netMinor: 90,
      boundMinor: 90,
      stopped: false,
    });
    expect(told.length).toBeGreaterThan(0);
    expect(told.at(-1)?.netMinor).toBe(90);
  });

  it("ends soon after it is stopped, with the best so far", async () => {
    const started = performance.now();
    const running = startPlan(hardModel(), { seconds: 60, relativeGap: 0, onProgress: () => running.stop() });
    const solution = await running.solution;
    expect(performance.now() - started).toBeLessThan(20_000);
    expect(solution.stopped).toBe(true);
    expect(solution.netMinor).toBeGreaterThan(0);
    expect(solution.boundMinor).toBeGreaterThanOrEqual(solution.netMinor);
  });

  it("rejects a model that contradicts itself", async () => {
    const { solution } = startPlan({ ...model, resources: [] }, { seconds: 1, relativeGap: 0 });
    await expect(solution).rejects.toThrow("which the model does not have");
  });
});
