import type { PlanModel } from "@ferrule/core";
import { expect, it } from "vitest";
import { loadHighsSolver } from "../plan/highs-solver.ts";
import { solverWithin } from "./solver-within.ts";

/** Triples of which so many are equally good that proving the best takes long. */
function hardModel(): PlanModel {
  const size = 40;
  const ids = Array.from({ length: size * 3 }, (_, at) => `r${at}`);
  const uses = Array.from({ length: 3000 }, (_, at) => {
    const place = (row: number, factor: number) =>
      ids[row * size + ((at * factor + (at >> 5) * row * 7) % size)] ?? "";
    const takes = [place(0, 1), place(1, 17), place(2, 29)].map((resource) => ({ resource, count: 1 }));
    return { id: `u${at}`, takes, netMinor: 1000 + ((at * 7919) % 97), minutes: 0, outlayMinor: 0 };
  });
  return {
    resources: ids.map((id) => ({ id, count: 1 })),
    uses,
    bundles: [],
    trips: [],
    limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
  };
}

it("ends soon after it is stopped, with the best so far", async () => {
  let isStopped = false;
  const solve = solverWithin(await loadHighsSolver(), 60, () => isStopped);
  const started = performance.now();
  const onProgress = () => {
    isStopped = true;
  };
  const solution = await solve(hardModel(), { share: 1, relativeGap: 0, onProgress });
  expect(performance.now() - started).toBeLessThan(20_000);
  expect(solution.stopped).toBe(true);
  expect(solution.netMinor).toBeGreaterThan(0);
  expect(solution.boundMinor).toBeGreaterThanOrEqual(solution.netMinor);
});

it("shares its time among all that it is given, however long the first takes", async () => {
  const solve = solverWithin(await loadHighsSolver(), 2, () => false);
  const started = performance.now();
  for (const share of [0.7, 0.5, 1, 1]) await solve(hardModel(), { share, relativeGap: 0 });
  expect(performance.now() - started).toBeLessThan(15_000);
});
