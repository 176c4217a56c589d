import type { Claim, Goal, Joint, Part } from "@ferrule/core";
import { z } from "zod";
import type { Lists } from "../store/lists.ts";
import { namedClaimSchema, namedGoalSchema, namedJointSchema, namedPartSchema } from "../wire/named.ts";

/** Everything a bench holds, as it is sent, kept in a file and exported. */
export const benchContentsSchema = z.strictObject({
  parts: z.array(namedPartSchema),
  joints: z.array(namedJointSchema).optional(),
  claims: z.array(namedClaimSchema).optional(),
  goal: namedGoalSchema.optional(),
});

export interface BenchContents {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
  readonly goal: Goal;
}

/** A bench to begin with, and the lists about it: those that it leaves out are empty. */
export type Example = BenchContents & Partial<Lists>;

export const emptyContents: BenchContents = {
  parts: [],
  joints: [],
  claims: [],
  goal: {},
};

/** The same contents with nothing left out. */
export function completeContents(written: z.infer<typeof benchContentsSchema>): BenchContents {
  return { ...emptyContents, ...written };
}
