import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it, test } from "vitest";
import { greedyDraft } from "../../packages/core/src/plan/greedy-plan.ts";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";
import { planProgramme } from "../../packages/core/src/plan/plan-programme.ts";
import { readyPacking } from "../../packages/core/src/plan/ready-packing.ts";
import { solvePlan } from "../../packages/core/src/plan/solve-plan.ts";
import { loadHighsSolver } from "../../packages/server/src/plan/highs-solver.ts";
import { drawnPacking, packingModel, parkMiller, threeIndex } from "../oracle/plan-packings.ts";

interface Row {
  readonly id: string;
  readonly of: keyof typeof calculators;
  readonly given: never;
  readonly expect: Readonly<Record<string, number>> & { readonly choices?: readonly (readonly number[])[] };
  readonly tol: { readonly abs: number };
  readonly source: string;
  readonly at: string;
}

const rows: Row[] = JSON.parse(
  readFileSync(new URL("../../data/reference/packing.json", import.meta.url), "utf8"),
);

let highs: LinearSolver;
beforeAll(async () => {
  highs = await loadHighsSolver();
});

interface Sets {
  readonly sets: readonly (readonly number[])[];
  readonly weights: readonly number[];
}
interface Drawn {
  readonly seed: number;
  readonly sets: number;
  readonly things: number;
}
type Figure = { readonly value: number; readonly chosen?: readonly number[] };

const solve = (model: PlanModel) =>
  solvePlan(model, highs, { seconds: 20, relativeGap: 0, now: () => performance.now() });

async function best(model: PlanModel): Promise<Figure> {
  const { netMinor, boundMinor, choice } = await solve(model);
  expect(boundMinor).toBe(netMinor);
  const chosen = Object.keys(choice.uses).map((id) => Number(id.split(" ")[1]));
  return { value: netMinor, chosen: chosen.sort((a, b) => a - b) };
}

async function relaxed(model: PlanModel): Promise<Figure> {
  const packing = readyPacking(model);
  const all = packing.uses.map((_, place) => place);
  const answer = await highs(planProgramme(packing, all, false).programme, { seconds: 20, relativeGap: 0 });
  return { value: answer.objective! };
}

const greedy = async (model: PlanModel): Promise<Figure> => ({
  value: greedyDraft(readyPacking(model)).net,
});

const packing = ({ sets, weights }: Sets) => packingModel(sets, weights);
const drawn = ({ seed, sets, things }: Drawn) => drawnPacking(seed, sets, things);
const most = ({ n }: { n: number }) => threeIndex(n, (cost) => cost);

const calculators = {
  packing: (given: Sets) => best(packing(given)),
  "packing-relaxed": (given: Sets) => relaxed(packing(given)),
  "packing-greedy": (given: Sets) => greedy(packing(given)),
  drawn: (given: Drawn) => best(drawn(given)),
  "drawn-relaxed": (given: Drawn) => relaxed(drawn(given)),
  "drawn-greedy": (given: Drawn) => greedy(drawn(given)),
  "three-index-most": (given: { n: number }) => best(most(given)),
  "three-index-greedy": (given: { n: number }) => greedy(most(given)),
  // What a triple costs is taken from more than any costs, so that the best leaves nothing out and n × 100 less it is the least.
  "three-index-least": async ({ n }: { n: number }): Promise<Figure> => ({
    value: n * 100 - (await best(threeIndex(n, (cost) => 100 - cost))).value,
  }),
  generator: async ({ seed, steps }: { seed: number; steps: number }): Promise<Figure> => {
    const next = parkMiller(seed);
    for (let step = 1; step < steps; step += 1) next();
    return { value: next() };
  },
};

describe("plans against published and separately derived packings", () => {
  test.each(rows.map((row) => [row.id, row.source, row] as const))("%s (%s)", async (_id, _source, row) => {
    const { choices, ...figures } = row.expect;
    const { value, chosen } = await calculators[row.of](row.given);
    expect(Object.keys(figures)).toHaveLength(1);
    for (const expected of Object.values(figures))
      expect(Math.abs(value - expected), `${value} for ${expected}, ${row.at}`).toBeLessThanOrEqual(
        row.tol.abs,
      );
    if (choices !== undefined) expect(choices).toContainEqual(chosen);
  });

  it("finds less once the only best choice is broken up", async () => {
    const row = rows.find(({ id }) => id === "sixteen-sets")!;
    const { sets, weights } = row.given as Sets;
    for (const without of row.expect.choices![0]!) {
      const keep = <T>(list: readonly T[]) => list.filter((_, at) => at !== without);
      expect((await best(packingModel(keep(sets), keep(weights)))).value).toBeLessThan(214);
    }
  });

  it("has rows of every sort and none of an unknown one", () => {
    expect(new Set(rows.map((row) => row.of))).toEqual(new Set(Object.keys(calculators)));
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });
});
