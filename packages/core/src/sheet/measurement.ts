import { z } from "zod";
import { buildSchema } from "../measure/build.ts";
import { clubTypeSchema, partIdSchema } from "../parts/part.ts";

/** What the blanks of a build sheet ask for, with what is believable: ranges refuse slips of the keyboard. */
export const measuredQuantities = {
  playingLengthIn: { min: 18, max: 60, plusMinus: 0.06 },
  swingWeightPoints: { min: -20, max: 90, plusMinus: 0.3 },
  massG: { min: 100, max: 1200, plusMinus: 0.5 },
  frequencyCpm: { min: 100, max: 600, plusMinus: 1 },
} as const;

/** A figure that is read off a finished club, in the unit of its name; swing weight in points, D0 being 30. */
export type MeasuredQuantity = keyof typeof measuredQuantities;
/** In the order in which a sheet leaves blanks for them. */
export const measuredQuantityNames = Object.keys(measuredQuantities) as readonly MeasuredQuantity[];

/** A quantity with its standard uncertainty, both in the unit that its name says. */
export interface Uncertain {
  readonly value: number;
  readonly plusMinus: number;
}

function uncertainSchema({ min, max }: { readonly min: number; readonly max: number }) {
  return z.strictObject({
    value: z
      .number({ error: `a number from ${min} to ${max}` })
      .min(min)
      .max(max),
    plusMinus: z.number().min(0),
  });
}

function quantitiesSchema() {
  return z.strictObject({
    playingLengthIn: uncertainSchema(measuredQuantities.playingLengthIn).optional(),
    swingWeightPoints: uncertainSchema(measuredQuantities.swingWeightPoints).optional(),
    massG: uncertainSchema(measuredQuantities.massG).optional(),
    frequencyCpm: uncertainSchema(measuredQuantities.frequencyCpm).optional(),
  });
}

const estimatedSchema = z.strictObject(
  Object.fromEntries(
    measuredQuantityNames.map((name) => [
      name,
      z.strictObject({ value: z.number(), plusMinus: z.number().min(0) }).optional(),
    ]),
  ) as Record<MeasuredQuantity, z.ZodOptional<z.ZodObject<{ value: z.ZodNumber; plusMinus: z.ZodNumber }>>>,
);

/** One finished club, put on the scales: what was read, and what had been estimated before. */
export const measurementSchema = z.strictObject({
  id: z.string().min(1).max(80),
  on: z.iso.date(),
  /** The club as it is named by its parts: `head+adapter+shaft+grip`. */
  club: z.string().min(1).max(400),
  parts: z.array(partIdSchema).min(3).max(4),
  clubType: clubTypeSchema.optional(),
  build: buildSchema.optional(),
  measured: quantitiesSchema(),
  /** The estimate of that day with its standard uncertainty, so that later readings do not change the comparison. */
  estimated: estimatedSchema,
  /** Whether the club was put together at this bench. */
  built: z.boolean().optional(),
  by: z.string().max(200).optional(),
  note: z.string().max(2000).optional(),
});

/** What one club read on one day. A quantity that nobody took is left out. */
export type Measurement = z.infer<typeof measurementSchema>;
