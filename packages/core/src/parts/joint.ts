import { z } from "zod";
import { partIdSchema } from "./part.ts";

export const jointTypes = ["screwed", "bonded", "gripped"] as const;

/** A connection already made between two parts of the bench. */
export const jointSchema = z.strictObject({
  id: z.string().min(1).max(80).optional(),
  type: z.enum(jointTypes),
  parts: z.tuple([partIdSchema, partIdSchema]),
});

/** Two parts, by their ids, that are one piece until somebody undoes them. */
export type Joint = z.infer<typeof jointSchema>;
/** How two parts hold together: `bonded` is glued, `gripped` is a grip on its shaft. */
export type JointType = Joint["type"];
