import { afterAll, describe, expect, test } from "vitest";
import { computeRow, physicsCalculators } from "./physics-calculators.ts";
import { failureText, missesOf, physicsRows } from "./reference-rows.ts";

const rows = physicsRows();

describe("physics against published and separately derived figures", () => {
  test.each(rows.map(({ file, row }) => [row.id, row.source, file, row] as const))(
    "%s (%s)",
    (_id, _source, file, row) => {
      const misses = missesOf(row, computeRow(row.of, row.given));
      expect(misses, failureText(file, row, misses)).toEqual([]);
    },
  );

  test("there are enough rows, no two alike, and every calculator is used by one", () => {
    expect(rows.length).toBeGreaterThanOrEqual(75);
    expect(new Set(rows.map(({ row }) => row.id)).size).toBe(rows.length);
    const used = new Set(rows.map(({ row }) => row.of));
    expect(Object.keys(physicsCalculators).filter((name) => !used.has(name))).toEqual([]);
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

  test("a wrong answer is caught and named with its row, its tolerance and its source", () => {
    const found = rows.find(({ row }) => row.id === "example-club-moi");
    if (found === undefined) throw new Error("the row example-club-moi is gone");
    const misses = missesOf(found.row, { moiKgCm2: 2750 });
    expect(misses).toHaveLength(1);
    const text = failureText(found.file, found.row, misses);
    for (const part of [
      "physics-moi.json example-club-moi",
      "expected 2749.5 ± 0.05",
      "got 2750",
      "derived",
    ]) {
      expect(text).toContain(part);
    }
  });
});

afterAll(() => {
  const alone = rows.filter(({ row }) => row.crossCheck === null).length;
  console.info(`${rows.length} physics reference rows, ${alone} of them without a cross-check`);
});
