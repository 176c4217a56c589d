import { z } from "zod";

/** One thing on the watchlist: wanted by the bench, as the resolver says it, or put there by hand. */
export const watchSchema = z.strictObject({
  id: z.string().min(1).max(80),
  kind: z.enum(["head", "adapter", "shaft", "grip"]),
  /** Field → wanted value, a choice of values, or `{ atLeast }`; as a want of the resolver has them. */
  needs: z.record(z.string().max(80), z.unknown()),
  text: z.string().min(1).max(500),
  by: z.enum(["bench", "hand"]),
  pinned: z.boolean().optional(),
  muted: z.boolean().optional(),
  /** The most to pay for it; where it is not set, what the plan says it is worth. */
  capMinor: z.number().int().min(0).max(100_000_000).optional(),
  /** Only listings at this place. */
  place: z.string().max(200).optional(),
  note: z.string().max(2000).optional(),
});
/** What to look out for in listings, by the facts of a part; amounts are whole minor units of the bench's currency. */
export type Watch = z.infer<typeof watchSchema>;

/** A listing that offers something on the watchlist; kept until it is dealt with. */
export const hitSchema = z.strictObject({
  id: z.string().min(1).max(80),
  watch: z.string().min(1).max(80),
  sighting: z.string().min(1).max(80),
  /** Which item of the listing it is. */
  item: z.number().int().min(0),
  on: z.iso.date(),
  /** What is asked for that item over the cap; under it when negative; null where no price or no cap is known. */
  overMinor: z.number().int().nullable(),
  /** The clubs it would complete, in words. */
  clubs: z.array(z.string().max(300)).max(20),
  isDealtWith: z.boolean(),
});
/** An item of one sighting that answers to one watch, each named by its id. */
export type Hit = z.infer<typeof hitSchema>;
