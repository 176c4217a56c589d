import type { Part } from "@ferrule/core";
import { expect, it } from "vitest";
import { openDatabase } from "../store/database.ts";
import { openTables } from "../store/tables.ts";
import { openBench } from "./bench.ts";

const open = () => openBench(openTables(openDatabase(undefined)), () => ({}) as never);
const grip = (id?: string) => ({ kind: "grip", ...(id && { id }) }) as Part;

it("gives things without an id the first free numbers, those that come with one among them", () => {
  const bench = open();
  bench.parts.takeIn([grip(), grip("grip-3"), grip(), grip("grip-2"), grip()]);
  expect(bench.parts.all().map(({ id }) => id)).toEqual(["grip-1", "grip-3", "grip-2", "grip-4"]);
});

it("gives a number again whose thing has gone, and none that something elsewhere names", () => {
  const bench = open();
  bench.parts.takeIn([grip(), grip(), grip()]);
  bench.parts.remove("grip-2");
  expect(bench.parts.add(grip())).toMatchObject({ ok: true, value: { id: "grip-2" } });
});

// A pass over all earlier numbers for each of 20,000 things would be 200 million looks, which takes minutes.
it("takes in thousands of things without an id in the time that writing them takes", () => {
  const bench = open();
  const began = performance.now();
  bench.parts.takeIn(Array.from({ length: 20_000 }, () => grip()));
  expect(bench.parts.all().at(-1)?.id).toBe("grip-20000");
  expect(performance.now() - began).toBeLessThan(15_000);
});
