import type { LinearProgramme, LinearSolver } from "@ferrule/core";
import { beforeAll, describe, expect, it } from "vitest";
import { loadHighsSolver } from "./highs-solver.ts";

let highs: LinearSolver;
beforeAll(async () => {
  highs = await loadHighsSolver();
});

const { NEGATIVE_INFINITY: low, POSITIVE_INFINITY: high } = Number;
const effort = { seconds: 5, relativeGap: 0 };

/** Greatest 3x + 2y with x + y at most 4, 3x + y at most 9.5 and y at most 1. */
const programme = (whole: boolean): LinearProgramme => ({
  columns: [
    { cost: 3, bounds: { low: 0, high }, whole },
    { cost: 2, bounds: { low: 0, high: 1 }, whole },
  ],
  rows: [row(4, [1, 1]), row(9.5, [3, 1])],
});

function row(most: number, factors: readonly number[]): LinearProgramme["rows"][number] {
  return { bounds: { low, high: most }, entries: factors.map((factor, column) => ({ column, factor })) };
}

describe("HiGHS", () => {
  it("gives the best, and what one more of each limit would bring", async () => {
    const answer = await highs(programme(false), effort);
    expect(answer.status).toBe("best");
    expect(answer.objective).toBeCloseTo(10.5, 6);
    expect(answer.values?.[0]).toBeCloseTo(17 / 6, 6);
    expect(answer.prices?.[0]).toBeCloseTo(0, 6);
    expect(answer.prices?.[1]).toBeCloseTo(1, 6);
  });

  it("gives the best in whole numbers with its bound, from a start as well", async () => {
    for (const start of [undefined, [1, 1]]) {
      const answer = await highs(programme(true), { ...effort, ...(start === undefined ? {} : { start }) });
      expect(answer).toMatchObject({ status: "best", objective: 9, prices: null });
      expect(answer.bound).toBeCloseTo(9, 6);
    }
  });

  it("says what is impossible, unbounded or malformed instead of throwing", async () => {
    const { columns } = programme(false);
    const statusOf = async (given: LinearProgramme) => (await highs(given, effort)).status;
    expect(await statusOf({ columns, rows: [{ ...row(-1, [1, 1]) }] })).toBe("impossible");
    expect(await statusOf({ columns, rows: [] })).toBe("unbounded");
    expect(await statusOf({ columns, rows: [row(Number.NaN, [1, 1])] })).toBe("failed");
    expect(await statusOf({ columns, rows: [row(1, [1, 1, 1])] })).toBe("failed");
  });

  it("works on after a programme that it could not read", async () => {
    await highs({ columns: [], rows: [row(1, [1])] }, effort);
    expect((await highs(programme(false), effort)).objective).toBeCloseTo(10.5, 6);
  });
});
