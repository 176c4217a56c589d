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
      basisCount: z
        .number()
        .int()
        .optional()
        .describe("In a judgement, where the basis is the rows of the greatest share: how many there are"),
      adjustments: z.array(adjustmentSchema),
    }),
    z.strictObject({ known: z.literal(false), question: z.string() }),
  ])
  .meta({ id: "Resale" }) satisfies z.ZodType<Resale>;

const basisShown = 20;

/** An estimate with the rows that weigh most in it, and how many there are: a judgement holds many estimates. */
export function shortBasis(resale: Resale): Resale {
  if (!resale.known) return resale;
  const { basis } = resale;
  const weightiest = basis.toSorted((one, other) => other.share - one.share).slice(0, basisShown);
  return Object.assign({ ...resale, basis: weightiest }, { basisCount: basis.length });
}
