import { amountMinorMost } from "@ferrule/core";
import { z } from "zod";

/** Whole minor units in a reply. A sum of what people may write down can pass 2^53, and is told all the same. */
export const wholeMinorSchema = z
  .number()
  .refine(Number.isInteger, "whole minor units")
  .meta({ type: "integer" });

/** Money in a reply. */
export const moneyReplySchema = z.strictObject({ amountMinor: wholeMinorSchema, currency: z.string() });

/** Money that somebody paid, as it is sent: nothing or more. */
export const moneyInSchema = z.strictObject({
  amountMinor: z
    .number({ error: "whole minor units, 0 or more" })
    .int({ error: "whole minor units, 0 or more" })
    .min(0, { error: "whole minor units, 0 or more" })
    .max(amountMinorMost, { error: `whole minor units, at most ${amountMinorMost}` }),
  currency: z
    .string({ error: "an ISO 4217 code such as EUR" })
    .regex(/^[A-Z]{3}$/, "an ISO 4217 code such as EUR"),
});

/** Something in days, with its 95 % interval. */
export const daysSchema = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });
