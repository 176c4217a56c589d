import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  type CostSettings,
  costSettingsSchema,
  feesOn,
  itemKinds,
  postageFor,
} from "../../packages/core/src/index.ts";

const costs = JSON.parse(
  readFileSync(new URL("../../data/reference/first-costs.json", import.meta.url), "utf8"),
) as CostSettings;
const work = JSON.parse(readFileSync(new URL("../../data/reference/work.json", import.meta.url), "utf8")) as {
  readonly step: string;
}[];

/** The cheapest service that takes a parcel of the kind, by its id. */
function sentBy(kind: (typeof itemKinds)[number]) {
  const parcel = costs.parcels[kind];
  if (parcel === undefined) throw new Error(`no parcel for a ${kind}`);
  const { service, refused } = postageFor(parcel, costs.services);
  return { service: service?.id, refused: refused.map((refusal) => `${refusal.service} ${refusal.code}`) };
}

describe("the costs that a new bench starts from", () => {
  it("are of the shape that settings have", () =>
    expect(costSettingsSchema.safeParse(costs).error?.issues ?? []).toEqual([]));

  it("sell by a fee table that is there, and name each table and service once", () => {
    const tables = costs.feeTables.map(({ id }) => id);
    const services = costs.services.map(({ id }) => id);
    expect(tables).toContain(costs.sellsBy);
    expect(new Set(tables).size).toBe(tables.length);
    expect(new Set(services).size).toBe(services.length);
  });

  it("have a parcel, and a service that takes it, for everything that a listing can hold", () => {
    expect(itemKinds.length).toBeGreaterThan(5);
    for (const kind of itemKinds) expect(sentBy(kind).service, kind).toBeDefined();
  });

  // The limits of 90 cm, of length and two diameters, of 105 cm and of 150 cm with 3 m of length and girth are those of
  // royalmail.com formats, maximum size and weights, and auspost.com.au size and weight guidelines.
  it("send a shaft of 46 in and a whole club by the long parcel alone", () => {
    expect(sentBy("shaft").service).toBe("long-parcel");
    expect(sentBy("shaft").refused).toEqual(
      expect.arrayContaining(["parcel-90 too-long", "parcel-90 tube-too-great", "parcel-105 too-long"]),
    );
    expect(sentBy("club").service).toBe("long-parcel");
    expect(costs.parcels.shaft?.lengthCm).toBeGreaterThan(46 * 2.54);
  });

  it("take nothing across the own counter, and something at an auction site", () => {
    const byId = (id: string) => costs.feeTables.find((table) => table.id === id);
    const [counter, auction] = [byId("own-counter"), byId("auction-site")];
    if (!counter || !auction) throw new Error("a fee table is gone");
    expect(feesOn(10_000, 620, counter).totalMinor).toBe(0);
    expect(feesOn(10_000, 620, auction).totalMinor).toBeGreaterThan(0);
  });

  it("have own figures for no step that the work table does not know", () => {
    const steps = work.map(({ step }) => step);
    expect(Object.keys(costs.work).filter((step) => !steps.includes(step))).toEqual([]);
  });
});
