import { z } from "zod";
import { itemKindSchema } from "../listing/catalogue.ts";
import { clubTypeSchema, flexSchema, handSchema, moneySchema } from "../parts/part.ts";

const dateSchema = z.iso.date();

/** How good a thing looks, best first: our own plain grades. */
export const conditions = ["as-new", "good", "fair", "poor"] as const;
export const conditionSchema = z.enum(conditions);
/** A grade by looks alone: faults are told apart from it. */
export type Condition = z.infer<typeof conditionSchema>;

/** What was, or is to be, sold: as much as is known of it. */
export const subjectShape = {
  kind: itemKindSchema,
  modelId: z.string().max(80).optional(),
  maker: z.string().max(200).optional(),
  model: z.string().max(200).optional(),
  year: z.number().int().min(1900).max(2200).optional(),
  clubType: clubTypeSchema.optional(),
  clubNumber: z.string().max(12).optional(),
  hand: handSchema.optional(),
  flex: flexSchema.optional(),
  /** On a shaft: whether an adapter is on it. */
  adapter: z.enum(["fitted", "none"]).optional(),
  adapterFamily: z.string().max(80).optional(),
  condition: conditionSchema.optional(),
  cover: z.boolean().optional(),
  wrench: z.boolean().optional(),
};
/** Asks for a `kind` and takes the rest as far as it is there; a field that is not of the shape is refused. */
export const subjectSchema = z.strictObject(subjectShape);
/** A thing to be priced. What is left out is unknown, so that prices of less similar things have to do. */
export type Subject = z.infer<typeof subjectSchema>;

/** One price that was asked or paid, flat so that a row of CSV holds it. */
export const evidenceSchema = z.strictObject({
  id: z.string().min(1).max(80),
  /** The day of the sale, or the day the price was seen. */
  on: dateSchema,
  what: z.enum(["sold", "asked"]),
  /** Whether it was the user's own sale. */
  own: z.boolean().optional(),
  /** What the buyer paid for the thing itself, without postage. */
  price: moneySchema,
  daysToSell: z.number().min(0).max(3650).optional(),
  note: z.string().max(2000).optional(),
  ...subjectShape,
});
/** A noted price and what it was for, in the currency it was named in. */
export type Evidence = z.infer<typeof evidenceSchema>;
