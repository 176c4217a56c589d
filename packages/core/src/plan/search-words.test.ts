import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import type { Want } from "../resolve/result.ts";
import { searchWords } from "./search-words.ts";

const want = (kind: Want["kind"], needs: Want["needs"]): Want => ({
  ...{ id: "w", kind, needs, text: "", completes: [], count: 1 },
});
const catalogue: CatalogueModel[] = [
  {
    ...{ id: "skerrick", kind: "head", maker: "Haldenbach", model: "Skerrick" },
    ...{ clubType: "hybrid", adapterFamily: "Quillon 2" },
  },
  {
    ...{ id: "other", kind: "head", maker: "Orvane", model: "Pallas", clubType: "driver" },
    adapterFamily: "Tarnlock",
  },
  {
    ...{ id: "ombrel", kind: "head", maker: "Northmoor", model: "Ombrel", aliases: ["Ombrel D"] },
    ...{ clubType: "driver", adapterFamily: "Quillon 2" },
  },
];

// What sellers write is common practice, no source.
describe("words to search with", () => {
  it.each<[string, Want, string[]]>([
    [
      "a head: its family, and the models of its type that take it",
      want("head", { clubType: "driver", "socket.family": "Quillon 2", hand: "right" }),
      ["Quillon 2 driver head", "Northmoor Ombrel driver head", "Ombrel D driver head"],
    ],
    [
      "a head of several types: each of them",
      want("head", { clubType: ["driver", "hybrid"], "socket.family": "Tarnlock" }),
      [
        ...["Tarnlock driver head", "Tarnlock hybrid head"],
        ...["Orvane Pallas driver head", "Orvane Pallas hybrid head"],
      ],
    ],
    [
      "a shaft: by the clubs it comes out of, and with the adapter on it",
      want("shaft", { suits: "hybrid", "adapter.family": "Quillon 2", "adapter.hand": "right" }),
      [
        ...["Quillon 2 hybrid shaft", "hybrid shaft with Quillon 2 adapter"],
        ...["Haldenbach Skerrick hybrid shaft", "Northmoor Ombrel hybrid shaft", "Ombrel D hybrid shaft"],
      ],
    ],
    [
      "a shaft for woods: as the shaft of a driver and of a fairway wood too",
      want("shaft", { suits: "wood", "adapter.family": "Brackwater" }),
      [
        ...["Brackwater driver shaft", "Brackwater fairway shaft", "Brackwater wood shaft"],
        ...["driver", "fairway", "wood"].map((type) => `${type} shaft with Brackwater adapter`),
      ],
    ],
    [
      "a shaft by its tip, as the trade writes it",
      want("shaft", { suits: "iron", "tip.diameterIn": 0.37 }),
      [".370 iron shaft"],
    ],
    [
      "an adapter: by both its names, and its bore",
      want("adapter", { family: "Brackwater", "bore.diameterIn": 0.335 }),
      ["Brackwater adapter", "Brackwater sleeve", ".335 adapter", ".335 sleeve"],
    ],
    ["a bored head: by its bore", want("head", { "socket.diameterIn": 0.355 }), [".355 head"]],
    ["a grip: by its core", want("grip", { coreDiameterIn: 0.6 }), [".600 grip"]],
    ["the kind alone where nothing is known", want("grip", {}), ["grip"]],
  ])("name %s", (_what, wanted, phrases) => {
    expect(searchWords(wanted, catalogue).any).toEqual(phrases);
  });

  it("say no word twice in a row, and no more than twelve phrases", () => {
    const aliases = Array.from({ length: 20 }, (_, at) => `Ombrel ${at} shaft`);
    const many = catalogue.map((model) => ({ ...model, aliases }));
    const { any } = searchWords(want("shaft", { "adapter.family": "Quillon 2" }), many);
    expect(any).toHaveLength(12);
    expect(any).toContain("Ombrel 0 shaft");
  });

  it.each<[string, Want, string[]]>([
    [
      "a right-handed head",
      want("head", { hand: "right" }),
      ["shaft only", "headcover only", "no head", "left handed", "left hand", "LH", "wanted"],
    ],
    [
      "a left-handed shaft",
      want("shaft", { "adapter.hand": "left" }),
      ["head only", "headcover only", "no shaft", "right handed", "right hand", "RH", "wanted"],
    ],
    [
      "an adapter for either hand",
      want("adapter", { hand: "either" }),
      ["head only", "no adapter", "wanted"],
    ],
    ["a grip", want("grip", {}), ["head only", "no grip", "wanted"]],
  ])("leave out what is not %s", (_what, wanted, words) => {
    expect(searchWords(wanted, catalogue).without).toEqual(words);
  });
});
