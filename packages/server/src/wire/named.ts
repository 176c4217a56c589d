import { claimSchema, goalSchema, jointSchema, partSchema } from "@ferrule/core";

/** Core's schemas under the names that the description of the interface gives them. */
export const namedPartSchema = partSchema.meta({ id: "Part" });
export const namedJointSchema = jointSchema.meta({ id: "Joint" });
export const namedClaimSchema = claimSchema.meta({ id: "Claim" });
export const namedGoalSchema = goalSchema.meta({ id: "Goal" });
