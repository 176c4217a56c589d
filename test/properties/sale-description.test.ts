import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faultNames } from "../../packages/core/src/parts/fault.ts";
import type { Joint } from "../../packages/core/src/parts/joint.ts";
import type { Part } from "../../packages/core/src/parts/part.ts";
import type { Measurement } from "../../packages/core/src/sheet/measurement.ts";
import { type SaleDescription, saleDescription } from "../../packages/core/src/sheet/sale-description.ts";
import type { SaleFact, SaleLine } from "../../packages/core/src/sheet/sale-line.ts";
import { firstSaleTemplate, parseSaleTemplate } from "../../packages/core/src/sheet/sale-template.ts";
import { unsafeFaults } from "../../packages/core/src/worth/unsafe-faults.ts";

/** Names without digits, so that every number in a description has to come from somewhere else. */
const maker = fc.constantFrom("Northmoor", "Haldenbach", "Kestrelyn");
const model = fc.constantFrom("Ombrel", "Skerrick", "Tarn");
const reading = (min: number, max: number) =>
  fc
    .record({
      value: fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100),
      source: fc.constantFrom("measured", "stated", "catalogue"),
    })
    .map(({ value, source }) => (source === "stated" ? value : { value, source }));
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const secretNote = "bought from a widow, knew nothing";
const secretMinor = 987_654;

const common = {
  maker: maybe(maker),
  model: maybe(model),
  faults: maybe(fc.uniqueArray(fc.constantFrom(...faultNames), { maxLength: 3 })),
  deniedFaults: maybe(fc.uniqueArray(fc.constantFrom(...faultNames), { maxLength: 3 })),
  note: fc.constant(secretNote),
  paid: fc.constant({ amountMinor: secretMinor, currency: "EUR" }),
};
const head = fc.record({
  ...common,
  id: fc.constant("h"),
  kind: fc.constant("head"),
  clubType: maybe(fc.constantFrom("driver", "iron", "putter")),
  hand: maybe(fc.constantFrom("right", "left")),
  loftDeg: maybe(reading(8, 60)),
  lieDeg: maybe(reading(50, 70)),
  massG: maybe(reading(180, 300)),
  socket: maybe(fc.constant({ type: "receiver" })),
});
const shaft = fc.record({
  ...common,
  id: fc.constant("s"),
  kind: fc.constant("shaft"),
  flex: maybe(fc.constantFrom("regular", "stiff")),
  material: maybe(fc.constantFrom("graphite", "steel")),
  massG: maybe(reading(40, 130)),
});
const grip = fc.record({
  ...common,
  id: fc.constant("g"),
  kind: fc.constant("grip"),
  massG: maybe(reading(25, 65)),
});
const cover = fc.record({ id: fc.constant("c"), kind: fc.constant("cover") });
const stated = (part: object) =>
  Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as Part;

const joints: readonly Joint[] = [{ type: "bonded", parts: ["h", "s"] }];
const figure = (min: number, max: number) =>
  maybe(fc.record({ value: fc.integer({ min, max }), plusMinus: fc.constant(1) }));
const measured = fc.record({
  playingLengthIn: figure(30, 48),
  swingWeightPoints: figure(0, 69),
  massG: figure(250, 500),
});
const measurementOf = (read: object): Measurement => ({
  id: "m",
  on: "2026-11-25",
  club: "h+-+s+g",
  parts: ["h", "s", "g"],
  measured: stated(read) as unknown as Measurement["measured"],
  estimated: {},
});

interface Sold {
  readonly parts: readonly Part[];
  readonly measurement: Measurement | undefined;
}
const sold: fc.Arbitrary<Sold> = fc
  .tuple(head, shaft, grip, maybe(cover), maybe(measured))
  .map(([one, other, third, extra, read]) => ({
    parts: [one, other, third, ...(extra ? [extra] : [])].map(stated),
    measurement: read && measurementOf(read),
  }));

const template = parseSaleTemplate(firstSaleTemplate);
function describeSale({ parts, measurement }: Sold) {
  if (!template.ok) throw new Error("the first template is read");
  return saleDescription({
    parts,
    joints,
    ...(measurement ? { measurement } : {}),
    inspections: [],
    clearances: [],
    resale: { known: false, question: "What would it go for?" },
    evidence: [],
    template: template.value,
  });
}

const lineNames = ["parts", "measures", "condition", "extras", "unknown"] as const;
const claims = (description: SaleDescription): readonly SaleLine[] => [
  description.title,
  ...lineNames.filter((name) => name !== "unknown").flatMap((name) => description[name]),
];

