import type { Resale } from "@ferrule/core";
import { z } from "zod";
import { daysSchema } from "./money.ts";

const weightSchema = z.strictObject({
  evidence: z.string(),
  closeness: z.enum(["same-model-and-condition", "same-model", "same-class-and-age", "same-class"]),
  share: z.number(),
  adjustedMinor: z.number(),
});

const adjustmentSchema = z.strictObject({
  name: z.string(),
  factor: z.number(),
  fittedFrom: z.number().int(),
});

/** Core's `Resale` as it goes over the wire. */
export const resaleSchema = z
  .discriminatedUnion("known", [
    z.strictObject({
      known: z.literal(true),
      currency: z.string(),
      valueMinor: z.number().int(),
      lowMinor: z.number().int(),
      highMinor: z.number().int(),
      sigmaLog: z.number(),
      daysToSell: daysSchema.nullable(),
      effectiveCount: z.number(),
      basis: z.array(weightSchema),
      adjustments: z.array(adjustmentSchema),
    }),
    z.strictObject({ known: z.literal(false), question: z.string() }),
  ])
  .meta({ id: "Resale" }) satisfies z.ZodType<Resale>;
