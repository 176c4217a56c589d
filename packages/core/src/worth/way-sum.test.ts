import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aSale } from "./deal.test-kit.ts";
import type { Gain } from "./gain.ts";
import { closedWay, daysOfSales, mostBorne, reckonedWay, type WaySum } from "./way-sum.ts";

const here = {
  moneyMinor: 600,
  minutes: 30,
  totalMinor: 1200,
  lines: [{ code: "trip", text: "a drive", amountMinor: -1200 }],
  isOpen: false,
  questions: [],
  notices: [],
};

const sumOf = (gains: readonly Gain[]): WaySum => ({
  way: "sell-as-it-is",
  gains,
  lines: [],
  minutes: 60,
  spentMinor: 150,
  days: null,
  clubs: [],
  usesParts: [],
  risks: [],
  reasons: [],
  waiting: null,
});

const costs = { leastNetMinor: 500, mostLossChance: 0.3, hourValueMinor: 1200 };

const amount = fc.double({ min: -50_000, max: 50_000, noNaN: true });
const width = fc.double({ min: 0, max: 30_000, noNaN: true });
const gain = fc
  .record({ value: amount, down: width, up: width })
  .map(({ value, down, up }): Gain => ({ value, low: value - down, high: value + up }));
const demands = fc.record({
  leastNetMinor: fc.integer({ min: 0, max: 5000 }),
  mostLossChance: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
  hourValueMinor: fc.constant(1200),
});

describe("a way at its price", () => {
  it("takes the price and getting it here off, and adds own time back for the hour", () => {
    const { alternative } = reckonedWay(
      sumOf([{ value: 10_000, low: 7000, high: 13_000 }]),
      here,
      3000,
      costs,
    );
    // 10000 − 1200 − 3000; an hour and a half at 12 is 1800, so 7600 in an hour and a half.
    expect(alternative.net).toEqual({ valueMinor: 5800, lowMinor: 2800, highMinor: 8800 });
    expect(alternative.outlayMinor).toBe(3000 + 600 + 150);
    expect(alternative.minutes).toBe(90);
    expect(alternative.profitPerHourMinor).toBe(5067);
    expect(alternative.lines.map(({ amountMinor }) => amountMinor)).toEqual([-1200, -3000]);
  });

  it("brings just what is asked of it at the most to pay, where nothing is uncertain", () => {
    const { alternative } = reckonedWay(
      sumOf([{ value: 10_000, low: 10_000, high: 10_000 }]),
      here,
      0,
      costs,
    );
    expect(alternative.mostToPayMinor).toBe(10_000 - 1200 - 500);
  });

  it("is worth less than nothing where getting it here costs more than it brings, and says so within", () => {
    const way = reckonedWay(sumOf([{ value: 1000, low: 1000, high: 1000 }]), here, 0, costs);
    expect(way.alternative.mostToPayMinor).toBe(0);
    expect(way.borneMinor).toBe(-700);
  });

  it("has no figures where it cannot be gone", () => {
    const { alternative, borneMinor } = closedWay("wait", [{ code: "x", text: "x" }]);
    expect(alternative).toMatchObject({ possible: false, net: null, mostToPayMinor: null, lossChance: null });
    expect(borneMinor).toBeUndefined();
  });
});

// Derived, no published source: it follows from what the most to pay is defined as.
describe("the most to pay", () => {
  it("leaves what is asked, at the loss chance that is borne; one unit more leaves less or bears more", () => {
    fc.assert(
      fc.property(gain, demands, (gain, demands) => {
        const most = mostBorne(gain, demands);
        const at = (priceMinor: number) => {
          const free = { ...here, moneyMinor: 0, totalMinor: 0, lines: [] };
          return reckonedWay(sumOf([gain]), free, priceMinor, demands).alternative;
        };
        const slack = 1e-9;
        expect(gain.value - most).toBeGreaterThanOrEqual(demands.leastNetMinor - slack);
        expect(at(most).lossChance).toBeLessThanOrEqual(demands.mostLossChance + slack);
        const over = most + 1;
        const isOver =
          gain.value - over < demands.leastNetMinor ||
          (at(over).lossChance ?? 0) > demands.mostLossChance - slack;
        expect(isOver).toBe(true);
      }),
      { numRuns: 500, seed: 20261125 },
    );
  });

  it("does not depend on the price, and a price raised by so much lowers the net by as much", () => {
    fc.assert(
      fc.property(fc.array(gain, { maxLength: 4 }), fc.nat(50_000), fc.nat(50_000), (gains, price, more) => {
        const [one, other] = [price, price + more].map(
          (each) => reckonedWay(sumOf(gains), here, each, costs).alternative,
        );
        expect(other?.mostToPayMinor).toBe(one?.mostToPayMinor);
        for (const side of ["valueMinor", "lowMinor", "highMinor"] as const) {
          const fallen = (one?.net?.[side] ?? 0) - (other?.net?.[side] ?? 0);
          expect(Math.abs(fallen - more)).toBeLessThanOrEqual(1);
        }
        expect(other?.lossChance).toBeGreaterThanOrEqual(one?.lossChance ?? 1);
      }),
      { numRuns: 300, seed: 20261125 },
    );
  });

  it("is nothing where no chance of a loss is borne and there is one", () => {
    const uncertain = { value: 10_000, low: 9000, high: 11_000 };
    const way = reckonedWay(sumOf([uncertain]), here, 0, { ...costs, mostLossChance: 0 });
    expect(way.alternative.mostToPayMinor).toBe(0);
  });
});

describe("daysOfSales", () => {
  const after = { value: 3, low: 1, high: 20 };
  it("counts to the last sale, after the work", () => {
    const slow = { ...aSale(1), days: { value: 30, low: 20, high: 35 } };
    expect(daysOfSales([aSale(1), slow], after)).toEqual({ value: 33, low: 21, high: 60 });
  });
  it("is not known where one sale's days are not, or nothing is sold", () => {
    expect(daysOfSales([aSale(1), { ...aSale(1), days: null }], after)).toBeNull();
    expect(daysOfSales([], after)).toBeNull();
  });
});
