import type { Adapter, Head, Joint, Part, Shaft } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { partKinds } from "./part-kinds.ts";
import { placeGroups } from "./together-layout.ts";
import { linksOfWays, throughKind, together } from "./together-links.ts";

const head = (id: string, family: string): Head => ({
  id,
  kind: "head",
  clubType: "driver",
  hand: "right",
  socket: { type: "receiver", family },
});
const bored: Head = {
  id: "H9",
  kind: "head",
  clubType: "iron",
  hand: "left",
  socket: { type: "bore", diameterIn: 0.3735 },
};
const adapter = (id: string, family: string): Adapter => ({
  id,
  kind: "adapter",
  family,
  hand: "right",
  bore: { diameterIn: 0.339 },
});
const shaft = (id: string, diameterIn: number): Shaft => ({
  id,
  kind: "shaft",
  suits: "wood",
  tip: { diameterIn },
});
const parts: readonly Part[] = [
  head("H1", "alder"),
  head("H2", "alder"),
  head("H3", "birch"),
  bored,
  adapter("A1", "alder"),
  adapter("A2", "birch"),
  shaft("S1", 0.335),
  shaft("S2", 0.3345),
  shaft("S3", 0.37),
];
const joints: readonly Joint[] = [{ id: "J", type: "bonded", parts: ["A1", "S1"] }];
const tried = [
  { head: "H1", adapter: "A1", shaft: "S1", verdict: "fits" },
  { head: "H2", adapter: "A1", shaft: "S1", verdict: "fits" },
  { head: "H2", adapter: "A1", shaft: "S2", verdict: "fits-with-work" },
  { head: "H3", adapter: "A1", shaft: "S1", verdict: "does-not-fit" },
  { head: "H3", adapter: "A2", shaft: "S2", verdict: "unsettled" },
  { head: "H9", adapter: null, shaft: "S3", verdict: "fits-with-work" },
] as const;

describe("partKinds", () => {
  it("puts parts that join alike into one box, and keeps a shaft that is bonded apart", () => {
    const { groups, keyOf } = partKinds(parts, joints);
    expect(keyOf.get("H1")).toBe(keyOf.get("H2"));
    expect(keyOf.get("H1")).not.toBe(keyOf.get("H3"));
    expect(keyOf.get("S1")).not.toBe(keyOf.get("S2"));
    expect(groups.find(({ parts: own }) => own.includes("H1"))?.parts).toEqual(["H1", "H2"]);
  });

  it("counts sizes that are read a little apart as one", () => {
    const { keyOf } = partKinds(parts, []);
    expect(keyOf.get("S1")).toBe(keyOf.get("S2"));
    expect(keyOf.get("S1")).not.toBe(keyOf.get("S3"));
  });
});

describe("together", () => {
  const whole = together(parts, joints, tried);

  it("keeps the best verdict of every way, and counts the clubs that have it", () => {
    expect(whole.ways.map(({ verdict, count }) => [verdict, count])).toEqual([
      ["fits", 2],
      ["fits-with-work", 1],
      ["fits-with-work", 1],
      ["unsettled", 1],
      ["does-not-fit", 1],
    ]);
  });

  it("draws each line as the best that goes along it, and marks what is joined", () => {
    const line = (from: string, to: string) =>
      whole.links.find((link) => link.from.includes(from) && link.to.includes(to));
    expect(line("alder", "alder adapter")).toMatchObject({ verdict: "fits", isJoined: false });
    expect(line("alder adapter", "bonded")).toMatchObject({ verdict: "fits", isJoined: true });
    expect(line("birch", "alder adapter")).toMatchObject({ verdict: "does-not-fit" });
  });

  it("has a box between a bored head and its shaft that says straight in", () => {
    const way = whole.ways.find(({ head: { title } }) => title.startsWith("Iron"));
    expect(way?.between).toMatchObject({ lines: ["straight in", "bore .375"], parts: [] });
  });

  it("shows the ways of one kind alone", () => {
    const birch = whole.groups.find(({ title }) => title === "Driver, right, birch");
    const ways = throughKind(whole, birch?.key);
    expect(ways.map(({ verdict }) => verdict)).toEqual(["unsettled", "does-not-fit"]);
    expect(linksOfWays(whole, ways)).toHaveLength(4);
    expect(throughKind(whole, undefined)).toHaveLength(5);
  });

  it("leaves out what it does not know of", () => {
    expect(together([], [], tried).ways).toEqual([]);
  });
});

describe("placeGroups", () => {
  const whole = together(parts, joints, tried);

  it("gives every box that has a line a row of its own", () => {
    const placed = placeGroups(whole.groups, whole.links);
    for (const column of ["head", "between", "shaft"] as const)
      expect(placed[column].map(({ row }) => row)).toEqual(placed[column].map((_, at) => at));
    expect(placed.head).toHaveLength(3);
  });

  it("shows no box without a line, and no more of them than a column holds", () => {
    expect(placeGroups(whole.groups, []).head).toEqual([]);
    const many = Array.from({ length: 50 }, (_, at) => head(`H${at}`, `family ${at}`));
    const wide = together(
      [...many, adapter("A1", "alder"), shaft("S1", 0.335)],
      [],
      many.map(({ id }) => ({ head: id, adapter: "A1", shaft: "S1", verdict: "fits" as const })),
    );
    expect(placeGroups(wide.groups, wide.links).head).toHaveLength(30);
  });
});
