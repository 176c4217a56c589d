import { z } from "zod";
import type { Adapter, Grip, Head, Shaft } from "../parts/part.ts";

/** The parts of one club, as if joined. */
export interface ClubParts {
  readonly head: Head;
  readonly adapter?: Adapter;
  readonly shaft: Shaft;
  readonly grip: Grip;
  /** Whether the grip is on the shaft already, and the adapter too: a length read then includes them. */
  readonly gripped?: boolean;
  readonly bonded?: boolean;
}

/** Choices made at the bench. Butt trim and playing length exclude each other; a negative butt trim is an extension. */
export const buildSchema = z
  .strictObject({
    tipTrimIn: z.number().min(0).max(12).optional(),
    buttTrimIn: z.number().min(-4).max(30).optional(),
    playingLengthIn: z.number().min(18).max(60).optional(),
    extraHeadMassG: z.number().min(-50).max(200).optional(),
    counterweightG: z.number().min(0).max(200).optional(),
  })
  .refine((build) => build.buttTrimIn === undefined || build.playingLengthIn === undefined, {
    message: "either buttTrimIn or playingLengthIn, not both",
  });

/** Trims and length in inches, added masses in grams. A choice that is left out was not made. */
export type Build = z.infer<typeof buildSchema>;