/** The numbers that a fact may put into words: itself, in centimetres, as a letter and number of swing weight, or a day. */
function numbersOf(fact: SaleFact, { parts, measurement }: Sold): readonly number[] {
  if (fact.of === "measurement") {
    const value = fact.quantity === "built" ? undefined : measurement?.measured[fact.quantity]?.value;
    if (value === undefined) return [2026, 11, 25];
    return [value, Number((value * 2.54).toFixed(1)), value % 10, 2026, 11, 25];
  }
  if (fact.of !== "part") return [];
  const part = parts.find(({ id }) => id === fact.part) as Record<string, unknown> | undefined;
  const written = part?.[fact.field] as number | { value?: number } | undefined;
  const value = typeof written === "object" ? written.value : written;
  return typeof value === "number" ? [value] : [];
}

/** Whether a fact that a claim cites is there to be cited. */
function isThere(fact: SaleFact, { parts, measurement }: Sold): boolean {
  switch (fact.of) {
    case "part": {
      const part = parts.find(({ id }) => id === fact.part) as Record<string, unknown> | undefined;
      return part?.[fact.field] !== undefined;
    }
    case "measurement":
      return fact.quantity === "built"
        ? measurement?.built === true
        : measurement?.measured[fact.quantity] !== undefined;
    case "joint":
      return joints.some(({ parts: [a, b] }) => fact.parts[0] === a && fact.parts[1] === b);
    case "offer":
      return fact.parts.every((id) => parts.some((part) => part.id === id));
    default:
      return false;
  }
}

describe("a description for sale", () => {
  it("is drafted exactly where no fault of safety stands", () => {
    fc.assert(
      fc.property(sold, (given) => {
        const answer = describeSale(given);
        expect(answer.ok).toBe(unsafeFaults(given.parts).length === 0);
      }),
    );
  });

  const safe = sold.filter(({ parts }) => unsafeFaults(parts).length === 0);
  const drafted = (given: Sold) => {
    const answer = describeSale(given);
    if (!answer.ok) throw new Error("nothing stops it");
    return answer.description;
  };

  it("claims nothing but by facts that are on the bench", () => {
    fc.assert(
      fc.property(safe, (given) => {
        for (const { text, from } of claims(drafted(given)))
          for (const fact of from)
            expect(isThere(fact, given), `${text}: ${JSON.stringify(fact)}`).toBe(true);
      }),
    );
  });

  it("has no number in it that a cited fact does not have", () => {
    fc.assert(
      fc.property(safe, (given) => {
        for (const { text, from } of claims(drafted(given))) {
          const allowed = from.flatMap((fact) => numbersOf(fact, given));
          const said = [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits));
          expect(
            said.filter((number) => !allowed.some((one) => Math.abs(one - number) < 1e-6)),
            text,
          ).toEqual([]);
        }
      }),
    );
  });

  it("says of what nobody has stated that it is not known, and nothing else", () => {
    fc.assert(
      fc.property(safe, (given) => {
        const { unknown, parts, text } = drafted(given);
        const open = unknown.map((line) => line.text).join("\n");
        const [one, other] = given.parts as [Part & { loftDeg?: unknown }, Part & { flex?: unknown }];
        if (one.loftDeg === undefined) {
          expect(open).toMatch(/Not known of the .*loft/);
          expect(parts.map((line) => line.text).join("\n")).not.toContain("loft");
        }
        if (other.flex === undefined) expect(text).not.toMatch(/flex (regular|stiff)/);
        if (given.measurement?.measured.massG === undefined) expect(open).toMatch(/Not measured: .*mass/);
      }),
    );
  });

  it("keeps notes and what was paid to itself, and never calls anything safe or conforming", () => {
    fc.assert(
      fc.property(safe, (given) => {
        const { text } = drafted(given);
        expect(text).not.toContain(secretNote);
        expect(text).not.toMatch(/9876|98765/);
        expect(text).not.toMatch(/\b(safe|conform|legal|genuine|authentic|mint|like new|guarantee)/i);
      }),
    );
  });

  it("names every fault that is said of a part, and no fault that is not", () => {
    fc.assert(
      fc.property(safe, (given) => {
        const { condition } = drafted(given);
        const has = condition.filter(({ text }) => / has /.test(text) && text.startsWith("The "));
        expect(has).toHaveLength(given.parts.filter(({ faults }) => (faults ?? []).length > 0).length);
      }),
    );
  });
});
