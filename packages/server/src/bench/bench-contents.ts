import { type Claim, type Goal, type Joint, type Part, claimSchema, goalSchema, jointSchema, partSchema } from "@ferrule/core";
import { z } from "zod";

/** Everything a bench holds, as it is sent, kept in a file and exported. */
export const benchContentsSchema = z.strictObject({
  parts: z.array(partSchema),
  joints: z.array(jointSchema).optional(),
  claims: z.array(claimSchema).optional(),
  goal: goalSchema.optional(),
});

export interface BenchContents {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
  readonly goal: Goal;
}

export const emptyContents: BenchContents = { parts: [], joints: [], claims: [], goal: {} };

/** The same contents with nothing left out. */
export function completeContents(written: z.infer<typeof benchContentsSchema>): BenchContents {
  return { ...emptyContents, ...written };
}
