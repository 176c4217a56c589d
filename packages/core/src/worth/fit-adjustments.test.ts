import { describe, expect, it } from "vitest";
import { estimateResale } from "./estimate-resale.ts";
import type { Evidence } from "./evidence.ts";
import { fitAdjustments } from "./fit-adjustments.ts";
import { driverHead, plainAdjustments, plainSettings, price, today } from "./resale.test-kit.ts";

const fitting = { ...plainAdjustments, askedOverSold: 1.1, fair: 0.85, fit: true };

function prices(name: string, count: number, amountMinor: number, other: Partial<Evidence> = {}): Evidence[] {
  return Array.from({ length: count }, (_, at) => price(`${name} ${at}`, amountMinor, other));
}

describe("fitAdjustments", () => {
  it("moves nothing when it is off", () => {
    const evidence = [...prices("sold", 20, 10_000), ...prices("asked", 20, 15_000, { what: "asked" })];
    const off = { ...fitting, fit: false };
    const { adjustments, fittedFrom } = fitAdjustments(evidence, off);
    expect(adjustments).toEqual(off);
    expect(fittedFrom.askedOverSold).toBe(0);
  });

  it("moves by less than half the way for one lone price that is asked", () => {
    const evidence = [...prices("sold", 20, 10_000), ...prices("asked", 1, 15_000, { what: "asked" })];
    const { adjustments, fittedFrom } = fitAdjustments(evidence, fitting);
    const moved = Math.log(adjustments.askedOverSold / 1.1) / Math.log(1.5 / 1.1);
    expect(moved).toBeGreaterThan(0.1);
    expect(moved).toBeLessThan(0.5);
    expect(fittedFrom.askedOverSold).toBe(1);
  });

  it("learns what is asked over what is paid though no model is both asked for and sold", () => {
    const models = Array.from({ length: 24 }, (_, at) => `Tarnlock ${at}`);
    const evidence = models.flatMap((model, at) => {
      const level = 10_000 + 400 * ((7 * at) % 11);
      const isAsked = at % 2 === 0;
      return prices(model, 6, isAsked ? level * 0.8 : level, { model, what: isAsked ? "asked" : "sold" });
    });
    const { adjustments } = fitAdjustments(evidence, { ...fitting, askedOverSold: 1.15 });
    expect(adjustments.askedOverSold).toBeGreaterThan(0.7);
    expect(adjustments.askedOverSold).toBeLessThan(0.95);
  });

  it("leaves the figure of the settings where everything is asked and nothing sold", () => {
    const { adjustments, fittedFrom } = fitAdjustments(
      prices("asked", 30, 15_000, { what: "asked" }),
      fitting,
    );
    expect(adjustments.askedOverSold).toBeCloseTo(1.1, 9);
    expect(fittedFrom.askedOverSold).toBe(0);
  });

  it("comes as near the evidence as one likes when there is more of it", () => {
    const factors = [1, 3, 10, 100, 1000].map(
      (count) =>
        fitAdjustments(
          [...prices("good", count, 10_000), ...prices("fair", count, 6000, { condition: "fair" })],
          fitting,
        ).adjustments.fair,
    );
    expect(factors).toEqual([...factors].sort((one, other) => other - one));
    expect(factors.at(-1)).toBeCloseTo(0.6, 2);
  });

  it("lays the difference between two models to the models, not to what all of one happen to be", () => {
    const evidence = [
      ...prices("dear", 10, 30_000),
      ...prices("cheap", 10, 6000, { condition: "fair", model: "Tarnlock" }),
    ];
    const moved = Math.log(fitAdjustments(evidence, fitting).adjustments.fair / 0.85);
    expect(Math.abs(moved)).toBeLessThan(0.1 * Math.abs(Math.log(0.2 / 0.85)));
  });

  it("tells nothing from the difference between two currencies", () => {
    const evidence = [
      ...prices("euros", 10, 30_000),
      ...prices("pounds", 10, 6000, { condition: "fair", price: { amountMinor: 6000, currency: "GBP" } }),
    ];
    expect(fitAdjustments(evidence, fitting).adjustments.fair).toBeCloseTo(0.85, 9);
  });

  it("does not take a price of unknown cover for one without", () => {
    const evidence = [...prices("with", 10, 10_000), ...prices("unknown", 10, 5000, { cover: undefined })];
    expect(fitAdjustments(evidence, fitting).adjustments.noCover).toBe(1);
  });

  it("finds a missing cover, a missing wrench and a season apart from each other", () => {
    const evidence = [
      ...prices("whole", 400, 10_000, { on: "2026-03-05" }),
      ...prices("no cover", 400, 9000, { cover: false, on: "2026-03-05" }),
      ...prices("no wrench", 400, 9500, { wrench: false, on: "2026-03-05" }),
      ...prices("June", 400, 11_000, { on: "2027-06-05" }),
    ];
    const { adjustments, fittedFrom } = fitAdjustments(evidence, { ...plainAdjustments, fit: true });
    expect(adjustments.noCover).toBeCloseTo(0.9, 2);
    expect(adjustments.noWrench).toBeCloseTo(0.95, 2);
    expect(adjustments.season[5]! / adjustments.season[2]!).toBeCloseTo(1.1, 2);
    expect(fittedFrom.season[5]).toBe(400);
    expect(fittedFrom.noCover).toBe(400);
    expect(fittedFrom.season[0]).toBe(0);
    expect(adjustments.season[0]).toBe(1);
  });

  it("takes no month for dear before prices of a year have been noted", () => {
    const evidence = [
      ...prices("March", 100, 10_000, { on: "2026-03-05" }),
      ...prices("June", 100, 13_000, { on: "2026-06-05" }),
    ];
    const { adjustments, fittedFrom } = fitAdjustments(evidence, fitting);
    expect(adjustments.season).toEqual(fitting.season);
    expect(fittedFrom.season.every((count) => count === 0)).toBe(true);
  });

  it("feeds the estimate, which says what it used", () => {
    const evidence = [...prices("sold", 4, 10_000), ...prices("asked", 4, 13_000, { what: "asked" })];
    const resale = estimateResale(driverHead, evidence, { ...plainSettings, adjustments: fitting }, today);
    const factor = fitAdjustments(evidence, fitting).adjustments.askedOverSold;
    expect(factor).toBeGreaterThan(1.1);
    expect(factor).toBeLessThan(1.3);
    expect(resale).toMatchObject({
      known: true,
      adjustments: [{ name: "askedOverSold", fittedFrom: 4, factor: expect.closeTo(factor, 12) }],
    });
  });
});
