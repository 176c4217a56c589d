import { z } from "zod";
import { listingSchema } from "../listing/listing.ts";
import { moneySchema } from "../parts/part.ts";

/** What can have become of a listing: `sold` is to somebody else, `ignored` is passed over by the user. */
export const outcomes = ["open", "bought", "sold", "gone", "ignored"] as const;

/** A listing that was seen, what was read from it, what the user corrected, and what became of it. */
export const sightingSchema = z.strictObject({
  id: z.string().min(1).max(80),
  seenOn: z.iso.date(),
  /** The words as they were pasted. */
  text: z.string().max(20_000),
  /** What was read from the words, before anybody corrected it: for measuring the reader later. */
  read: listingSchema,
  /** What holds now. The same as `read` where nothing was corrected. */
  listing: listingSchema,
  outcome: z.enum(outcomes),
  outcomeOn: z.iso.date().optional(),
  /** Places of the items that the user has bought, whatever the outcome says; the listing is open for the rest. */
  boughtItems: z.array(z.number().int().min(0)).max(200).optional(),
  /** What it went for, where that is known. */
  outcomePrice: moneySchema.optional(),
  /** What the tool said when it was last judged. */
  verdict: z.enum(["buy", "offer-up-to", "ask-first", "leave"]).optional(),
  mostToPay: moneySchema.optional(),
  /** Where it is, in the user's own word, and how far a drive there and back is. */
  place: z.string().max(200).optional(),
  roundTripKm: z.number().min(0).max(5000).optional(),
  note: z.string().max(4000).optional(),
});
/** One line of the log of listings, by its day (ISO 8601). A `verdict` that is left out was never given. */
export type Sighting = z.infer<typeof sightingSchema>;
