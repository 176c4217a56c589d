import { describe, expect, test } from "vitest";
import { addressTriangle } from "../../packages/core/src/measure/physics/address-triangle.ts";
import { cantileverRoot } from "../../packages/core/src/measure/physics/cantilever.ts";
import { judgeCase } from "../../packages/core/src/rules/cases.test-kit.ts";
import { gripCoreSuitsButt } from "../../packages/core/src/rules/grip-core-suits-butt.ts";
import { tipEntersBore } from "../../packages/core/src/rules/tip-enters-bore.ts";
import { physicsRows, physicsTables, type ReferenceTable } from "./reference-rows.ts";

const tables = physicsTables();

/** A men's standard grip 2 in below its cap, the first row of the ladder. */
const standardGripIn = tableNamed("grip-sizes").rows[0]?.[1] ?? Number.NaN;

function column(table: ReferenceTable, name: string): number[] {
  const at = table.columns.indexOf(name);
  if (at < 0) throw new Error(`${table.id} has no column ${name}`);
  return table.rows.map((row) => row[at] ?? Number.NaN);
}

function tableNamed(id: string): ReferenceTable {
  const table = tables.find((one) => one.id === id);
  if (table === undefined) throw new Error(`no table is named ${id}`);
  return table;
}

function stepsOf(values: readonly number[]): number[] {
  return values.slice(1).map((value, k) => value - (values[k] ?? Number.NaN));
}

function turns(steps: readonly number[]): number {
  return steps.slice(1).filter((step, k) => Math.sign(step) !== Math.sign(steps[k] ?? 0)).length;
}

describe("the tables are copied without a slip", () => {
  const columns = tables.flatMap((table) =>
    Object.entries(table.sanity).map(([name, sanity]) => ({ table, name, sanity })),
  );

  test.each(columns.map((one) => [one.table.id, one.name, one.sanity.direction, one] as const))(
    "%s: %s is %s, and its steps are as even as the source's",
    (_id, _name, direction, { table, name, sanity }) => {
      const steps = stepsOf(column(table, name));
      expect(steps.length).toBeGreaterThan(1);
      if (direction === "rising") expect(Math.min(...steps)).toBeGreaterThan(0);
      if (direction === "falling") expect(Math.max(...steps)).toBeLessThan(0);
      if (direction === "one-peak")
        expect([steps[0]! > 0, steps.at(-1)! < 0, turns(steps)]).toEqual([true, true, 1]);
      const spread = Math.max(...steps) - Math.min(...steps);
      expect(spread).toBeLessThanOrEqual((sanity.stepSpread ?? Number.POSITIVE_INFINITY) + 1e-9);
    },
  );

  test("every row is as wide as its heading", () => {
    expect(tables.length).toBeGreaterThan(3);
    for (const table of tables) {
      expect(table.rows.length, table.id).toBeGreaterThan(2);
      for (const row of table.rows) expect(row, table.id).toHaveLength(table.columns.length);
    }
  });
});

describe("our code against the whole tables", () => {
  test("the formula agrees with the whole table of roots within rounding", () => {
    for (const [massRatio = Number.NaN, root = Number.NaN] of tableNamed("cantilever-roots").rows) {
      expect(Math.abs(cantileverRoot({ massRatio }) - root), `mass ratio ${massRatio}`).toBeLessThanOrEqual(
        5.1e-7,
      );
    }
    for (const [mode = Number.NaN, root = Number.NaN] of tableNamed("bare-cantilever-roots").rows) {
      // The source prints seven halves of pi for the fourth, which is 0.00003 above the root before it is rounded.
      expect(Math.abs(cantileverRoot({ massRatio: 0, mode }) - root), `mode ${mode}`).toBeLessThanOrEqual(
        6e-5,
      );
    }
  });

  test("the triangle agrees with the whole table of heights and reaches within rounding", () => {
    const lengths = [39, 38.5, 38, 37.5, 37];
    for (const [k, [lieDeg = Number.NaN, heightIn, reachIn]] of tableNamed(
      "address-heights",
    ).rows.entries()) {
      const triangle = addressTriangle({ lengthIn: lengths[k] ?? Number.NaN, lieDeg });
      expect(Math.abs(triangle.heightIn - (heightIn ?? Number.NaN))).toBeLessThanOrEqual(0.0055);
      expect(Math.abs(triangle.reachIn - (reachIn ?? Number.NaN))).toBeLessThanOrEqual(0.0055);
    }
  });

  test("the grip rule names each size of the ladder that a core can stretch to, at the diameter that is printed", () => {
    const reached = tableNamed("grip-sizes").rows.flatMap(
      ([overIn = Number.NaN, diameterIn = Number.NaN]) => {
        const stretchIn = diameterIn - standardGripIn;
        const { verdict, data } = judgeCase(gripCoreSuitsButt, {
          coreDiameterIn: 0.6,
          buttDiameterIn: 0.6 + stretchIn,
        });
        if (verdict !== "fits" || data === undefined) return [];
        expect(data.outsideIn, `over by ${overIn} in`).toBe(diameterIn);
        return [{ overIn, size: data.size }];
      },
    );
    expect(reached).toEqual([
      { overIn: 1 / 64, size: "1/64 over" },
      { overIn: 1 / 32, size: "1/32 over" },
    ]);
  });

  test("the bore rule finds every sleeve of the table and the wall that was worked out for it", () => {
    const shims = physicsRows().filter(({ row }) => row.id.startsWith("shim-"));
    expect(shims).toHaveLength(4);
    for (const { row } of shims) {
      const outcome = judgeCase(tipEntersBore, row.given);
      expect(outcome.steps, row.id).toEqual([{ step: "shim", data: { wallIn: row.expect.wallIn } }]);
    }
  });
});
