import { describe, expect, it } from "vitest";
import type { Build, ClubParts } from "../../packages/core/src/measure/build.ts";
import { buildClub } from "../../packages/core/src/measure/built-club.ts";
import {
  adapter,
  driver,
  estimated,
  receiverHead,
  shippedTypical,
  woodShaft,
} from "../../packages/core/src/measure/club.test-kit.ts";
import { type ClubFacts, type ClubInput, clubFacts } from "../../packages/core/src/measure/club-facts.ts";
import { quantities } from "../../packages/core/src/measure/estimates.ts";

// Propagation of distributions, JCGM 101:2008: every input is drawn from its own distribution, the club is built from what was
// drawn, and the middle 95 % of what comes out is compared with the interval of the estimate.

const draws = 20_000;
/** Of the interval's width. The ends of 20,000 draws scatter by 1 % of it; the rest is what is not linear in the model. */
const tolerance = 0.05;

const iron: ClubParts = {
  head: { id: "I7", kind: "head", clubType: "iron", clubNumber: "7", loftDeg: 33, socket: { type: "bore" } },
  shaft: {
    id: "SI",
    kind: "shaft",
    suits: "iron",
    material: "steel",
    rawMassG: 120,
    rawLengthIn: 41,
    tip: { trimmedIn: 2 },
    length: { lengthIn: 36.5, basis: "with-adapter" },
  },
  grip: { id: "G", kind: "grip" },
};

const clubs: readonly (readonly [name: string, parts: ClubParts, build: Build])[] = [
  ["a measured bored driver as it is", driver, {}],
  [
    "the same, trimmed, with lead and a counterweight",
    driver,
    { tipTrimIn: 0.5, buttTrimIn: 1.25, extraHeadMassG: 4, counterweightG: 10 },
  ],
  ["the same, extended", driver, { buttTrimIn: -1 }],
  [
    "a driver through an adapter, cut to a length, with a frequency",
    { ...driver, head: receiverHead, adapter, shaft: { ...woodShaft, frequency: { cpm: 250 } } },
    { playingLengthIn: 44 },
  ],
  ["an iron of which little is known", iron, { buttTrimIn: 0.5 }],
  [
    "a gripped pull read as a playing length, from typical parts",
    {
      head: { id: "F", kind: "head", clubType: "fairway" },
      shaft: {
        id: "S",
        kind: "shaft",
        suits: "wood",
        length: { lengthIn: 43, basis: "playing" },
        frequency: { cpm: 255 },
      },
      grip: { id: "G", kind: "grip" },
      gripped: true,
    },
    {},
  ],
];

describe("the 95 % intervals of the estimates", () => {
  it.each(clubs)("agree with simulation for %s", (_name, parts, build) => {
    const facts = clubFacts(parts, build, shippedTypical);
    const simulated = simulate(facts, 1);
    const estimates = estimated(parts, build) as unknown as Record<
      string,
      { low: number; high: number } | null
    >;
    let compared = 0;
    quantities.forEach(({ name }, k) => {
      const estimate = estimates[name];
      if (estimate === null || estimate === undefined) return;
      const width = estimate.high - estimate.low;
      const [low, high] = middle95(simulated[k]!);
      expect(
        Math.abs(low - estimate.low),
        `${name}: low ${estimate.low}, simulated ${low}`,
      ).toBeLessThanOrEqual(tolerance * width);
      expect(
        Math.abs(high - estimate.high),
        `${name}: high ${estimate.high}, simulated ${high}`,
      ).toBeLessThanOrEqual(tolerance * width);
      compared++;
    });
    expect(compared).toBeGreaterThanOrEqual(10);
  });

  // A rectangle's 95 % interval is ±0.95 of its half-width, the normal one of the same uncertainty ±1.13 (JCGM 101:2008 9.2.3).
  it("cover the simulated one, and are wider by no more than a fifth, where the basis of a length is unstated", () => {
    const parts = { ...driver, shaft: { ...woodShaft, length: { lengthIn: 45 } } };
    const { playingLengthIn, cutLengthIn } = estimated(parts);
    const simulated = simulate(clubFacts(parts, {}, shippedTypical), 2);
    for (const [name, estimate] of Object.entries({ playingLengthIn, cutLengthIn })) {
      const [low, high] = middle95(simulated[quantities.findIndex((one) => one.name === name)]!);
      expect(estimate!.low).toBeLessThanOrEqual(low);
      expect(estimate!.high).toBeGreaterThanOrEqual(high);
      expect(estimate!.high - estimate!.low).toBeLessThanOrEqual(1.2 * (high - low));
    }
  });

  it("would be told apart from intervals that are a fifth too narrow", () => {
    const { massG } = estimated(driver);
    const [low, high] = middle95(
      simulate(clubFacts(driver, {}, shippedTypical), 3)[
        quantities.findIndex(({ name }) => name === "massG")
      ]!,
    );
    const narrowed = 0.8 * (massG!.high - massG!.low);
    expect(high - low - narrowed).toBeGreaterThan(2 * tolerance * narrowed);
  });
});

function simulate(facts: ClubFacts, seed: number): Float64Array[] {
  const random = mulberry32(seed);
  const results = quantities.map(() => new Float64Array(draws));
  const at = { ...facts.numbers };
  for (let i = 0; i < draws; i++) {
    for (const input of facts.inputs) at[input.key] = draw(input, random);
    const club = buildClub(at, facts.shape);
    quantities.forEach(({ of }, k) => {
      results[k]![i] = of(club);
    });
  }
  return results;
}

/** Only the doubt about a length's basis is a rectangle. */
function draw({ key, value, plusMinus }: ClubInput, random: () => number): number {
  if (key === "basisDoubtIn") return value + plusMinus * Math.sqrt(3) * (2 * random() - 1);
  return value + plusMinus * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function middle95(results: Float64Array): [low: number, high: number] {
  const sorted = results.filter(Number.isFinite).sort();
  return [sorted[Math.floor(0.025 * sorted.length)]!, sorted[Math.floor(0.975 * sorted.length)]!];
}

/** A small seeded generator, so that a failure can be had again. */
function mulberry32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
