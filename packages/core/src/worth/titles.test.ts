import { describe, expect, it } from "vitest";
import type { Part } from "../parts/part.ts";
import { titleOfClub, titleOfPart } from "./titles.ts";

describe("what a part is called", () => {
  it.each<[Part, string]>([
    [
      { id: "H1", kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "driver", clubNumber: "1" },
      "Northmoor Ombrel driver head",
    ],
    [
      { id: "H2", kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "fairway", clubNumber: "3" },
      "Northmoor Ombrel 3 fairway head",
    ],
    [
      { id: "A1", kind: "adapter", maker: "Northmoor", model: "Quillon 2 adapter" },
      "Northmoor Quillon 2 adapter",
    ],
    [{ id: "A2", kind: "adapter" }, "adapter"],
    [{ id: "W1", kind: "wrench", model: "Quillon Wrench" }, "Quillon Wrench"],
  ])("%j is the %s", (part, title) => expect(titleOfPart(part)).toBe(title));
});

describe("what a club is called", () => {
  const head: Part = { id: "H1", kind: "head", model: "Ombrel", clubType: "driver", clubNumber: "1" };

  it("names the shaft where anything is known of it", () => {
    const shaft: Part = { id: "S1", kind: "shaft", model: "Reedlace 60", flex: "stiff" };
    expect(titleOfClub(head, shaft)).toBe("Ombrel driver with Reedlace 60 stiff shaft");
    expect(titleOfClub(head, { id: "S2", kind: "shaft" })).toBe("Ombrel driver");
  });
});
