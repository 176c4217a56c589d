import { describe, expect, it } from "vitest";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import { aListing, anItem, euros, plainCosts } from "../worth/deal.test-kit.ts";
import type { Evidence } from "../worth/evidence.ts";
import { planActions } from "./plan-actions.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanChoice } from "./plan-model.ts";
import { planSetup } from "./plan-setup.ts";

const row = (step: string, order: number, minutes: number, skill: "screw" | "regrip" | "bond") => ({
  ...{ step, order, minutes, waitMinutes: 0, costMinor: 50, skill, cautions: ["look-first"], text: step },
});
const reference: Reference = {
  typical: [],
  work: [
    row("unscrew", 10, 2, "screw"),
    ...["grip-off", "grip-on"].map((step) => row(step, 12, 10, "regrip")),
    ...["pull-head", "pull-adapter", "clean-bore", "clean-tip", "bond-tip"].map((step) =>
      row(step, 15, 20, "bond"),
    ),
    row("screw-in", 60, 2, "screw"),
  ],
  cautions: [{ code: "look-first", text: "Look first.", source: "common practice, no source" }],
};

const sold = (kind: Evidence["kind"], amountMinor: number, more: Partial<Evidence> = {}): Evidence => ({
  ...{
    id: `${kind} ${JSON.stringify(more)}`,
    on: "2026-11-01",
    what: "sold",
    price: euros(amountMinor),
    kind,
  },
  ...more,
});

const part = (id: string, kind: Part["kind"], more: object = {}) => ({ id, kind, ...more }) as Part;
const receiver = { socket: { type: "receiver", family: "Quillon 2" } };
/** A complete club, and a loose head that could have its shaft. */
const donor = {
  parts: [
    part("H1", "head", { ...receiver, clubType: "driver" }),
    part("A1", "adapter", { family: "Quillon 2" }),
    part("S1", "shaft"),
    part("G1", "grip"),
    part("H2", "head", { ...receiver, clubType: "fairway" }),
  ],
  joints: [
    { type: "screwed", parts: ["H1", "A1"] },
    { type: "bonded", parts: ["A1", "S1"] },
    { type: "gripped", parts: ["S1", "G1"] },
  ],
} satisfies PlanInput["bench"];

const input = (more: Partial<PlanInput> = {}): PlanInput => ({
  ...{ bench: donor, rules: [], reference, catalogue: [], sightings: [], costs: plainCosts },
  evidence: [sold("club", 12_000), sold("head", 5000), sold("shaft", 4000), sold("cover", 900)],
  today: "2026-11-25",
  wishes: { budgetMinor: null, minutes: null, mostOfType: {}, hours: "at-own-rate", leastPerHourMinor: null },
  ...more,
});

const choose = (uses: string[], bundles: string[] = []): PlanChoice => ({
  uses: Object.fromEntries(uses.map((id) => [id, 1])),
  bundles,
});
const idsOf = (setup: ReturnType<typeof planSetup>) =>
  [...setup.uses.keys()].filter((id) => !id.startsWith("wait"));

describe("what can be done with a complete club", () => {
  it("is to sell it whole, to sell its pieces, and to build with one of them", () => {
    const ids = idsOf(planSetup(input()));
    for (const id of ["sell H1", "sell A1+S1+G1", "sell H2", "build H2+A1+S1+G1"])
      expect(ids.map((each) => each.split(/[ +]/u).toSorted().join())).toContain(
        id.split(/[ +]/u).toSorted().join(),
      );
    expect(ids.filter((id) => id.startsWith("build H1"))).toEqual([]);
  });

  it("is taken apart once for both its pieces, with the caution that belongs to it", () => {
    const setup = planSetup(input());
    const build = [...setup.uses.values()].find(({ id }) => id === "build H2+A1+S1+G1");
    expect(build?.club?.work.map(({ step }) => step)).toEqual(["screw-in"]);
    const [bundle] = setup.model.bundles;
    // Two minutes of an hour worth 12 euros, and the material of the table.
    expect(bundle).toMatchObject({ priceMinor: 50, minutes: 2, timeMinor: 40 });
    const { actions, kept } = planActions(
      choose(["build H2+A1+S1+G1", "sell H1"], [bundle?.id ?? ""]),
      setup,
    );
    expect(actions.map((action) => action.do)).toEqual(["take-apart", "build", "sell"]);
    expect(actions[0]).toMatchObject({ netMinor: -90, outlayMinor: 50, minutes: 2 });
    expect(actions[0]?.parts.toSorted()).toEqual(["A1", "G1", "H1", "S1"]);
    expect(actions[0]?.work[0]?.cautions.map(({ code }) => code)).toEqual(["look-first"]);
    expect(kept).toEqual([]);
  });

  it("is not to take it apart where that is more than the skill allowed", () => {
    const glued = {
      parts: donor.parts
        .filter(({ id }) => id !== "A1" && id !== "H2")
        .map((each) => ({ ...each, socket: undefined }) as Part),
      joints: [
        { type: "bonded" as const, parts: ["H1", "S1"] as [string, string] },
        { type: "gripped" as const, parts: ["S1", "G1"] as [string, string] },
      ],
    };
    const sells = (skill: "screw" | "bond") =>
      idsOf(planSetup(input({ bench: { ...glued, goal: { skill } } }))).length;
    expect(sells("screw")).toBe(1);
    expect(sells("bond")).toBe(3);
  });

  it("is not to sell or build with what must not be swung", () => {
    const parts = donor.parts.map((each) =>
      each.id === "H1" ? ({ ...each, faults: ["crack"] } as Part) : each,
    );
    const ids = idsOf(planSetup(input({ bench: { ...donor, parts } })));
    expect(ids.filter((id) => id.split(/[ +]/u).includes("H1"))).toEqual([]);
    expect(ids.some((id) => id.startsWith("sell") && id.includes("S1"))).toBe(true);
  });
});

