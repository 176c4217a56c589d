import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Closeness, closenessOf } from "./closeness.ts";
import { type Subject, subjectSchema } from "./evidence.ts";
import { driverHead } from "./resale.test-kit.ts";

// What counts as close is common practice, no source.
describe("closenessOf", () => {
  const fairway: Subject = {
    kind: "head",
    maker: "Orvane",
    model: "Tern",
    clubType: "fairway",
    clubNumber: "3",
  };
  const iron: Subject = { kind: "club", maker: "Gormwell", model: "Rill", clubType: "iron", clubNumber: "7" };
  const shaft: Subject = {
    kind: "shaft",
    maker: "Vexholm",
    model: "Reedlace 60",
    clubType: "driver",
    adapter: "fitted",
    adapterFamily: "Quillon 2",
  };

  it.each<[string, Subject, Partial<Subject>, Closeness | null]>([
    ["the same thing", driverHead, {}, "same-model-and-condition"],
    [
      "the same in another case and spacing",
      driverHead,
      { maker: "NORTHMOOR", model: "quillon-2" },
      "same-model-and-condition",
    ],
    ["another condition", driverHead, { condition: "fair" }, "same-model"],
    ["a condition that is not known", driverHead, { condition: undefined }, "same-model"],
    ["another model of its age", driverHead, { model: "Tarnlock", year: 2024 }, "same-class-and-age"],
    ["another model of another age", driverHead, { model: "Tarnlock", year: 2025 }, "same-class"],
    ["another model of unknown age", driverHead, { model: "Tarnlock", year: undefined }, "same-class"],
    ["the name of the model ten years before", driverHead, { year: 2012 }, "same-class"],
    ["no model said", driverHead, { model: undefined }, "same-class-and-age"],
    ["the same model for the other hand", driverHead, { hand: "left" }, "same-class"],
    ["another model for the other hand", driverHead, { hand: "left", model: "Tarnlock" }, null],
    ["a hand that is not known", driverHead, { hand: undefined }, "same-model-and-condition"],
    ["another kind of thing", driverHead, { kind: "club" }, null],
    ["a head for another kind of club", driverHead, { clubType: "hybrid" }, null],
    ["another number of the same model", fairway, { clubNumber: "5" }, "same-class-and-age"],
    ["a set, for one iron", iron, { clubNumber: "4-PW" }, null],
    ["a number that is not known", iron, { clubNumber: undefined }, "same-model"],
    [
      "a bare shaft, for one with its adapter",
      shaft,
      { adapter: "none", adapterFamily: undefined },
      "same-class",
    ],
    ["a shaft with another adapter", shaft, { adapterFamily: "Tarnlock" }, "same-class"],
    ["a shaft out of a fairway wood", shaft, { clubType: "fairway" }, "same-model"],
    ["a shaft out of an iron", shaft, { clubType: "iron" }, null],
  ])("holds %s to be as close as it is", (_, subject, change, closeness) =>
    expect(closenessOf(subject, { ...subject, ...change })).toBe(closeness),
  );

  it("goes by the catalogue's model where both have one, and by words where one has none", () => {
    const one = { ...driverHead, modelId: "m1" };
    expect(closenessOf(one, { ...driverHead, modelId: "m2" })).toBe("same-class-and-age");
    expect(closenessOf(one, { ...driverHead, model: "Q2", modelId: "m1" })).toBe("same-model-and-condition");
    expect(closenessOf(one, driverHead)).toBe("same-model-and-condition");
  });

  it("is the same from either side", () => {
    const subjects = fc.record(
      {
        kind: fc.constantFrom("head" as const, "shaft" as const),
        model: fc.constantFrom("Quillon 2", "Tarnlock"),
        year: fc.constantFrom(2020, 2022, 2023),
        clubType: fc.constantFrom("driver" as const, "fairway" as const),
        clubNumber: fc.constantFrom("3", "5", "3-5"),
        hand: fc.constantFrom("right" as const, "left" as const),
        adapter: fc.constantFrom("fitted" as const, "none" as const),
        condition: fc.constantFrom("good" as const, "poor" as const),
      },
      { requiredKeys: ["kind"] },
    );
    fc.assert(
      fc.property(subjects, subjects, (one, other) => {
        expect(subjectSchema.safeParse(one).success).toBe(true);
        expect(closenessOf(one, other)).toBe(closenessOf(other, one));
      }),
    );
  });
});
