import { readdirSync, readFileSync } from "node:fs";
import { afterAll, describe, expect, test } from "vitest";
import { moneyCalculators } from "./money-calculators.ts";
import { type Answer, failureText, missesOf, type ReferenceRow } from "./reference-rows.ts";

const folder = new URL("../../data/reference/", import.meta.url);
const rows = readdirSync(folder)
  .filter((name) => /^money-.*\.json$/.test(name))
  .flatMap((file) =>
    (JSON.parse(readFileSync(new URL(file, folder), "utf8")) as ReferenceRow[]).map((row) => ({ file, row })),
  );

function answerOf({ of, given }: ReferenceRow): Answer {
  const calculator = moneyCalculators[of];
  if (calculator === undefined) throw new Error(`nothing computes ${of}`);
  return calculator(given as never);
}

describe("money against published and separately derived figures", () => {
  test.each(rows.map(({ file, row }) => [row.id, row.source, file, row] as const))(
    "%s (%s)",
    (_id, _source, file, row) => {
      expect(Object.keys(row.expect).length, row.id).toBeGreaterThan(0);
      const misses = missesOf(row, answerOf(row));
      expect(misses, failureText(file, row, misses)).toEqual([]);
    },
  );

  test("there are enough rows, no two alike, and every calculator is used by one", () => {
    expect(rows.length).toBeGreaterThanOrEqual(55);
    expect(new Set(rows.map(({ row }) => row.id)).size).toBe(rows.length);
    const used = new Set(rows.map(({ row }) => row.of));
    expect(Object.keys(moneyCalculators).filter((name) => !used.has(name))).toEqual([]);
  });

  test("every row says why its tolerance is what it is, where it is from, and who computed it if nobody printed it", () => {
    for (const { row } of rows) {
      expect(row.tolWhy.length, row.id).toBeGreaterThan(4);
      expect(row.source.length, row.id).toBeGreaterThan(4);
      expect(row.at.length, row.id).toBeGreaterThan(0);
      if (row.kind === "computed") expect(row.by, row.id).not.toBeNull();
    }
  });

  test("no row rests on memory", () => {
    expect(
      rows.filter(({ row }) => /from memory|common practice/i.test(row.source)).map(({ row }) => row.id),
    ).toEqual([]);
  });

  test("a wrong answer is caught and named with its row and its source", () => {
    const found = rows.find(({ row }) => row.id === "tiers");
    if (found === undefined) throw new Error("the row tiers is gone");
    const misses = missesOf(found.row, { sellingMinor: 336, totalMinor: 335 });
    expect(misses).toHaveLength(1);
    const text = failureText(found.file, found.row, misses);
    for (const part of ["money-fees.json tiers", "expected 336", "got 335", "rainworx.com"])
      expect(text).toContain(part);
  });
});

afterAll(() => {
  const alone = rows.filter(({ row }) => row.crossCheck === null).length;
  console.info(`${rows.length} money reference rows, ${alone} of them without a cross-check`);
});
