import { describe, expect, it } from "vitest";
import { exponentialLaw, uniformLaw } from "./offer-laws.test-kit.ts";
import { logNormalPrices, type PriceLaw } from "./price-law.ts";
import { waitForPart } from "./wait-for-part.ts";

/**
 * The oracle: time cut into small steps, prices into a table of prices and chances that is made from the density alone, and
 * the value worked back step by step with every choice tried (take, leave, give up). It shares no formula with the solver:
 * no distribution function, no partial expectation, no reservation equation. Derived, no published source.
 */
interface PriceTable {
  /** Lowest first. */
  readonly prices: readonly number[];
  /** Chance of a price among the first n, and the sum of chance × price over them. */
  readonly chanceOfFirst: readonly number[];
  readonly moneyOfFirst: readonly number[];
}

interface Case {
  readonly valueMinor: number;
  readonly outsideMinor: number;
  readonly ratePerWeek: number;
  readonly holdingPerWeekMinor: number;
  readonly discountPerWeek: number;
  readonly deadlineWeeks: number | null;
  readonly law: "log-normal" | "uniform" | "exponential";
  readonly medianMinor: number;
  readonly sigmaLog: number;
}

/** Lehmer's generator with the constants of Park and Miller (Communications of the ACM 31, 1988), from 0 to 1. */
function drawing(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

function randomCase(seed: number): Case {
  const draw = drawing(seed * 7919 + 1);
  for (let turn = 0; turn < 10; turn += 1) draw();
  const between = (low: number, high: number) => low + draw() * (high - low);
  const valueMinor = Math.round(between(5_000, 40_000));
  return {
    valueMinor,
    outsideMinor: Math.round(valueMinor * between(0, 0.8)),
    ratePerWeek: Math.exp(between(Math.log(0.03), Math.log(3))),
    holdingPerWeekMinor: Math.round(between(5, 300)),
    discountPerWeek: draw() < 0.3 ? 0 : between(0, 0.01),
    deadlineWeeks: seed % 2 === 0 ? null : between(1, 60),
    law: (["log-normal", "uniform", "exponential"] as const)[seed % 3] ?? "log-normal",
    medianMinor: valueMinor * between(0.1, 0.9),
    sigmaLog: between(0.1, 0.8),
  };
}

function lawOf({ law, medianMinor, sigmaLog }: Case): PriceLaw {
  if (law === "uniform") return uniformLaw(medianMinor * 0.5, medianMinor * 1.5);
  if (law === "exponential") return exponentialLaw(medianMinor);
  return logNormalPrices({ medianMinor, sigmaLog });
}

function tableOf({ law, medianMinor, sigmaLog }: Case): PriceTable {
  const cells = 20_000;
  const at = (n: number) => (n + 0.5) / cells;
  const pairs = Array.from({ length: cells }, (_, n): [number, number] => {
    if (law === "uniform") return [medianMinor * (0.5 + at(n)), 1];
    if (law === "exponential") return [medianMinor * 30 * at(n), Math.exp(-30 * at(n))];
    const z = -8 + 16 * at(n);
    return [medianMinor * Math.exp(sigmaLog * z), Math.exp((-z * z) / 2)];
  });
  const total = pairs.reduce((sum, [, weight]) => sum + weight, 0);
  const [chanceOfFirst, moneyOfFirst] = [[0], [0]];
  for (const [n, [price, weight]] of pairs.entries()) {
    chanceOfFirst.push(chanceOfFirst[n]! + weight / total);
    moneyOfFirst.push(moneyOfFirst[n]! + (price * weight) / total);
  }
  return { prices: pairs.map(([price]) => price), chanceOfFirst, moneyOfFirst };
}

/** How many of the prices are worth taking by somebody who holds `value`. */
function takenOf({ prices }: PriceTable, limit: number): number {
  let [low, high] = [0, prices.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (prices[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Values by the number of steps left until the deadline, the deadline first. */
function workBack(given: Case, table: PriceTable, stepWeeks: number, steps: number): number[] {
  const turnsUp = 1 - Math.exp(-given.ratePerWeek * stepWeeks);
  const fade = Math.exp(-given.discountPerWeek * stepWeeks);
  const values = [given.outsideMinor];
  for (let step = 0; step < steps; step += 1) {
    const held = values[step]!;
    const taken = takenOf(table, given.valueMinor - held);
    const chance = table.chanceOfFirst[taken]!;
    const withOffer = chance * given.valueMinor - table.moneyOfFirst[taken]! + (1 - chance) * held;
    const waited =
      fade * ((1 - turnsUp) * held + turnsUp * withOffer) - given.holdingPerWeekMinor * stepWeeks;
    values.push(Math.max(given.outsideMinor, waited));
    // Standing still: what is left would not change it.
    if (values[step + 1]! - held < 1e-9) break;
  }
  return values;
}

interface OracleAnswer {
  readonly valueMinor: number;
  readonly waits: boolean;
  readonly weeks: number;
  readonly chanceByHalf: number;
}

function followed(
  given: Case,
  table: PriceTable,
  values: readonly number[],
  stepWeeks: number,
  steps: number,
) {
  let [still, weeks, chanceByHalf] = [1, 0, 1];
  for (let step = 0; step < steps && still > 1e-9; step += 1) {
    if (step === Math.round(steps / 2)) chanceByHalf = 1 - still;
    const held = values[Math.min(values.length - 1, steps - step)]!;
    const taken = takenOf(table, given.valueMinor - held);
    const next = still * (1 - (1 - Math.exp(-given.ratePerWeek * stepWeeks)) * table.chanceOfFirst[taken]!);
    weeks += ((still + next) / 2) * stepWeeks;
    still = next;
  }
  return { weeks, chanceByHalf };
}

/** Steps of two lengths; their error goes with the length, so that twice the finer less the coarser is free of it. */
function oracle(given: Case): OracleAnswer {
  const table = tableOf(given);
  const weeks = given.deadlineWeeks ?? 2000 / given.ratePerWeek;
  const steps = given.deadlineWeeks === null ? 400_000 : 6_000;
  const fine = workBack(given, table, weeks / steps, steps);
  const coarse = workBack(given, table, (2 * weeks) / steps, steps / 2);
  const valueMinor = 2 * fine.at(-1)! - coarse.at(-1)!;
  return {
    valueMinor,
    waits: fine.at(-1)! > given.outsideMinor,
    ...followed(given, table, fine, weeks / steps, steps),
  };
}

const cases = Array.from({ length: 72 }, (_, at) => randomCase(at + 1));

describe("waiting for a part, against a dynamic programme that tries every choice", () => {
  it.each(
    cases.map((given, at) => [at + 1, given.law, given.deadlineWeeks?.toFixed(1) ?? "no", given] as const),
  )("case %i: %s prices, %s weeks to the deadline", (_at, _law, _weeks, given) => {
    const expected = oracle(given);
    const answer = waitForPart({ ...given, prices: lawOf(given) });
    expect(answer.waits).toBe(expected.waits);
    // One unit for the rounding; the rest is what steps and a table of prices leave over.
    const slack = 1 + 0.0002 * (given.valueMinor - given.outsideMinor);
    expect(Math.abs(answer.valueMinor - expected.valueMinor)).toBeLessThan(slack);
    expect(Math.abs(given.valueMinor - answer.takeAtOrUnderMinor - expected.valueMinor)).toBeLessThan(slack);
    if (!answer.waits) return expect(answer.chanceWithin(10)).toBe(0);
    expect(Math.abs(answer.expectedWaitWeeks! / expected.weeks - 1)).toBeLessThan(0.01);
    if (given.deadlineWeeks === null) return;
    const chanceByHalf = answer.chanceWithin(given.deadlineWeeks / 2);
    expect(Math.abs(chanceByHalf - expected.chanceByHalf)).toBeLessThan(0.002);
  });

  it("tries both deadlines and none, waiting and not, and every law", () => {
    const answers = cases.map((given) => waitForPart({ ...given, prices: lawOf(given) }));
    for (const deadline of [true, false]) {
      for (const waits of [true, false]) {
        const alike = answers.filter(
          (answer, at) => answer.waits === waits && (cases[at]!.deadlineWeeks !== null) === deadline,
        );
        expect(alike.length).toBeGreaterThanOrEqual(3);
      }
    }
    expect(new Set(cases.map(({ law }) => law)).size).toBe(3);
  });
});
