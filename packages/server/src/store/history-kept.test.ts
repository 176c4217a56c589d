import { expect, it } from "vitest";
import { openDatabase } from "./database.ts";
import { forgetOld } from "./history-kept.ts";
import { openTables } from "./tables.ts";

const grip = { kind: "grip" } as const;
const dayMs = 86_400_000;

function openClocked() {
  let now = Date.UTC(2026, 0, 1);
  const tables = openTables(openDatabase(undefined), { now: () => now });
  const numbers = () => tables.history.list({ limit: 1_000_000 }).map(({ number }) => number);
  const change = (times: number) => {
    for (let time = 0; time < times; time += 1)
      tables.goals.write({ skill: tables.goals.read().skill === "bond" ? "screw" : "bond" });
  };
  return { tables, numbers, change, pass: (days: number) => (now += days * dayMs) };
}

it("keeps ten thousand changes, and forgets the oldest with their things a hundred at a time", () => {
  const { tables, numbers, change } = openClocked();
  change(10_099);
  expect(numbers()).toHaveLength(10_099);
  change(1);
  expect([numbers().at(0), numbers().at(-1)]).toEqual([10_100, 101]);
  expect(tables.history.entries(100)).toEqual([]);
  expect(tables.history.entries(101)).toHaveLength(1);
});

it("keeps no change for more than a year", () => {
  const { numbers, change, pass } = openClocked();
  change(50);
  pass(366);
  change(49);
  expect(numbers()).toHaveLength(99);
  change(1);
  expect(numbers().at(-1)).toBe(51);
});

it("keeps so many things, and the newest change whatever its size", () => {
  const { tables, numbers, change } = openClocked();
  const file = (from: number, count: number) =>
    tables.together(() => {
      for (let at = from; at < from + count; at += 1) tables.parts.insert({ ...grip, id: `g${at}` });
    });
  const forget = () => forgetOld(tables.history, tables.history.latest(), 1000, Date.UTC(2026, 0, 1), 300);
  change(3);
  file(0, 120);
  forget();
  expect(numbers()).toEqual([4, 3, 2, 1]);
  file(120, 190);
  forget();
  expect(numbers()).toEqual([5]);
  file(310, 400);
  forget();
  expect(numbers()).toEqual([6]);
});
