import { describe, expect, it } from "vitest";
import type { Parcel, PostageService } from "./cost-settings.ts";
import { postageFor } from "./postage-quote.ts";

// The published limits stand in data/reference/money-postage.json; here is how a service is picked.

const service = (id: string, priceMinor: number, limits: Partial<PostageService> = {}): PostageService => ({
  id,
  name: `service ${id}`,
  priceMinor,
  maxMassG: null,
  maxLengthCm: null,
  maxLengthPlusGirthCm: null,
  maxLengthPlusTwoDiametersCm: null,
  maxVolumeM3: null,
  kgPerM3: null,
  ...limits,
});

const club: Parcel = { shape: "box", lengthCm: 120, widthCm: 15, heightCm: 13, massG: 900 };
const tube: Parcel = { shape: "tube", lengthCm: 118, widthCm: 6, heightCm: 6, massG: 300 };

describe("the postage of a parcel", () => {
  it("is the cheapest of the services that take it, the one named first where prices are the same", () => {
    const services = [service("dear", 1500), service("cheap", 900), service("as-cheap", 900)];
    expect(postageFor(club, services)).toMatchObject({
      service: { id: "cheap" },
      priceMinor: 900,
      refused: [],
    });
  });

  it("passes over a cheaper service that does not take it, and says why in words with both figures", () => {
    const quote = postageFor(club, [service("short", 500, { maxLengthCm: 105 }), service("long", 1700)]);
    expect(quote.service?.id).toBe("long");
    expect(quote.refused).toEqual([
      {
        service: "short",
        code: "too-long",
        text: "service short: the longest side is 120 cm, the limit is 105 cm",
      },
    ]);
  });

  it("is not known where no service takes the parcel, nor where there is none", () => {
    expect(postageFor(club, [service("short", 500, { maxLengthCm: 90 })])).toMatchObject({
      service: null,
      priceMinor: null,
    });
    expect(postageFor(club, [])).toEqual({ service: null, priceMinor: null, refused: [] });
  });

  // Each limit met exactly, and passed by a little: 120 × 15 × 13 cm has 176 cm of length and girth and 0.0234 m³.
  it.each([
    ["too-heavy", club, { maxMassG: 900 }, { maxMassG: 899 }],
    ["too-long", club, { maxLengthCm: 120 }, { maxLengthCm: 119.9 }],
    ["girth-too-great", club, { maxLengthPlusGirthCm: 176 }, { maxLengthPlusGirthCm: 175.9 }],
    ["too-bulky", club, { maxVolumeM3: 0.0234 }, { maxVolumeM3: 0.0233 }],
    ["tube-too-great", tube, { maxLengthPlusTwoDiametersCm: 130 }, { maxLengthPlusTwoDiametersCm: 129.9 }],
    ["too-heavy", club, { maxMassG: 5850, kgPerM3: 250 }, { maxMassG: 5849, kgPerM3: 250 }],
  ] as const)("takes a parcel on a limit and refuses it past it: %s", (code, parcel, on, past) => {
    expect(postageFor(parcel, [service("on", 1, on)]).refused).toEqual([]);
    expect(postageFor(parcel, [service("past", 1, past)]).refused.map((refusal) => refusal.code)).toEqual([
      code,
    ]);
  });

  it("does not hold a box to a limit for tubes", () =>
    expect(postageFor(club, [service("tubes", 1, { maxLengthPlusTwoDiametersCm: 50 })]).priceMinor).toBe(1));

  it("says so when it is the volume that weighs", () => {
    const [refusal] = postageFor(club, [service("by-volume", 1, { maxMassG: 1000, kgPerM3: 250 })]).refused;
    expect(refusal?.text).toBe(
      "service by-volume: it counts, for its volume, as 5850 g, the limit is 1000 g",
    );
  });
});
