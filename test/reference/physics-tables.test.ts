import { describe, expect, test } from "vitest";
import { addressTriangle } from "../../packages/core/src/measure/physics/address-triangle.ts";
import { cantileverRoot } from "../../packages/core/src/measure/physics/cantilever.ts";
import { physicsTables, type ReferenceTable } from "./reference-rows.ts";

const tables = physicsTables();

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

describe("transcribed tables", () => {
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
    for (const table of tables) {
      for (const row of table.rows) expect(row, table.id).toHaveLength(table.columns.length);
    }
  });

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

  test("the grip sizes are the standard 0.900 in and their fraction of an inch, to the 0.005 in they are printed to", () => {
    for (const [overIn = Number.NaN, diameterIn = Number.NaN] of tableNamed("grip-sizes").rows) {
      expect(Math.abs(0.9 + overIn - diameterIn), `over by ${overIn} in`).toBeLessThanOrEqual(0.0025 + 1e-9);
    }
  });
});
