import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimateResale } from "./estimate-resale.ts";
import type { Evidence, Subject } from "./evidence.ts";
import {
  driverHead,
  normalFrom,
  parkMiller,
  plainAdjustments,
  plainSettings,
  price,
  today,
} from "./resale.test-kit.ts";
import type { Resale } from "./resale.ts";

function known(resale: Resale) {
  if (!resale.known) throw new Error(`expected an estimate, got: ${resale.question}`);
  return resale;
}

const estimate = (evidence: readonly Evidence[], subject: Subject = driverHead, settings = plainSettings) =>
  known(estimateResale(subject, evidence, settings, today));

describe("estimateResale without evidence", () => {
  it("asks for one price in plain words", () => {
    expect(estimateResale(driverHead, [], plainSettings, today)).toEqual({
      known: false,
      question:
        "What would a right-handed Northmoor Quillon 2 driver head sell for? Note one price you have seen, asked or paid.",
    });
  });

  it.each<[string, Subject]>([
    ["an adapter", { kind: "adapter" }],
    ["a left-handed fairway wood (5)", { kind: "club", hand: "left", clubType: "fairway", clubNumber: "5" }],
    [
      "a Vexholm Reedlace 60 stiff shaft with its adapter",
      { kind: "shaft", maker: "Vexholm", model: "Reedlace 60", flex: "stiff", adapter: "fitted" },
    ],
  ])("asks about %s", (words, subject) => {
    const resale = estimateResale(subject, [], plainSettings, today);
    expect(resale).toMatchObject({ known: false, question: expect.stringContaining(`would ${words} sell`) });
  });

  it("does not take the price of something else", () => {
    const other = [
      price("shaft", 5000, { kind: "shaft" }),
      price("putter", 5000, { clubType: "putter" }),
      price("other hand and model", 5000, { hand: "left", model: "Tarnlock" }),
      price("given away", 0),
    ];
    expect(estimateResale(driverHead, other, plainSettings, today).known).toBe(false);
  });

  it("leaves a price in a currency without a rate out, and says so", () => {
    const resale = estimateResale(
      driverHead,
      [price("far", 9000, { price: { amountMinor: 9000, currency: "GBP" } })],
      plainSettings,
      today,
    );
    expect(resale).toMatchObject({
      known: false,
      question: expect.stringMatching(/Prices in GBP were left out, since no rate for them is typed in\.$/),
    });
  });
});

