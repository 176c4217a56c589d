import { z } from "zod";
import { partIdSchema } from "./part.ts";

export const jointTypes = ["screwed", "bonded", "gripped"] as const;

/** A connection already made between two parts of the bench. */
export const jointSchema = z.strictObject({
  id: z.string().min(1).max(80).optional(),
  type: z.enum(jointTypes),
  parts: z.tuple([partIdSchema, partIdSchema]),
});

export type Joint = z.infer<typeof jointSchema>;
export type JointType = Joint["type"];
