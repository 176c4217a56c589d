import type { PlanAction } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { boughtParts, clubRoles } from "./club-roles.ts";

const plain: PlanAction = {
  do: "build",
  title: "driver",
  parts: [],
  sightings: [],
  netMinor: 0,
  outlayMinor: 0,
  minutes: 0,
  work: [],
  waitsFor: null,
};

describe("the parts of a club in a plan", () => {
  it("stand from head to grip, those that are bought with their listing", () => {
    const bought = boughtParts([{ ...plain, do: "buy", parts: ["offer-L1-head-2"], sightings: ["L1"] }]);
    const parts = new Map([
      ["S1", { id: "S1", kind: "shaft" } as const],
      ["G1", { id: "G1", kind: "grip" } as const],
    ]);
    const found = clubRoles({ ...plain, parts: ["S1", "G1", "offer-L1-head-2"] }, parts, bought);
    expect(found.map(({ role, id, sighting }) => [role, id, sighting])).toEqual([
      ["head", "offer-L1-head-2", "L1"],
      ["shaft", "S1", undefined],
      ["grip", "G1", undefined],
    ]);
  });

  it("show what is waited for as missing", () => {
    const waiting = {
      ...plain,
      waitsFor: { want: 'shaft {"suits":"wood"}', text: "a shaft", takeAtOrUnderMinor: 100 },
    };
    const parts = new Map([["H1", { id: "H1", kind: "head" } as const]]);
    expect(
      clubRoles({ ...waiting, parts: ["H1"] }, parts, new Map()).map(({ role, id }) => [role, id]),
    ).toEqual([
      ["head", "H1"],
      ["shaft", null],
    ]);
  });
});
