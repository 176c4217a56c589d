import { type Goal, skillSchema } from "@ferrule/core";
import { z } from "zod";

/** What may be asked differently this once, without changing the bench's goal. Numbers arrive as text in an address. */
export const resolveQuerySchema = z.strictObject({
  skill: skillSchema.optional(),
  limit: z
    .string()
    .regex(/^([1-9]\d{0,2}|[1-4]\d{3}|5000)$/, "a whole number from 1 to 5000")
    .optional(),
});

export type ResolveQuery = z.infer<typeof resolveQuerySchema>;

export function goalWith(goal: Goal, { skill, limit }: ResolveQuery): Goal {
  return {
    ...goal,
    skill: skill ?? goal.skill,
    limit: limit === undefined ? goal.limit : Number(limit),
  };
}
