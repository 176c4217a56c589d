import { describe, expect, it } from "vitest";
import type { LinearSolver } from "./linear-solver.ts";
import type { Bundle, PlanModel, Use } from "./plan-model.ts";
import { solvePlan } from "./solve-plan.ts";

/** No solver at all: what is found is by search, and the bound by what needs none. */
const noSolver: LinearSolver = async () => ({
  status: "failed",
  values: null,
  objective: null,
  bound: null,
  prices: null,
});
const options = { seconds: 1, relativeGap: 0, now: () => 0 };
const solve = (model: PlanModel) => solvePlan(model, noSolver, options);

const use = (id: string, resources: readonly string[], netMinor: number, more: Partial<Use> = {}): Use => ({
  id,
  takes: resources.map((resource) => ({ resource, count: 1 })),
  netMinor,
  minutes: 0,
  outlayMinor: 0,
  ...more,
});

const bundle = (id: string, resources: readonly string[], priceMinor: number, trip?: string): Bundle => ({
  id,
  gives: resources.map((resource) => ({ resource, count: 1 })),
  priceMinor,
  minutes: 0,
  timeMinor: 0,
  ...(trip === undefined ? {} : { trip }),
});

const model = (given: Partial<PlanModel>): PlanModel => ({
  resources: [
    { id: "head", count: 1 },
    { id: "shaft", count: 1 },
    { id: "adapter", count: 0 },
  ],
  uses: [use("build", ["head", "shaft"], 50)],
  bundles: [],
  trips: [],
  limits: { budgetMinor: null, minutes: null, mostOfKind: {} },
  ...given,
});

describe("a plan", () => {
  it("is empty where nothing pays", async () => {
    const solution = await solve(model({ uses: [use("sell the head", ["head"], -3)] }));
    expect(solution).toEqual({
      choice: { uses: {}, bundles: [] },
      netMinor: 0,
      boundMinor: 0,
      gap: 0,
      binding: [],
      method: "relaxation",
      stopped: false,
    });
  });

  it("puts a part where it brings most, not where it was put first", async () => {
    const uses = [use("a", ["head"], 40), use("build", ["head", "shaft"], 50), use("b", ["shaft"], 20)];
    expect((await solve(model({ uses }))).choice.uses).toEqual({ a: 1, b: 1 });
  });

  it("pays a drive once for everything it fetches, and only if all of it together is worth the drive", async () => {
    const uses = [use("one", ["adapter", "head"], 30), use("two", ["adapter", "shaft"], 30)];
    const bundles = [bundle("x", ["adapter"], 10, "town"), bundle("y", ["adapter"], 10, "town")];
    const drive = (moneyMinor: number) =>
      model({ uses, bundles, trips: [{ id: "town", moneyMinor, minutes: 0, timeMinor: 0 }] });
    expect(await solve(drive(25))).toMatchObject({ netMinor: 15, choice: { bundles: ["x", "y"] } });
    expect(await solve(drive(41))).toMatchObject({ netMinor: 0, choice: { bundles: [] } });
  });

  it("does not take what has to be fetched for what comes by itself, however alike", async () => {
    const uses = [use("one", ["adapter", "head"], 30), use("two", ["adapter", "shaft"], 30)];
    const bundles = [bundle("x", ["adapter"], 10, "town"), bundle("y", ["adapter"], 10)];
    const drive = (moneyMinor: number) =>
      solve(model({ uses, bundles, trips: [{ id: "town", moneyMinor, minutes: 0, timeMinor: 0 }] }));
    expect(await drive(5)).toMatchObject({ netMinor: 35, choice: { bundles: ["x", "y"] } });
    expect(await drive(25)).toMatchObject({ netMinor: 20, choice: { bundles: ["y"] } });
  });

  it("buys what is sold together whole", async () => {
    const bundles = [bundle("lot", ["adapter", "shaft"], 35)];
    const uses = [use("build", ["head", "adapter"], 30), use("sell a shaft", ["shaft"], 10)];
    expect(await solve(model({ uses, bundles }))).toMatchObject({
      netMinor: 15,
      choice: { uses: { build: 1, "sell a shaft": 2 }, bundles: ["lot"] },
    });
  });

  it("keeps to the budget, to the minutes and to the most of a kind", async () => {
    const uses = [
      use("a", ["head"], 50, { outlayMinor: 8, minutes: 30, kind: "driver" }),
      use("b", ["shaft"], 40, { outlayMinor: 5, minutes: 20, kind: "driver" }),
    ];
    const limited = (limits: Partial<PlanModel["limits"]>) =>
      solve(model({ uses, limits: { budgetMinor: null, minutes: null, mostOfKind: {}, ...limits } }));
    expect((await limited({})).netMinor).toBe(90);
    expect((await limited({ budgetMinor: 12 })).netMinor).toBe(50);
    expect((await limited({ budgetMinor: 7 })).netMinor).toBe(40);
    expect((await limited({ minutes: 25 })).netMinor).toBe(40);
    expect((await limited({ mostOfKind: { driver: 1 } })).netMinor).toBe(50);
  });

  it("stopped at once is what was found at once, with a bound that holds", async () => {
    const stopped = await solvePlan(model({}), noSolver, { ...options, shouldStop: () => true });
    expect(stopped.netMinor).toBeLessThanOrEqual(50);
    expect(stopped.boundMinor).toBeGreaterThanOrEqual(50);
  });

  it.each([
    ["a use of what there is not", { uses: [use("build", ["grip"], 5)] }, "names grip"],
    ["a use that takes nothing", { uses: [use("dream", [], 5)] }, "takes nothing"],
    ["half a minor unit", { uses: [use("build", ["head"], 0.5)] }, "not whole minor units"],
    ["a price below zero", { bundles: [bundle("lot", ["head"], -1)] }, "not zero or more"],
    ["a drive that is not described", { bundles: [bundle("lot", ["head"], 1, "town")] }, "names town"],
    ["a count that is no count", { resources: [{ id: "head", count: 0.5 }], uses: [] }, "not a count"],
    ["two uses of one name", { uses: [use("a", ["head"], 1), use("a", ["shaft"], 1)] }, "two of use a"],
  ])("of a model with %s is a bug of whoever made the model", async (_what, given, message) => {
    await expect(solve(model(given))).rejects.toThrow(message);
  });
});
