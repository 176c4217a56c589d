import type { Adapter, Head, Shaft } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { asReamed, jointClashes } from "./joint-clashes.ts";
import { type JointFacts, jointFacts } from "./joint-facts.ts";
import { bondLineIn, jointSection } from "./joint-section.ts";
import { jointRows, jointSentence } from "./joint-words.ts";

const bore: JointFacts = {
  holder: "bore",
  tipIn: 0.335,
  boreIn: 0.339,
  depthIn: 1.25,
  isThrough: false,
};
const refusal = (code: string) => jointClashes([{ verdict: "does-not-fit", code, text: `because ${code}` }]);

describe("bondLineIn", () => {
  // Two heads measured 0.339 in for 0.335 and 0.354 for 0.350 (greenlanterngolf.com); half the difference is derived.
  it.each([
    [0.335, 0.339, 0.002],
    [0.35, 0.354, 0.002],
    // Walls of the brass sleeves that are sold, nominal (derived, no published source).
    [0.335, 0.35, 0.0075],
    [0.335, 0.37, 0.0175],
    [0.35, 0.37, 0.01],
    [0.355, 0.37, 0.0075],
  ])("leaves between a tip of %d in and a bore of %d in %d in on either side", (tipIn, boreIn, wanted) => {
    expect(bondLineIn({ ...bore, tipIn, boreIn })).toBeCloseTo(wanted, 12);
  });

  it("counts what is sanded off and reamed out, and is not known where a size is not", () => {
    expect(bondLineIn({ ...bore, tipIn: 0.3715, boreIn: 0.37, sandedIn: 0.0015 })).toBeCloseTo(0, 12);
    expect(bondLineIn({ ...bore, tipIn: 0.3695, boreIn: 0.355, reamedToIn: 0.37 })).toBeCloseTo(0.00025, 12);
    expect(bondLineIn({ ...bore, tipIn: undefined })).toBeUndefined();
  });
});

describe("jointSection", () => {
  it("draws diameters to scale, and the gap by as much wider as it says", () => {
    const section = jointSection(bore, []);
    expect(section.tipHalfIn).toBeCloseTo(0.1675, 12);
    expect(section.boreHalfIn - section.tipHalfIn).toBeCloseTo(0.002 * section.widened, 12);
    expect(section).toMatchObject({ widened: 20, depthIn: 1.25, tipEndIn: 1.25, guessed: ["outside"] });
  });

  it("widens a wide gap less, so that it stays inside the hosel", () => {
    const { widened, boreHalfIn, tipHalfIn } = jointSection({ ...bore, boreIn: 0.37 }, []);
    expect(widened).toBe(3);
    expect(boreHalfIn - tipHalfIn).toBeCloseTo(0.0525, 12);
  });

  it("draws a bore inside the tip where the tip is too wide, and marks its mouth", () => {
    const section = jointSection(
      { ...bore, boreIn: 0.3355, tipIn: 0.337 },
      refusal("graphite-must-not-be-sanded"),
    );
    expect(section.boreHalfIn).toBeLessThan(section.tipHalfIn);
    expect(section.clashes).toMatchObject([{ place: "mouth", alongIn: 0 }]);
  });

  it("stops a tip whose parallel part is too short where its wide part meets the mouth", () => {
    const facts = { ...bore, parallelIn: 0.6, depthIn: 1.35 };
    expect(jointSection(facts, refusal("section-too-short"))).toMatchObject({
      tipEndIn: 0.6,
      widensAboveIn: 0,
    });
    expect(jointSection(facts, [])).toMatchObject({ tipEndIn: 1.35 });
  });

  it.each([
    ["too-shallow", "bottom", 1.25],
    ["bore-too-wide", "gap", 0.625],
    ["wall-too-thin", "wall", 0.5],
    ["other-family", "seat", 0.65],
  ] as const)("shows %s at the %s", (code, place, alongIn) => {
    const facts = { ...bore, holder: "adapter" as const, stopIn: 0.6 };
    const [clash] = jointSection(facts, refusal(code)).clashes;
    expect(clash?.place).toBe(place);
    expect(clash?.alongIn).toBeCloseTo(alongIn, 12);
  });

  it("says which edges it draws from no reading", () => {
    const nothing: JointFacts = { holder: "bore", isThrough: false };
    expect(jointSection(nothing, []).guessed).toEqual(["tip", "bore", "depth", "outside"]);
  });
});

describe("jointClashes", () => {
  it("leaves out what is not at the joint, and what refuses nothing", () => {
    expect(refusal("made-for-other-clubs")).toEqual([]);
    expect(jointClashes([{ verdict: "fits-with-work", code: "tip-too-wide", text: "" }])).toEqual([]);
  });
});

describe("asReamed", () => {
  // Wall left by reaming: (outside - 0.370)/2. Derived, no published source.
  it("draws the reamed bore whose wall is refused", () => {
    const findings = [{ code: "wall-too-thin", data: { wallIn: 0.0425 } }];
    expect(asReamed({ ...bore, outsideIn: 0.455 }, findings).reamedToIn).toBeCloseTo(0.37, 12);
    expect(asReamed(bore, findings).reamedToIn).toBeUndefined();
  });
});

describe("jointFacts", () => {
  const head: Head = { id: "H", kind: "head", socket: { type: "bore", diameterIn: 0.339, depthIn: 1.25 } };
  const adapter: Adapter = {
    id: "A",
    kind: "adapter",
    bore: { diameterIn: { value: 0.35 } },
    tipStopFromSeatIn: 0.6,
  };
  const shaft: Shaft = { id: "S", kind: "shaft", tip: { diameterIn: { value: 0.335 }, form: "parallel" } };

  it("reads the head's bore, or the adapter's where there is one", () => {
    expect(jointFacts({ head, shaft })).toMatchObject({
      holder: "bore",
      boreIn: 0.339,
      tipIn: 0.335,
      depthIn: 1.25,
    });
    expect(jointFacts({ head, adapter, shaft })).toMatchObject({
      holder: "adapter",
      boreIn: 0.35,
      stopIn: 0.6,
    });
  });

  it("is said size by size, what is not known as such", () => {
    const facts = jointFacts({ head, adapter, shaft });
    expect(jointRows(facts, "in")).toContainEqual(["Depth of the bore", "not known"]);
    expect(jointRows(jointFacts({ head, shaft }), "in")).toContainEqual([
      "Gap for the epoxy, all round",
      ".002 in",
    ]);
    const clashes = refusal("section-too-short");
    const short = { ...bore, parallelIn: 0.6 };
    expect(jointSentence(short, jointSection(short, clashes), "in")).toMatch(
      /stops 0.65 in .*short of the bottom. It clashes at the mouth: because section-too-short\./,
    );
  });
});
