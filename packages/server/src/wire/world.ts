import { costSettingsSchema } from "@ferrule/core";
import { z } from "zod";
import {
  namedClaimSchema,
  namedEvidenceSchema,
  namedGoalSchema,
  namedJointSchema,
  namedModelSchema,
  namedPartSchema,
  namedSightingSchema,
} from "./named.ts";

/** What may come with a request in the place of what is stored. */
export const worldShape = {
  today: z.iso.date().optional(),
  catalogue: z.array(namedModelSchema).max(20_000).optional(),
  parts: z.array(namedPartSchema).optional(),
  joints: z.array(namedJointSchema).optional(),
  claims: z.array(namedClaimSchema).optional(),
  goal: namedGoalSchema.optional(),
  evidence: z.array(namedEvidenceSchema).optional(),
  sightings: z.array(namedSightingSchema).optional(),
  costs: costSettingsSchema.partial().optional(),
};
