import type { Estimates } from "@ferrule/core";
import { z } from "zod";

const basisSchema = z.array(
  z.strictObject({
    part: z.string(),
    field: z.string(),
    source: z.enum(["measured", "stated", "catalogue", "typical", "chosen"]),
    share: z.number(),
  }),
);

const estimateSchema = z
  .strictObject({
    value: z.number(),
    low: z.number(),
    high: z.number(),
    basis: basisSchema,
  })
  .meta({
    id: "Estimate",
    description: "A computed quantity; low to high is the 95 % interval, in the unit of the field's name",
  });

const settingSchema = z.strictObject({
  label: z.string(),
  rotationDeg: z.number(),
  soled: z.strictObject({
    loftDeg: estimateSchema,
    lieDeg: estimateSchema,
    faceAngleDeg: estimateSchema,
  }),
  squared: z.strictObject({ loftDeg: estimateSchema, lieDeg: estimateSchema }),
});

/** Core's `Estimates` as it goes over the wire. */
export const estimatesSchema = z
  .strictObject({
    playingLengthIn: estimateSchema.nullable(),
    rulesLengthIn: estimateSchema.nullable(),
    massG: estimateSchema.nullable(),
    balanceFromButtIn: estimateSchema.nullable(),
    swingWeight: z
      .strictObject({
        points: z.number(),
        label: z.string(),
        low: z.number(),
        high: z.number(),
        basis: basisSchema,
      })
      .nullable(),
    moiKgCm2: estimateSchema.nullable(),
    frequencyCpm: estimateSchema.nullable(),
    loftDeg: estimateSchema.nullable(),
    lieDeg: estimateSchema.nullable(),
    faceAngleDeg: estimateSchema.nullable(),
    settings: z.array(settingSchema),
    bond: z
      .strictObject({
        shearPa: z.number(),
        shearPsi: z.number(),
        strengthPa: z.number(),
        pullN: z.number(),
        caution: z.string(),
      })
      .nullable(),
    cutLengthIn: estimateSchema.nullable(),
    shaftMassG: estimateSchema.nullable(),
    shaftBalanceFromTipIn: estimateSchema.nullable(),
    missing: z.array(
      z.strictObject({
        quantity: z.string(),
        part: z.string(),
        field: z.string(),
        reason: z.string(),
      }),
    ),
  })
  .meta({ id: "Estimates" }) satisfies z.ZodType<Estimates>;
