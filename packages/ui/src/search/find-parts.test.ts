import type { Joint, Part } from "@ferrule/core";
import { expect, test } from "vitest";
import { noFilter, partFinder } from "./find-parts.ts";

const parts = [
  { id: "s1", kind: "shaft", maker: "Larkspindle", model: "Reed", flex: "stiff" },
  { id: "h1", kind: "head", maker: "Northmoor", model: "Drover", clubType: "driver", hand: "right" },
  { id: "h2", kind: "head", maker: "Northmoor", model: "Fell", clubType: "iron", hand: "left" },
] as unknown as readonly Part[];
const joints = [{ id: "j1", type: "glued", parts: ["s1", "h1"] }] as unknown as readonly Joint[];

const cases = [
  { title: "everything, kind by kind as a club is put together", filter: {}, ids: ["h1", "h2", "s1"] },
  { title: "words in any order", filter: { text: "drover north" }, ids: ["h1"] },
  { title: "a slip of the finger", filter: { text: "northmor" }, ids: ["h1", "h2"] },
  { title: "one kind", filter: { kind: "shaft" }, ids: ["s1"] },
  { title: "what is joined to nothing", filter: { joined: "loose" }, ids: ["h2"] },
  { title: "a text within what else is asked", filter: { text: "northmoor", hand: "left" }, ids: ["h2"] },
  { title: "nothing where nothing is like it", filter: { text: "zzzz" }, ids: [] },
];

test.each(cases)("finds $title", ({ filter, ids }) => {
  expect(partFinder(parts, joints)({ ...noFilter, ...filter }).map(({ id }) => id)).toEqual(ids);
});

test("finds the same however often it was asked before", () => {
  const find = partFinder(parts, joints);
  const ask = (text: string) => find({ ...noFilter, text }).map(({ id }) => id);
  const first = ask("fell");
  ask("reed");
  expect(first).toEqual(["h2"]);
  expect(ask("fell")).toEqual(first);
});
