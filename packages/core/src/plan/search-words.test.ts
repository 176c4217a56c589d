import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Want } from "../resolve/result.ts";
import { searchWords } from "./search-words.ts";

const want = (kind: Want["kind"], needs: Want["needs"]): Want => ({
  ...{ id: "w", kind, needs, text: "", completes: [], count: 1 },
});
const catalogue: CatalogueModel[] = [
  {
    ...{ id: "ombrel", kind: "head", maker: "Northmoor", model: "Ombrel", aliases: ["Ombrel D"] },
    ...{ clubType: "driver", adapterFamily: "Quillon 2" },
  },
];

describe("words to search with", () => {
  it("name the family, and the models whose owners part with such a shaft", () => {
    const { any, without } = searchWords(
      want("shaft", { suits: "wood", "adapter.family": "Quillon 2", "adapter.hand": "right" }),
      catalogue,
    );
    expect(any).toEqual([
      ...["Quillon 2 wood shaft", "Quillon 2 adapter wood shaft"],
      ...["Northmoor Ombrel wood shaft", "Ombrel D wood shaft"],
    ]);
    expect(without).toEqual(expect.arrayContaining(["head only", "left handed"]));
  });

  it.each([
    [
      "a size as the trade writes it",
      want("shaft", { suits: "iron", "tip.diameterIn": 0.37 }),
      ".370 iron shaft",
    ],
    [
      "the type of head",
      want("head", { clubType: "driver", "socket.family": "Tarnlock" }),
      "Tarnlock driver head",
    ],
    ["every type where several would do", want("head", { clubType: ["driver", "hybrid"] }), "hybrid head"],
    ["the kind alone where nothing is known", want("grip", {}), "grip"],
    ["no word twice", want("adapter", { family: "Tarnlock" }), "Tarnlock adapter"],
  ])("name %s", (_what, wanted, phrase) => {
    expect(searchWords(wanted, []).any).toContain(phrase);
  });
});
