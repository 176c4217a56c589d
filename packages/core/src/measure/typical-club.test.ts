import { describe, expect, it } from "vitest";
import type { Head, Shaft } from "../parts/part.ts";
import type { Build } from "./build.ts";
import { driver, driverHead, estimated, woodShaft } from "./club.test-kit.ts";

// Clubs of which nobody has said anything but what they are, so that all figures come from the typical table.

const typicalGrip = { id: "G", kind: "grip" } as const;

function typicalClub(head: Partial<Head>, shaft: Partial<Shaft>, build: Build) {
  return estimated(
    {
      head: { id: "H", kind: "head", socket: { type: "bore" }, ...head },
      shaft: { id: "S", kind: "shaft", ...shaft },
      grip: typicalGrip,
    },
    build,
  );
}

const typicalDriver = (playingLengthIn: number) =>
  typicalClub(
    { clubType: "driver" },
    { suits: "wood", material: "graphite", length: { lengthIn: 44.5, basis: "shaft-alone" } },
    { playingLengthIn },
  );
const typicalIron = (clubNumber: string, playingLengthIn: number) =>
  typicalClub(
    { clubType: "iron", clubNumber },
    { suits: "iron", material: "steel", length: { lengthIn: playingLengthIn, basis: "shaft-alone" } },
    { playingLengthIn },
  );

function expectCovered(estimate: { low: number; high: number } | null, value: number) {
  expect(estimate?.low).toBeLessThan(value);
  expect(estimate?.high).toBeGreaterThan(value);
}

describe("a typical club", () => {
  // golfgearselect.com, shaft weight: a complete driver weighs 310 to 320 g.
  it("weighs as a complete driver does", () => {
    const { massG } = typicalDriver(45);
    expectCovered(massG, 310);
    expectCovered(massG, 320);
  });

  // golf-faq.com, iron weights: complete irons about 400 g (3) to 440 g (9). Lengths: tutelman.com/golf/design/lie2.php.
  it.each([
    ["3", 39, 400],
    ["9", 36, 440],
  ] as const)("weighs as a complete %s-iron does", (clubNumber, playingLengthIn, grams) => {
    expectCovered(typicalIron(clubNumber, playingLengthIn).massG, grams);
  });

  // gameimprovementgolf.com, oops-but-thank-you-moi: a 44 in driver built to 2836 kg·cm2.
  it("resists turning as a 44 in driver does", () => {
    expectCovered(typicalDriver(44).moiKgCm2, 2836);
  });

  // 3jack.blogspot.com 2015-07: one set matched at 2750 kg·cm2 from the 3-iron to the 9-iron.
  it.each([
    ["3", 39],
    ["6", 37.5],
    ["9", 36],
  ] as const)("resists turning as a matched %s-iron does", (clubNumber, playingLengthIn) => {
    expectCovered(typicalIron(clubNumber, playingLengthIn).moiKgCm2, 2750);
  });

  // golf.okrasa.eu, swing weight: D0 to D2 is customary for men.
  it("swings about as is customary for men", () => {
    expectCovered(typicalDriver(44.5).swingWeight, 31);
    expectCovered(typicalIron("5", 38).swingWeight, 31);
  });

  // tutelman.com/golf/measure/ruler.php: the trade's length and that of the Rules differ by less than 1/8 in for typical clubs.
  it.each(["driver", "fairway", "hybrid", "iron", "wedge"] as const)(
    "measures the same by the Rules to 1/8 in for a %s",
    (clubType) => {
      const { playingLengthIn, rulesLengthIn } = typicalClub(
        { clubType },
        { suits: "iron", length: { lengthIn: 40, basis: "shaft-alone" } },
        {},
      );
      expect(Math.abs(rulesLengthIn!.value - playingLengthIn!.value)).toBeLessThan(1 / 8);
    },
  );

  it("marks every typical reading it rests on", () => {
    const sources = new Set(typicalDriver(45).massG?.basis.map(({ source }) => source));
    expect(sources).toEqual(new Set(["typical", "stated", "chosen"]));
  });
});

describe("the trade's rules of thumb", () => {
  const points = (parts: Parameters<typeof estimated>[0], build: Build = {}) =>
    estimated(parts, build).swingWeight!.points;

  // allbusinesspublishing.com t44071; 2 g is rounded from 1.6 g at 45 in to 2.3 g at 35.5 in (derived).
  it("puts a point of swing weight at about two grams in the head", () => {
    const perGram = points({ ...driver, head: { ...driverHead, massG: 201 } }) - points(driver);
    expect(1 / perGram).toBeGreaterThan(1.5);
    expect(1 / perGram).toBeLessThan(2.4);
  });

  // allbusinesspublishing.com t44071: 5 g of grip is one point, downwards.
  it("takes a point off for five grams of grip", () => {
    expect(points({ ...driver, grip: { ...driver.grip, massG: 55 } }) - points(driver)).toBeCloseTo(-1, 1);
  });

  // allbusinesspublishing.com t44071: three points; 2.6 to 3.8 by mass of head and shaft (derived), less a little that the cut takes with it.
  it("takes about three points off for half an inch", () => {
    const lost = points(driver) - points({ ...driver, shaft: woodShaft }, { buttTrimIn: 0.5 });
    expect(lost).toBeGreaterThan(2.2);
    expect(lost).toBeLessThan(3.8);
  });
});
