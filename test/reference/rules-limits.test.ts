import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { rules } from "../../packages/core/src/index.ts";
import { judgeCase } from "../../packages/core/src/rules/cases.test-kit.ts";

interface LimitRow {
  readonly id: string;
  /** The id of the rule that is held to the limit. */
  readonly of: string;
  /** Facts by the rule's short names; a number of a part is a measured reading, good to 0.0005. */
  readonly given: Readonly<Record<string, unknown>>;
  readonly expect: { readonly verdict: string };
  readonly source: string;
  readonly at: string;
  readonly kind: "printed";
  readonly crossCheck: string | null;
}

const rows: readonly LimitRow[] = JSON.parse(
  readFileSync(new URL("../../data/reference/rules-limits.json", import.meta.url), "utf8"),
);

/** Every rule that says a limit of the Rules of Golf. */
const limitRules = rules.map(({ id }) => id).filter((id) => /-within-(local-)?rules?$/.test(id));

describe("limits of the Rules of Golf as they are published", () => {
  test.each(rows.map((row) => [row.id, row.source, row.at, row] as const))(
    "%s (%s, %s)",
    (_id, _source, _at, row) => {
      const rule = rules.find(({ id }) => id === row.of);
      if (rule === undefined) throw new Error(`no rule is called ${row.of}`);
      expect(judgeCase(rule, row.given).verdict).toBe(row.expect.verdict);
    },
  );

  test("every rule about the Rules has rows inside, on and outside its limit", () => {
    expect(limitRules.length).toBeGreaterThanOrEqual(6);
    for (const id of limitRules) {
      const ends = rows.filter((row) => row.of === id).map((row) => row.id.split("-").at(-1));
      expect(ends, id).toEqual(expect.arrayContaining(["inside", "on", "outside"]));
    }
  });

  test("no two rows are alike, and none rests on memory", () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    expect(rows.filter(({ source }) => source === "" || /from memory|common practice/i.test(source))).toEqual(
      [],
    );
  });
});
