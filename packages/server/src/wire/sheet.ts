import {
  type BuildSheet,
  buildSchema,
  type Comparison,
  measuredQuantityNames,
  type SaleDescription,
  sheetDimensionNames,
  skillSchema,
  verdicts,
} from "@ferrule/core";
import { z } from "zod";
import { estimatesSchema } from "./estimates.ts";
import { moneyReplySchema } from "./money.ts";
import { namedMeasurementSchema } from "./named.ts";
import { workStepSchema } from "./resolution.ts";

const quantitySchema = z.enum(measuredQuantityNames as [string, ...string[]]) as z.ZodType<
  (typeof measuredQuantityNames)[number]
>;
const uncertainSchema = z.strictObject({ value: z.number(), plusMinus: z.number() });
const spanSchema = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });

const comparisonSchema = z.strictObject({
  quantity: quantitySchema,
  measured: uncertainSchema,
  estimated: uncertainSchema.nullable(),
  difference: z.number().nullable(),
  isSurprising: z.boolean(),
}) satisfies z.ZodType<Comparison>;

export const comparedShape = { measurement: namedMeasurementSchema, comparisons: z.array(comparisonSchema) };

const dimensionSchema = z.strictObject({
  name: z.enum(sheetDimensionNames),
  valueIn: z.number(),
  workshop: z.strictObject({ nearestIn: z.number(), nearestMm: z.number() }).nullable(),
  plusMinusIn: z.number().nullable(),
  source: z.enum(["measured", "stated", "catalogue", "typical", "chosen", "worked-out"]),
});

const blankSchema = z.strictObject({
  quantity: quantitySchema,
  estimate: spanSchema.nullable(),
  experience: z
    .strictObject({
      bias: uncertainSchema,
      clubs: z.number().int(),
      clubsOfAll: z.number().int(),
      expected: spanSchema,
    })
    .nullable(),
});

const checkSchema = z.strictObject({
  row: z.string(),
  question: z.string(),
  state: z.enum(["found", "not-there", "not-looked"]),
});

/** Core's `BuildSheet` as it goes over the wire. */
export const buildSheetSchema = z
  .strictObject({
    club: z.string(),
    title: z.string(),
    verdict: z.enum(verdicts),
    parts: z.array(
      z.strictObject({
        role: z.enum(["head", "adapter", "shaft", "grip"]),
        id: z.string(),
        title: z.string(),
        note: z.string().nullable(),
        checks: z.array(checkSchema),
      }),
    ),
    dimensions: z.array(dimensionSchema),
    steps: z.array(workStepSchema),
    minutes: z.number(),
    cureMinutes: z.number(),
    skill: skillSchema,
    blanks: z.array(blankSchema),
    estimates: estimatesSchema,
    build: buildSchema,
  })
  .meta({ id: "BuildSheet" }) satisfies z.ZodType<BuildSheet>;

const factSchema = z.discriminatedUnion("of", [
  z.strictObject({ of: z.literal("part"), part: z.string(), field: z.string() }),
  z.strictObject({ of: z.literal("joint"), parts: z.tuple([z.string(), z.string()]) }),
  z.strictObject({ of: z.literal("offer"), parts: z.array(z.string()) }),
  z.strictObject({
    of: z.literal("measurement"),
    measurement: z.string(),
    quantity: z.union([quantitySchema, z.literal("built")]),
  }),
  z.strictObject({ of: z.literal("estimate"), quantity: z.string() }),
  z.strictObject({ of: z.literal("inspection"), inspection: z.string() }),
  z.strictObject({ of: z.literal("clearance"), clearance: z.string() }),
]);

const lineSchema = z.strictObject({ text: z.string(), from: z.tuple([factSchema], factSchema) });

const priceSchema = z.discriminatedUnion("known", [
  z.strictObject({
    known: z.literal(true),
    suggested: moneyReplySchema,
    lowMinor: z.number().int(),
    highMinor: z.number().int(),
    effectiveCount: z.number(),
    basis: z.array(
      z.strictObject({
        evidence: z.string(),
        on: z.string(),
        what: z.enum(["sold", "asked"]),
        price: moneyReplySchema,
        closeness: z.enum(["same-model-and-condition", "same-model", "same-class-and-age", "same-class"]),
        share: z.number(),
      }),
    ),
    basisCount: z.number().int(),
  }),
  z.strictObject({ known: z.literal(false), question: z.string() }),
]);

/** Core's `SaleDescription` as it goes over the wire. */
export const saleDescriptionSchema = z
  .strictObject({
    title: lineSchema,
    parts: z.array(lineSchema),
    measures: z.array(lineSchema),
    condition: z.array(lineSchema),
    extras: z.array(lineSchema),
    unknown: z.array(lineSchema),
    price: priceSchema,
    photos: z.array(z.string()),
    text: z.string(),
  })
  .meta({ id: "SaleDescription" }) satisfies z.ZodType<SaleDescription>;