describe("an adapter on a shaft that are wanted apart", () => {
  /** A shaft with its adapter, a bare shaft, a head that needs an adapter and one that takes the shaft itself. */
  const shared = {
    parts: [
      part("H1", "head", { ...receiver, clubType: "driver" }),
      part("H2", "head", { socket: { type: "bore" }, clubType: "fairway" }),
      part("A1", "adapter", { family: "Quillon 2" }),
      part("S1", "shaft"),
      part("G1", "grip"),
      part("S2", "shaft", { flex: "stiff" }),
      part("G2", "grip", { model: "Corded" }),
    ],
    joints: [
      { type: "bonded", parts: ["A1", "S1"] },
      { type: "gripped", parts: ["S1", "G1"] },
    ],
    goal: { skill: "bond" },
  } satisfies PlanInput["bench"];
  const setup = planSetup(input({ bench: shared }));
  const [pulled, left] = ["build H1+A1+S2+G2", "build H2+-+S1+G1"];
  const bundle = setup.model.bundles.find(({ gives }) =>
    setup.uses.get(pulled)?.takes.some(({ resource }) => gives.some((gift) => gift.resource === resource)),
  );

  it("are taken apart once for both clubs, and paid once", () => {
    for (const id of [pulled, left])
      expect(setup.uses.get(id)?.club?.work.map(({ step }) => step)).not.toContain("pull-adapter");
    // Twenty minutes of an hour worth 12 euros, and the material of the table.
    expect(bundle).toMatchObject({ priceMinor: 50, minutes: 20, timeMinor: 400 });
    const { actions } = planActions(choose([pulled, left], [bundle?.id ?? ""]), setup);
    expect(actions.map((action) => action.do)).toEqual(["take-apart", "build", "build"]);
    expect(actions[0]).toMatchObject({ netMinor: -450, outlayMinor: 50, minutes: 20 });
    expect(actions[0]?.parts.toSorted()).toEqual(["A1", "G1", "S1"]);
    expect(actions[0]?.work.map(({ step }) => step)).toEqual(["pull-adapter"]);
  });

  it("are taken apart for one of them alone at the same price, and not at all for a club of both", () => {
    const whole = setup.uses.get("build H1+A1+S1+G1");
    expect(whole?.takes.map(({ resource }) => resource)).not.toContain(bundle?.gives[0]?.resource);
    expect(whole?.takes.map(({ resource }) => resource)).not.toContain(bundle?.gives[1]?.resource);
    const { actions } = planActions(choose([left], [bundle?.id ?? ""]), setup);
    expect(actions.map((action) => action.do)).toEqual(["take-apart", "build"]);
    const net = (setup.uses.get(left)?.netMinor ?? 0) - (bundle?.priceMinor ?? 0) - (bundle?.timeMinor ?? 0);
    expect(actions.reduce((sum, { netMinor }) => sum + netMinor, 0)).toBe(net);
  });
});

describe("what can be done with what is offered", () => {
  const listing = aListing([anItem({ kind: "head", clubType: "driver", cover: true })], {
    asking: euros(2000),
  });
  const sightings: PlanInput["sightings"] = [
    { id: "L1", seenOn: "2026-11-20", text: "", read: listing, listing, outcome: "open" },
  ];

  it("is to sell a head with its cover as one, at the price of both together", () => {
    const costs = { ...plainCosts, adjustments: { ...plainCosts.adjustments, noCover: 0.8 } };
    const setup = planSetup(input({ sightings, costs, bench: { parts: [] } }));
    const [alone, together] = ["sell offer-L1-head", "sell offer-L1-head+offer-L1-cover"].map((id) =>
      setup.uses.get(id),
    );
    expect(together?.parts).toEqual(["offer-L1-head", "offer-L1-cover"]);
    expect(together?.netMinor).toBeGreaterThanOrEqual(alone?.netMinor ?? Number.POSITIVE_INFINITY);
  });

  it.each(["at-own-rate", "for-nothing"] as const)(
    "is worth its hours or nothing where an hour has to bring so much, the price of what is bought counted (%s)",
    (hours) => {
      // A head at 50 less a tenth and packaging of 1 is 44 in 10 minutes: 264 an hour; bought for 20, it is 24: 144 an hour.
      const alone = { bench: { parts: [part("H1", "head")] } };
      const bought = { bench: { parts: [] }, sightings };
      const brings = (given: Partial<PlanInput>, leastPerHourMinor: number | null) => {
        const { model } = planSetup(
          input({ ...given, wishes: { ...input().wishes, leastPerHourMinor, hours } }),
        );
        const best = Math.max(...model.uses.map(({ netMinor }) => netMinor));
        return best - (model.bundles[0]?.priceMinor ?? 0);
      };
      const [own, sale] = [brings(alone, null), hours === "for-nothing" ? 4400 : 4200];
      expect(Math.abs(own - sale)).toBeLessThan(20);
      const gross = own + (sale === 4200 ? 200 : 0);
      expect(brings(alone, 6 * gross - 60)).toBe(10);
      expect(brings(alone, 6 * gross + 60)).toBe(-10);
      expect(brings(bought, 6 * (gross - 2000) - 60)).toBe(10);
      expect(brings(bought, 6 * (gross - 2000) + 60)).toBe(-10);
      // An hour that costs as much already brings that anyway.
      expect(brings(alone, 100)).toBe(hours === "for-nothing" ? own - 17 : own);
    },
  );
});