describe("estimateResale of one thing's own prices", () => {
  it("takes one price as the middle, and spreads it as Student's t with the prior's four degrees of freedom", () => {
    const resale = estimate([price("one", 10_000)]);
    // 100.00 × exp(± 2.776 × 0.2 × √2), t from NIST/SEMATECH e-Handbook 1.3.6.7.2: derived, no published source.
    expect(resale.valueMinor).toBe(10_000);
    expect(Math.abs(resale.lowMinor - 10_000 * Math.exp(-2.776 * 0.2 * Math.SQRT2))).toBeLessThan(3);
    expect(Math.abs(resale.highMinor - 10_000 * Math.exp(2.776 * 0.2 * Math.SQRT2))).toBeLessThan(8);
    expect(resale.effectiveCount).toBeCloseTo(1, 9);
    expect(resale.basis).toEqual([
      { evidence: "one", closeness: "same-model-and-condition", share: 1, adjustedMinor: 10_000 },
    ]);
    expect(resale.daysToSell).toBeNull();
  });

  it("takes the weighted mean of logarithms: a price a year old counts half", () => {
    // Derived by hand: (1 × ln 100 + ½ × ln 80) / 1½, no published source.
    const resale = estimate([price("new", 10_000), price("old", 8000, { on: "2025-11-25" })]);
    const byHand = Math.exp((Math.log(10_000) + 0.5 * Math.log(8000)) / 1.5);
    expect(Math.abs(resale.valueMinor - byHand)).toBeLessThanOrEqual(0.5);
    expect(resale.effectiveCount).toBeCloseTo(1.5, 9);
    expect(resale.basis.map(({ share }) => share)).toEqual([
      expect.closeTo(2 / 3, 9),
      expect.closeTo(1 / 3, 9),
    ]);
  });

  it("weighs the more recent of two prices more", () => {
    const dates = fc.date({
      min: new Date("2018-01-01"),
      max: new Date("2026-11-24"),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(dates, (date) => {
        const { basis } = estimate([
          price("new", 7000),
          price("old", 9000, { on: date.toISOString().slice(0, 10) }),
        ]);
        expect(basis[0]?.evidence).toBe("new");
        expect(basis[0]!.share).toBeGreaterThan(basis[1]!.share);
      }),
    );
  });

  it.each([1, 2, 7])("counts %i sales of the thing for so many, however they scatter", (count) => {
    const sales = Array.from({ length: count }, (_, at) => price(`own ${at}`, 8000 + 900 * at));
    expect(estimate(sales).effectiveCount).toBeCloseTo(count, 9);
  });

  it("converts at the typed-in rate", () => {
    const settings = { ...plainSettings, rates: { GBP: 1.25 } };
    const inPounds = price("pounds", 0, { price: { amountMinor: 8000, currency: "GBP" } });
    expect(estimate([inPounds], driverHead, settings).valueMinor).toBe(10_000);
  });
});

describe("estimateResale of others' prices", () => {
  const others = [1, 2, 3, 4, 5, 6].map((at) =>
    price(`other ${at}`, 10_000, { maker: "Haldenbach", model: "Tarnlock", year: 2022 }),
  );

  it("never counts one other model, however often seen, for more than how alike models are", () => {
    const resale = estimate(others);
    // Six prices without scatter beside a prior worth four bring the variance v to 0.2² × 4 / 9, the fixed point of
    // f = (4 + f) / 10; between two models lie 2 × (0.37² + 0.15²). Derived, no published source.
    const v = (0.2 ** 2 * 4) / 9;
    expect(resale.effectiveCount).toBeCloseTo(v / (v / 6 + 2 * (0.37 ** 2 + 0.15 ** 2)), 4);
    expect(resale.basis[0]?.closeness).toBe("same-class-and-age");
  });

  it("is wider than one price of the thing itself", () => {
    expect(estimate(others).sigmaLog).toBeGreaterThan(estimate([price("own", 10_000)]).sigmaLog);
  });

  it("lets one price of the thing itself outweigh them all", () => {
    const resale = estimate([...others, price("own", 20_000)]);
    expect(resale.basis[0]).toMatchObject({ evidence: "own" });
    expect(resale.basis[0]!.share).toBeGreaterThan(0.5);
    expect(resale.valueMinor).toBeGreaterThan(17_000);
    expect(resale.basis.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it("weighs the close more than the far", () => {
    const { basis } = estimate([
      price("condition", 9000),
      price("model", 9000, { condition: "fair" }),
      price("age", 9000, { model: "Tarnlock" }),
      price("class", 9000, { model: "Brackwater", year: 2010 }),
    ]);
    expect(basis.map(({ evidence, closeness }) => [evidence, closeness])).toEqual([
      ["condition", "same-model-and-condition"],
      ["model", "same-model"],
      ["age", "same-class-and-age"],
      ["class", "same-class"],
    ]);
  });
});

describe("estimateResale of all that prices say together", () => {
  const models = Array.from({ length: 12 }, (_, at) => `Tarnlock ${at}`);
  const sold = models.map((model, at) => price(model, 9000 + 300 * (at % 5), { model }));
  const unseen = { ...driverHead, model: "Tarnlock 99" };
  const middle = (evidence: readonly Evidence[], subject: Subject = unseen, settings = plainSettings) =>
    Math.log(estimate(evidence, subject, settings).valueMinor);

  it("is moved by less than a tenth of the way by a lone price asked for another model", () => {
    const lone = price("lone", 30_000, { model: "Brackwater", what: "asked" });
    const moved = middle([...sold, lone]) - middle(sold);
    expect(moved).toBeGreaterThan(0);
    expect(moved).toBeLessThan(0.1 * (Math.log(30_000) - middle(sold)));
  });

  it("is moved more by a price that was paid than by one that was asked", () => {
    const lone = price("lone", 30_000, { model: "Brackwater" });
    expect(middle([...sold, lone])).toBeGreaterThan(middle([...sold, { ...lone, what: "asked" }]));
  });

  it("takes a newer model for dearer where newer ones are, and the older for cheaper", () => {
    const aged = models.map((model, at) =>
      price(model, Math.round(10_000 * Math.exp(0.12 * (at - 6))), { model, year: 2010 + at }),
    );
    const trend = middle(aged, { ...unseen, year: 2021 }) - middle(aged, { ...unseen, year: 2011 });
    // The prices were made with 0.12 a year: held back a little by what is taken for granted.
    expect(trend).toBeGreaterThan(0.8 * 1.2);
    expect(trend).toBeLessThan(1.2);
  });

  it("takes a head for dearer whose club is dear", () => {
    const clubs = models.map((model, at) =>
      price(`club ${model}`, sold[at]!.price.amountMinor * 2, { model, kind: "club" }),
    );
    const dear = price("dear", 45_000, { model: "Tarnlock 99", kind: "club" });
    const [before, after] = [middle([...sold, ...clubs]), middle([...sold, ...clubs, dear])];
    expect(after).toBeGreaterThan(before + 0.2);
    expect(after).toBeLessThan(Math.log(22_500));
    const { basis } = estimate([...sold, ...clubs, dear], unseen);
    expect(basis[0]).toMatchObject({ evidence: "dear", closeness: "same-class" });
    expect(estimate([...sold, ...clubs, dear], unseen).sigmaLog).toBeLessThan(
      estimate(sold, unseen).sigmaLog,
    );
  });

  it("does not take a club's price for a head's where no head's is known", () => {
    const club = price("club", 20_000, { kind: "club" });
    expect(estimateResale(driverHead, [club], plainSettings, today).known).toBe(false);
  });
});

describe("estimateResale with adjustments", () => {
  const settings = {
    ...plainSettings,
    adjustments: {
      ...plainAdjustments,
      askedOverSold: 1.25,
      fair: 0.8,
      noCover: 0.9,
      season: [0.8, 0.8, 1, 1, 1, 1.1, 1.1, 1, 1, 1, 0.9, 0.8],
    },
  };

  // Division by the factor that is stated: derived, no published source.
  it.each<[string, Partial<Evidence>, Partial<Subject>, number, string[]]>([
    ["from asked to paid", { what: "asked" }, {}, 8000, ["askedOverSold"]],
    ["from fair up to good", { condition: "fair" }, {}, 12_500, ["fair"]],
    ["from good down to fair", {}, { condition: "fair" }, 8000, ["fair"]],
    ["for the cover that it lacks", {}, { cover: false }, 9000, ["noCover"]],
    ["for the cover that the other lacked", { cover: false }, {}, 11_111, ["noCover"]],
    ["from June to November", { on: "2026-06-25" }, {}, 8182, ["season"]],
    ["not for a condition that is not known", { condition: undefined }, {}, 10_000, []],
    ["not for a cover that is not known", {}, { cover: undefined }, 10_000, []],
  ])("adjusts %s", (_, evidence, subject, adjustedMinor, names) => {
    const resale = estimate([price("one", 10_000, evidence)], { ...driverHead, ...subject }, settings);
    expect(resale.valueMinor).toBe(adjustedMinor);
    expect(resale.adjustments.map(({ name }) => name)).toEqual(names);
    expect(resale.adjustments.every(({ fittedFrom }) => fittedFrom === 0)).toBe(true);
  });

  it("is less sure where condition or cover are not known", () => {
    const sure = estimate([price("one", 10_000)]);
    const { condition: _, ...ungraded } = driverHead;
    const { cover: __, ...uncovered } = driverHead;
    expect(estimate([price("one", 10_000)], ungraded).sigmaLog).toBeGreaterThan(sure.sigmaLog);
    expect(estimate([price("one", 10_000)], uncovered).sigmaLog).toBeGreaterThan(sure.sigmaLog);
  });
});

describe("days to sell", () => {
  it("come from sales that say them", () => {
    const { daysToSell } = estimate([
      price("a", 9000, { daysToSell: 10 }),
      price("b", 9000, { daysToSell: 40 }),
      price("c", 9000),
      price("d", 9000, { what: "asked", daysToSell: 400 }),
    ]);
    // The geometric mean of 10 and 40 is 20: derived, no published source.
    expect(daysToSell?.value).toBe(20);
    expect(daysToSell!.low).toBeLessThan(10);
    expect(daysToSell!.high).toBeGreaterThan(40);
  });
});

const rows = fc.array(
  fc.record({
    amountMinor: fc.integer({ min: 1, max: 100_000 }),
    model: fc.constantFrom("Quillon 2", "Tarnlock", "Brackwater", undefined),
    year: fc.constantFrom(2012, 2021, 2022, undefined),
    what: fc.constantFrom("sold" as const, "asked" as const),
    condition: fc.constantFrom("good" as const, "fair" as const, undefined),
    on: fc.constantFrom("2024-02-29", "2026-01-15", "2026-11-20", "2027-01-01"),
    daysToSell: fc.option(fc.integer({ min: 0, max: 400 }), { nil: undefined }),
  }),
  { minLength: 1, maxLength: 14 },
);
const evidenceOf = (drawn: readonly (Partial<Evidence> & { amountMinor: number })[]) =>
  drawn.map(({ amountMinor, ...other }, at) => price(`price ${at}`, amountMinor, other));
const fittingSettings = { ...plainSettings, adjustments: { ...plainAdjustments, fair: 0.8, fit: true } };

describe("estimateResale, whatever the evidence", () => {
  it("does not mind the order in which prices were noted", () => {
    fc.assert(
      fc.property(rows, fc.array(fc.nat(), { minLength: 14, maxLength: 14 }), (drawn, keys) => {
        const evidence = evidenceOf(drawn);
        const shuffled = evidence
          .map((row, at) => ({ row, key: keys[at] ?? 0 }))
          .sort((one, other) => one.key - other.key)
          .map(({ row }) => row);
        expect(estimateResale(driverHead, shuffled, fittingSettings, today)).toEqual(
          estimateResale(driverHead, evidence, fittingSettings, today),
        );
      }),
    );
  });

  it("gives whole amounts in order, shares that add up to 1, and a positive count", () => {
    fc.assert(
      fc.property(rows, (drawn) => {
        const resale = estimate(evidenceOf(drawn), driverHead, fittingSettings);
        const { lowMinor, valueMinor, highMinor } = resale;
        expect([lowMinor, valueMinor, highMinor].every(Number.isInteger)).toBe(true);
        expect(lowMinor <= valueMinor && valueMinor <= highMinor).toBe(true);
        expect(resale.basis.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(resale.effectiveCount).toBeGreaterThan(0);
      }),
    );
  });

  it("is made narrower, or as good as, by one more sale of the thing itself at just the estimate", () => {
    const ratios = fc.sample(rows, { seed: 20261125, numRuns: 400 }).map((drawn) => {
      // Twentyfold apart at most: prices that have nothing to do with each other unsettle what is learnt of the spreads.
      const tame = drawn.map((row) => ({ ...row, amountMinor: 2000 + (row.amountMinor % 38_000) }));
      const before = estimate(evidenceOf(tame));
      const after = estimate([...evidenceOf(tame), price("one more", before.valueMinor)]);
      return after.sigmaLog / before.sigmaLog;
    });
    // How wide prices are spread is learnt anew with each, so once in a while an interval grows, and never by much.
    expect(ratios.filter((ratio) => ratio < 1.01).length).toBeGreaterThanOrEqual(0.99 * ratios.length);
    expect(Math.max(...ratios)).toBeLessThan(1.1);
  });

  it("scales with the unit of money", () => {
    fc.assert(
      fc.property(rows, (drawn) => {
        const once = estimate(evidenceOf(drawn));
        const tenfold = estimate(
          evidenceOf(drawn.map((row) => ({ ...row, amountMinor: row.amountMinor * 10 }))),
        );
        expect(tenfold.sigmaLog).toBeCloseTo(once.sigmaLog, 6);
        expect(Math.abs(tenfold.valueMinor - once.valueMinor * 10)).toBeLessThanOrEqual(6);
      }),
    );
  });
});

interface Market {
  readonly own: number;
  readonly otherModels: number;
  /** Standard deviation of the logarithm of the price from sale to sale, drawn evenly between these. */
  readonly spread: readonly [number, number];
  readonly level: number;
}

/** Share of next sales that fall inside the 95 % interval, over many drawn markets. */
function coverage({ own, otherModels, spread, level }: Market, markets: number): number {
  const draw = parkMiller(20_261_125);
  const normal = normalFrom(draw);
  let inside = 0;
  for (let market = 0; market < markets; market += 1) {
    const middle = Math.log(3000 + 20_000 * draw());
    const sd = spread[0] + (spread[1] - spread[0]) * draw();
    const ofModel = () => middle + level * normal();
    const sale = (at: number) => Math.round(Math.exp(at + sd * normal()));
    const ownLevel = ofModel();
    const evidence = Array.from({ length: own }, (_, at) => price(`own ${at}`, sale(ownLevel)));
    for (let model = 0; model < otherModels; model += 1) {
      const otherLevel = ofModel();
      for (let at = 0; at < 3; at += 1)
        evidence.push(price(`other ${model} ${at}`, sale(otherLevel), { model: `Tarnlock ${model}` }));
    }
    const resale = estimate(evidence);
    const next = sale(ownLevel);
    if (resale.lowMinor <= next && next <= resale.highMinor) inside += 1;
  }
  return inside / markets;
}

describe("the 95 % interval on drawn markets", () => {
  it.each<[string, number, Market]>([
    ["one own price", 93, { own: 1, otherModels: 0, spread: [0.1, 0.3], level: 0.4 }],
    ["two own prices", 93, { own: 2, otherModels: 0, spread: [0.1, 0.3], level: 0.4 }],
    ["three own prices", 93, { own: 3, otherModels: 0, spread: [0.1, 0.3], level: 0.4 }],
    ["three own prices in a lively market", 93, { own: 3, otherModels: 0, spread: [0.2, 0.35], level: 0.4 }],
    ["ten own prices", 93, { own: 10, otherModels: 0, spread: [0.1, 0.3], level: 0.4 }],
    [
      "two own prices among five other models",
      93,
      { own: 2, otherModels: 5, spread: [0.1, 0.3], level: 0.4 },
    ],
    ["two other models alone", 93, { own: 0, otherModels: 2, spread: [0.1, 0.3], level: 0.4 }],
    ["six other models alone", 93, { own: 0, otherModels: 6, spread: [0.1, 0.3], level: 0.4 }],
    ["six models that differ more", 90, { own: 0, otherModels: 6, spread: [0.1, 0.3], level: 0.6 }],
  ])("with %s holds more than %i and fewer than 99 of a hundred next sales", (_, least, market) => {
    const share = coverage(market, 600);
    expect(share).toBeGreaterThan(least / 100);
    expect(share).toBeLessThan(0.99);
  });
});
