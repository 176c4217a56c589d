import { describe, expect, it } from "vitest";
import type { Want } from "../resolve/result.ts";
import { wantedThing } from "./wanted-things.ts";

const want = (kind: Want["kind"], needs: Want["needs"]): Want => ({
  ...{ id: "w", kind, needs, text: "", completes: [], count: 1 },
});

describe("a wanted thing", () => {
  it.each([
    [
      "of a choice is the first",
      want("head", { clubType: ["driver", "fairway"], "socket.family": "Quillon 2" }),
      [
        {
          id: "wanted-3-head",
          kind: "head",
          clubType: "driver",
          socket: { type: "receiver", family: "Quillon 2" },
        },
      ],
    ],
    [
      "with a bore has it as wanted",
      want("head", { "socket.diameterIn": 0.37, "socket.form": "parallel" }),
      [{ id: "wanted-3-head", kind: "head", socket: { type: "bore", diameterIn: 0.37, form: "parallel" } }],
    ],
    [
      "that is an adapter states its family and hand, and nothing else",
      want("adapter", { family: "Tarnlock", hand: "left" }),
      [{ id: "wanted-3-adapter", kind: "adapter", family: "Tarnlock", hand: "left" }],
    ],
    [
      "that is a bare shaft comes with a grip, and a little longer than the least",
      want("shaft", { suits: "iron", "length.lengthIn": { atLeast: 37 } }),
      [
        { id: "wanted-3-shaft", kind: "shaft", suits: "iron", length: { lengthIn: 37.25 } },
        { id: "wanted-3-grip", kind: "grip" },
      ],
    ],
  ])("%s", (_what, wanted, parts) => {
    expect(wantedThing(wanted, 3).parts).toEqual(parts);
  });

  it("that is a shaft with an adapter has it bonded on", () => {
    const { parts, joints } = wantedThing(want("shaft", { suits: "wood", "adapter.family": "Quillon 2" }), 1);
    expect(parts.map(({ kind }) => kind)).toEqual(["shaft", "adapter", "grip"]);
    expect(joints).toContainEqual({ type: "bonded", parts: ["wanted-1-adapter", "wanted-1-shaft"] });
  });
});
