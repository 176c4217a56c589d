import { z } from "zod";
import { clubTypeSchema, flexSchema, handSchema } from "./part.ts";

/** Skills of a step of work, the least first. */
export const skills = ["screw", "regrip", "bond", "machine"] as const;
/** Takes one of `skills`, as a goal allows it or a row of the work table asks for it. */
export const skillSchema = z.enum(skills);
/** The most somebody will do at the bench; one that comes later in `skills` allows all before it. */
export type Skill = z.infer<typeof skillSchema>;

/** What a finished club should measure; either may be left open. */
export const targetSchema = z.strictObject({
  playingLengthIn: z.number().min(18).max(60).optional(),
  /** Points from A0, so that D0 is 30. */
  swingWeightPoints: z.number().min(-20).max(90).optional(),
});

/** What the user wants of the bench. Everything may be left out; `skill` is `screw` until the user says more. */
export const goalSchema = z.strictObject({
  hand: handSchema.optional(),
  flex: flexSchema.optional(),
  /** Targets by club type. */
  targets: z.partialRecord(clubTypeSchema, targetSchema).optional(),
  /** A target for every club type that `targets` does not name. */
  playingLengthIn: z.number().min(18).max(60).optional(),
  swingWeightPoints: z.number().min(-20).max(90).optional(),
  skill: skillSchema.optional(),
  /** Whether the model local rule that caps length at 46 in is on. */
  localRule46: z.boolean().optional(),
  /** At most so many clubs, near misses and wants in the answer; the counts always cover all. */
  limit: z.number().int().min(1).max(5000).optional(),
});

/** A length in inches and a swing weight in points for the clubs of one type. */
export type Target = z.infer<typeof targetSchema>;
/** Wishes and limits that go with a bench: lengths in inches, swing weights in points (D0 is 30). */
export type Goal = z.infer<typeof goalSchema>;
