import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestPairs } from "./best-pairs.ts";

/** The most that any pairing comes to, by trying them all. */
function mostByTrying(weights: readonly (readonly number[])[], taken: readonly number[] = []): number {
  const [row, ...rest] = weights;
  if (row === undefined) return 0;
  const without = mostByTrying(rest, taken);
  const withOne = row.map((weight, column) =>
    taken.includes(column) ? 0 : weight + mostByTrying(rest, [...taken, column]),
  );
  return Math.max(without, ...withOne);
}

describe("bestPairs", () => {
  it.each([
    [[], []],
    [[[]], [null]],
    [[[5]], [0]],
    [[[1, 9]], [1]],
    [
      [[1], [9]],
      [null, 0],
    ],
    [
      [
        [9, 8],
        [8, 1],
      ],
      [1, 0],
    ],
  ])("pairs %j as %j", (weights, pairs) => expect(bestPairs(weights)).toEqual(pairs));

  it("comes to as much as the best of all pairings", () => {
    const table = fc
      .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
      .chain(([rows, columns]) => {
        const row = fc.array(fc.nat(9), { minLength: columns, maxLength: columns });
        return fc.array(row, { minLength: rows, maxLength: rows });
      });
    fc.assert(
      fc.property(table, (weights) => {
        const pairs = bestPairs(weights);
        const columns = pairs.filter((column) => column !== null);
        expect(new Set(columns).size).toBe(columns.length);
        const total = pairs.reduce<number>(
          (sum, column, row) => sum + (column === null ? 0 : weights[row]![column]!),
          0,
        );
        expect(total).toBe(mostByTrying(weights));
      }),
    );
  });
});
