import { beforeAll, describe, expect, it } from "vitest";
import { emptyListing } from "../../packages/core/src/listing/empty-listing.ts";
import type { LinearSolver } from "../../packages/core/src/plan/linear-solver.ts";
import type { PlanInput } from "../../packages/core/src/plan/plan-input.ts";
import { planGround } from "../../packages/core/src/plan/plan-setup.ts";
import { priceParts } from "../../packages/core/src/plan/price-parts.ts";
import { seenAgain } from "../../packages/core/src/plan/seen-again.ts";
import { rules } from "../../packages/core/src/rules/index.ts";
import type { CostSettings } from "../../packages/core/src/worth/cost-settings.ts";
import { dealContext } from "../../packages/core/src/worth/deal-context.ts";
import type { Evidence } from "../../packages/core/src/worth/evidence.ts";
import { dealJudge } from "../../packages/core/src/worth/judge-deal.ts";
import type { PlanPrices } from "../../packages/core/src/worth/plan-prices.ts";
import type { Sighting } from "../../packages/core/src/worth/sighting.ts";
import { loadHighsSolver } from "../../packages/server/src/plan/highs-solver.ts";
import { reference } from "../reference-tables.ts";

const load = async (name: string) => import(new URL(`../../bench/market/${name}.mjs`, import.meta.url).href);
const { catalogue, costs } = (await load("world")) as Pick<PlanInput, "catalogue"> & { costs: CostSettings };
const { writtenBefore } = (await load("before")) as {
  writtenBefore: (
    seed: number,
    catalogue: unknown,
    costs: unknown,
  ) => { sightings: Sighting[]; evidence: Evidence[] };
};
const { asParts } = (await load("words")) as {
  asParts: (
    thing: object,
  ) => Pick<PlanInput["bench"], "parts"> & { joints: NonNullable<PlanInput["bench"]["joints"]> };
};
const { yearOf } = (await load("world")) as {
  yearOf: (seed: number, days: number) => { listings: { goods: object }[] };
};

const today = "2027-01-01";
const seeds = [1, 2, 3];
const seenMost = 60;
const onBench = 12;

/** A bench of what was offered in the first days of a made-up market, and what was seen in the quarter before. */
function worldOf(seed: number): PlanInput {
  const { sightings, evidence } = writtenBefore(seed, catalogue, costs);
  const things = yearOf(seed, 12)
    .listings.slice(0, onBench)
    .map(({ goods }) => asParts({ ...goods, paidMinor: 0 }));
  const grip = { id: "box-grip", kind: "grip" as const, deniedFaults: ["grip-worn" as const] };
  return {
    bench: {
      parts: [
        ...things.flatMap(({ parts }) => parts),
        { ...grip, paid: { amountMinor: 300, currency: "EUR" } },
      ],
      joints: things.flatMap(({ joints }) => joints),
      goal: { skill: "bond" },
    },
    ...{ rules, reference, catalogue, evidence, costs, today },
    sightings: sightings.slice(-seenMost),
    wishes: {
      budgetMinor: null,
      minutes: null,
      mostOfType: {},
      hours: "at-own-rate",
      leastPerHourMinor: null,
    },
  };
}

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

async function pricesOf(world: PlanInput): Promise<PlanPrices> {
  const prices = await priceParts(world, solver);
  if (!prices) throw new Error("the relaxation was not solved");
  return prices;
}

/** Prices and nets are compared to the cent: nets are whole, the solver's prices are not. */
const cent = 1;

describe.each(seeds)("what parts are worth to the bench (seed %i)", (seed) => {
  it("is at least what anything makes of the bench's own parts", { timeout: 60_000 }, async () => {
    const world = worldOf(seed);
    const { ofPart } = await pricesOf(world);
    // No price of a solved relaxation lets a use bring more than what it takes is worth: dual feasibility (Dantzig 1963, ch. 6).
    const { uses, partings } = planGround({ ...world, sightings: [] }, [], { waits: false });
    const apart = new Set(partings.flatMap(({ type }) => type.parts.map(({ id }) => id)));
    const whole = uses.filter(({ parts }) => !parts.some((id) => apart.has(id)));
    expect(whole.length).toBeGreaterThan(5);
    for (const { parts, netMinor } of whole) {
      const worth = parts.reduce((sum, id) => sum + (ofPart(id) ?? Number.NaN), 0);
      expect(worth).toBeGreaterThanOrEqual(netMinor - cent);
    }
  });

  it("is never below nothing, and told of all that is on the bench", { timeout: 60_000 }, async () => {
    const world = worldOf(seed);
    const { ofPart } = await pricesOf(world);
    expect(world.bench.parts.length).toBeGreaterThan(0);
    for (const { id } of world.bench.parts) expect(ofPart(id)).toBeGreaterThanOrEqual(0);
    expect(ofPart("nobody has this")).toBeUndefined();
  });

  it("lets a listing be kept for no more than one more of the same is worth", {
    timeout: 60_000,
  }, async () => {
    const world = worldOf(seed);
    const { keep, ofPart } = await pricesOf(world);
    const empty = dealContext({ ...world, listing: emptyListing });
    let kept = 0;
    for (const { id, listing } of seenAgain(world.sightings, today)) {
      // Pricing out (Dantzig 1963, ch. 5): what a use leaves over the prices of what else it takes is at most the price of the rest.
      const worth = ["head", "shaft", "adapter", "grip"].reduce(
        (sum, kind) => sum + (ofPart(`offer-${id}-${kind}`) ?? 0),
        0,
      );
      for (const { gain } of keep(dealContext({ ...world, listing }, empty))) {
        kept += 1;
        expect(gain.value).toBeLessThanOrEqual(worth + cent);
        expect(gain.low).toBeLessThanOrEqual(gain.value);
        expect(gain.high).toBeGreaterThanOrEqual(gain.value);
      }
    }
    expect(kept).toBeGreaterThan(5);
  });

  it("bears a price that leaves what is asked of a deal, in whatever way is best", {
    timeout: 60_000,
  }, async () => {
    const world = worldOf(seed);
    const judge = dealJudge({ ...world, prices: await pricesOf(world) });
    let added = 0;
    for (const { listing } of seenAgain(world.sightings, today).slice(0, 25)) {
      const deal = judge({ listing });
      for (const { net, lines, possible } of deal.alternatives) {
        if (!possible || !net || lines.length === 0) continue;
        const total = lines.reduce((sum, { amountMinor }) => sum + amountMinor, 0);
        expect(Math.abs(total - net.valueMinor)).toBeLessThanOrEqual(lines.length + 1);
        added += 1;
      }
    }
    expect(added).toBeGreaterThan(25);
  });
});

describe("too few listings", () => {
  it("tell nothing of what comes, so nothing is priced by them", async () => {
    const world = worldOf(1);
    expect(await priceParts({ ...world, sightings: world.sightings.slice(0, 19) }, solver)).toBeUndefined();
  });

  it("count from the weeks before today alone", () => {
    const [one] = worldOf(1).sightings;
    if (!one) throw new Error("nothing was seen");
    const on = (seenOn: string) => seenAgain([{ ...one, seenOn }], "2026-11-25").length;
    expect(on("2026-11-24")).toBe(1);
    expect(on("2026-08-26")).toBe(1);
    expect(on("2026-08-25")).toBe(0);
    expect(on("2026-11-25")).toBe(0);
  });
});
