import { z } from "zod";

/** Money in a reply. */
export const moneyReplySchema = z.strictObject({ amountMinor: z.number().int(), currency: z.string() });

/** Something in days, with its 95 % interval. */
export const daysSchema = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });
