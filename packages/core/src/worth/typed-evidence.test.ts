import { describe, expect, it } from "vitest";
import type { Evidence } from "./evidence.ts";
import { modelFinder } from "./model-finder.ts";
import { typedEvidence } from "./typed-evidence.ts";

const finder = modelFinder([
  { id: "ombrel", kind: "head", maker: "Northmoor", model: "Ombrel", clubType: "driver" },
]);
const row = (more: Partial<Evidence>): Evidence => ({
  ...{ id: "E1", on: "2026-10-04", what: "sold", kind: "club" },
  ...{ price: { amountMinor: 9500, currency: "EUR" } },
  ...more,
});

describe("typedEvidence", () => {
  it.each([
    ["takes the type from the model", { modelId: "ombrel" }, "driver"],
    ["leaves a type that was noted", { modelId: "ombrel", clubType: "fairway" }, "fairway"],
    ["knows no type of a model that is not in the catalogue", { modelId: "other" }, undefined],
    ["knows no type without a model", {}, undefined],
  ] as const)("%s", (_name, given, clubType) => {
    expect(typedEvidence([row(given)], finder)[0]?.clubType).toBe(clubType);
  });
});
