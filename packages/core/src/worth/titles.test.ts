import { describe, expect, it } from "vitest";
import type { ListingItem } from "../listing/listing.ts";
import type { Part } from "../parts/part.ts";
import { anItem } from "./deal.test-kit.ts";
import { titleOfClub, titleOfItem, titleOfPart } from "./titles.ts";

describe("what a part is called", () => {
  it.each<[Part, string]>([
    [
      { id: "H1", kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "driver", clubNumber: "1" },
      "Northmoor Ombrel driver head",
    ],
    [
      { id: "H2", kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "fairway", clubNumber: "3" },
      "Northmoor Ombrel 3 wood head",
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

describe("what an item is called", () => {
  it.each<[Partial<ListingItem>, string]>([
    [{ kind: "adapter", maker: "Northmoor", model: "Quillon 2 adapter" }, "Northmoor Quillon 2 adapter"],
    [{ kind: "head", clubType: "driver", clubNumber: "1", loftDeg: 9 }, "driver head, 9°"],
    [{ kind: "head", clubType: "driver", quantity: 3 }, "3 driver heads"],
    [{ kind: "shaft", quantity: 2, flex: "stiff" }, "2 shafts, stiff"],
    [{ kind: "wrench", quantity: 2 }, "2 wrenches"],
    [{ kind: "club", model: "Ombrel", clubType: "fairway", clubNumber: "5" }, "Ombrel 5 wood"],
    [{ kind: "club", clubType: "fairway" }, "fairway"],
    [{ kind: "club", clubType: "hybrid", clubNumber: "4" }, "4 hybrid"],
    [{ kind: "club", clubType: "iron", clubNumber: "4-PW" }, "4-PW irons"],
    [{ kind: "club", clubType: "iron", clubNumber: "4-PW", quantity: 2 }, "2 × 4-PW irons"],
    [{ kind: "club", clubType: "iron", clubNumber: "7" }, "7 iron"],
    [{ kind: "club", clubType: "iron", clubNumber: "7", quantity: 2 }, "2 × 7 irons"],
  ])("%j is the %s", (said, title) => expect(titleOfItem(anItem(said))).toBe(title));
});
