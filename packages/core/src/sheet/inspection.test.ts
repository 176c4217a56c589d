import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Fault, faultNames } from "../parts/fault.ts";
import type { Part, PartKind } from "../parts/part.ts";
import { unsafeFaults } from "../worth/unsafe-faults.ts";
import {
  faultsFromAnswers,
  type InspectionAnswer,
  type InspectionRow,
  inspectedFaults,
  inspectionRowsFor,
} from "./inspection.ts";

const table = new URL("../../../../data/reference/inspection.json", import.meta.url);
const rows = JSON.parse(readFileSync(table, "utf8")) as InspectionRow[];
const kinds: readonly PartKind[] = ["head", "adapter", "shaft", "grip", "cover", "wrench"];

const shaft = (more: object = {}): Part => ({ id: "s", kind: "shaft", ...more });
const ids = (part: Part) => inspectionRowsFor(part, rows).map(({ id }) => id);

describe("the table of what to look at", () => {
  it("has words, a meaning and a source in every row, each with an id of its own", () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { id, question, look, meaning, source } of rows) {
      expect(question, id).toMatch(/\?$/);
      for (const text of [look, meaning, source]) expect(text.length, id).toBeGreaterThan(4);
    }
  });

  it("has something to look at on every kind of part, and asks about every fault of safety", () => {
    for (const kind of kinds) expect(rows.some((row) => row.kinds.includes(kind))).toBe(true);
    const asked = new Set(rows.flatMap(({ yes }) => yes));
    const unsafe = unsafeFaults([{ id: "x", kind: "shaft", faults: [...faultNames] }]);
    expect(unsafe.filter((fault) => !asked.has(fault))).toEqual([]);
  });

  it("says of the coin tap that a bright ring denies nothing (Tecnam P2002 maintenance manual 51-20)", () => {
    const tap = rows.find(({ id }) => id === "shaft-coin-tap");
    expect(tap).toMatchObject({ yes: ["crack"], no: [] });
    expect(tap?.limits).toMatch(/denies nothing/);
  });
});

describe("what there is to look at on a part", () => {
  it.each<[string, Part, readonly string[], readonly string[]]>([
    ["graphite", shaft({ material: "graphite" }), ["shaft-fibres", "shaft-coin-tap"], ["shaft-rust"]],
    ["steel", shaft({ material: "steel" }), ["shaft-rust"], ["shaft-fibres", "shaft-coin-tap"]],
    ["a material that nobody knows", shaft(), ["shaft-rust", "shaft-coin-tap"], ["head-rattle"]],
    ["a bored head", { id: "h", kind: "head", socket: { type: "bore" } }, ["head-loose"], ["head-receiver"]],
    [
      "a receiver",
      { id: "h", kind: "head", socket: { type: "receiver" } },
      ["head-receiver"],
      ["head-loose"],
    ],
  ])("of %s asks what it can have and no more", (_what, part, asked, not) => {
    expect(ids(part)).toEqual(expect.arrayContaining([...asked]));
    expect(ids(part).filter((id) => not.includes(id))).toEqual([]);
  });
});

describe("answers", () => {
  const says = (answers: Record<string, InspectionAnswer["answer"]>) => {
    const given = Object.entries(answers).map(([row, answer]) => ({ row, answer }));
    return faultsFromAnswers(given, inspectionRowsFor(shaft({ material: "graphite" }), rows));
  };

  it.each<[Record<string, InspectionAnswer["answer"]>, readonly Fault[], readonly Fault[]]>([
    [{}, [], []],
    [{ "shaft-dent": "yes" }, ["dent-shaft"], []],
    [{ "shaft-dent": "no" }, [], ["dent-shaft"]],
    [{ "shaft-dent": "unsure" }, [], []],
    [{ "shaft-coin-tap": "no" }, [], []],
    [{ "shaft-crack": "no", "shaft-coin-tap": "yes" }, ["crack"], []],
    [{ "shaft-crack": "no", "shaft-coin-tap": "unsure" }, [], ["crack"]],
  ])("%j assert %j and deny %j", (answers, asserted, denied) => {
    expect(says(answers)).toEqual({ asserted, denied });
  });
});

describe("a second look", () => {
  it.each<[readonly Fault[], readonly Fault[], readonly Fault[], object]>([
    [["sky-mark"], [], ["sky-mark"], { faults: [], deniedFaults: ["sky-mark"], toClear: [] }],
    [["crack"], [], ["crack"], { faults: ["crack"], deniedFaults: [], toClear: ["crack"] }],
    [["rust"], ["crack"], [], { faults: ["rust", "crack"], deniedFaults: [], toClear: [] }],
  ])(
    "at %j that finds %j and denies %j takes back marks, never a fault of safety",
    (faults, asserted, denied, left) => {
      expect(
        inspectedFaults({ faults: [...faults] }, { asserted: [...asserted], denied: [...denied] }),
      ).toEqual(left);
    },
  );

  it("asserts what was denied before", () => {
    expect(inspectedFaults({ deniedFaults: ["crack"] }, { asserted: ["crack"], denied: [] })).toEqual({
      faults: ["crack"],
      deniedFaults: [],
      toClear: [],
    });
  });
});
