import { z } from "zod";
import { clubTypeSchema, handSchema } from "./part.ts";

/** Kinds of evidence for a fit claim, the strongest first. */
export const evidenceRanks = ["tried", "maker-stated", "seen-assembled", "seller-said"] as const;

/** Somebody's word that an adapter of one family goes, or does not go, in a receiver of another. */
export const claimSchema = z.strictObject({
  id: z.string().min(1).max(80).optional(),
  /** The receiver's family. */
  receiver: z.string().min(1).max(80),
  /** The adapter's family. */
  adapter: z.string().min(1).max(80),
  hand: handSchema.optional(),
  clubType: clubTypeSchema.optional(),
  verdict: z.enum(["fits", "does-not-fit"]),
  evidence: z.enum(evidenceRanks),
  on: z.string().max(40).optional(),
  note: z.string().max(2000).optional(),
});

/** A fit claim. Without a hand or a club type it is said of every one. */
export type Claim = z.infer<typeof claimSchema>;
