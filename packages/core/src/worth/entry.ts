import { z } from "zod";
import { moneySchema } from "../parts/part.ts";

/** What money went out or came in for. Which of the two it was is told by the sign of the amount. */
export const entryTypes = ["buy", "sale", "fee", "postage", "trip", "material", "refund", "other"] as const;

/** What was expected of a club or a part when it was bought: kept so that the books can tell how far to trust it. */
export const expectationSchema = z.strictObject({
  /** Of the amounts; the bench's at that time. Not known of what was written down before it was kept. */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  priceMinor: z.number().int(),
  lowMinor: z.number().int(),
  highMinor: z.number().int(),
  netMinor: z.number().int().optional(),
  daysToSell: z.number().min(0).optional(),
});

/** The most parts that one line of the books can be for. */
export const entryPartsMax = 2000;

/** One line of the books. Money in is positive, money out is negative. */
export const entrySchema = z.strictObject({
  id: z.string().min(1).max(80),
  on: z.iso.date(),
  type: z.enum(entryTypes),
  /** As it was paid, in its own currency. */
  amount: moneySchema,
  /** How much of the bench's currency one unit of `amount.currency` was worth that day; needed for another currency. */
  rate: z.number().positive().max(1_000_000).optional(),
  /** What the line is for: parts of the bench, and the name of a club or a lot that groups lines in the summaries. */
  parts: z.array(z.string().min(1).max(80)).max(entryPartsMax).optional(),
  club: z.string().max(200).optional(),
  sighting: z.string().max(80).optional(),
  km: z.number().min(0).max(5000).optional(),
  minutes: z.number().min(0).max(100_000).optional(),
  /** On a sale: how many days it was for sale. */
  daysToSell: z.number().min(0).max(3650).optional(),
  expected: expectationSchema.optional(),
  note: z.string().max(2000).optional(),
});
/** A line as it stands in the books, in the currency it was paid in; `on` is its day (ISO 8601). */
export type Entry = z.infer<typeof entrySchema>;
