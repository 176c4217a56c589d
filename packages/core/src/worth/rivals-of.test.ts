import { describe, expect, it } from "vitest";
import type { CatalogueModel } from "../listing/catalogue.ts";
import { aListing, anItem, euros, plainCosts } from "./deal.test-kit.ts";
import { dealInput, paid } from "./deal-judged.test-kit.ts";
import { judgeDeal } from "./judge-deal.ts";

const ombrel: CatalogueModel = {
  ...{ id: "northmoor-ombrel-driver", kind: "head", maker: "Northmoor", model: "Ombrel" },
  ...{ clubType: "driver", adapterFamily: "Quillon 2" },
};

const offered = aListing([anItem({ kind: "head", modelId: ombrel.id, clubType: "driver", hand: "right" })], {
  asking: euros(3000),
});
const evidence = [paid(12_000, { kind: "club", modelId: ombrel.id, clubType: "driver", hand: "right" })];

/** Waiting costs something, so that a longer wait is worth less. */
const costs = { ...plainCosts, holdingPerWeekMinor: 20 };

function waitingBeside(hands: readonly ("right" | "left")[]) {
  const parts = hands.map((hand, at) => ({
    ...{
      id: `H${at}`,
      kind: "head" as const,
      maker: "Northmoor",
      model: "Ombrel",
      clubType: "driver" as const,
    },
    ...{ hand, socket: { type: "receiver" as const, family: "Quillon 2" } },
  }));
  const deal = judgeDeal(dealInput(offered, { bench: { parts }, catalogue: [ombrel], evidence, costs }));
  return deal.alternatives.find(({ way }) => way === "wait")?.waiting;
}

describe("a head that waits beside others", () => {
  it("meets a shaft a third as often where two more wait for the same one", () => {
    const alone = waitingBeside([])?.ratePerWeek ?? Number.NaN;
    expect(waitingBeside(["right", "right"])?.ratePerWeek).toBeCloseTo(alone / 3, 12);
  });

  it("does not mind a head of the other hand", () => {
    expect(waitingBeside(["left"])?.ratePerWeek).toBe(waitingBeside([])?.ratePerWeek);
  });

  it("is worth less the more of them wait", () => {
    const values = [[], ["right"], ["right", "right"]].map(
      (hands) => waitingBeside(hands as ("right" | "left")[])?.valueMinor ?? Number.NaN,
    );
    expect(values).toEqual(values.toSorted((one, other) => other - one));
    expect(values[0]).toBeGreaterThan(values[2] as number);
  });
});
