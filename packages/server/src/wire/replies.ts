import { z } from "zod";
import {
  namedClaimSchema,
  namedClearanceSchema,
  namedEntrySchema,
  namedEvidenceSchema,
  namedGoalSchema,
  namedInspectionSchema,
  namedJointSchema,
  namedMeasurementSchema,
  namedModelSchema,
  namedPartSchema,
  namedSightingSchema,
} from "./named.ts";

const refusalSchema = z.strictObject({
  field: z.string(),
  got: z.string(),
  expected: z.string(),
});

const conflictSchema = z.strictObject({
  table: z.string(),
  id: z.string(),
  left: z.unknown().describe("As the change left it; null where it took it away"),
  present: z.unknown().describe("As it is now; null where it is not there"),
  changes: z.array(z.number().int()).describe("Later changes that would have to be undone first"),
});

/** The body of every reply that is not a success. */
export const errorReplySchema = z
  .strictObject({
    error: z.strictObject({
      code: z.string(),
      message: z.string(),
      refusals: z.array(refusalSchema).optional(),
      present: z.unknown().optional().describe("What was changed meanwhile, as it is now"),
      given: z.unknown().optional().describe("The same as it was sent; null for a delete"),
      base: z.unknown().optional().describe("The same as it was when both began, where that is known"),
      conflicts: z.array(conflictSchema).optional().describe("What stands in the way of an undo"),
    }),
  })
  .meta({ id: "ErrorReply" });

/** What a route may send where a schema says `T`: the same, from values that nobody may change. */
type Sendable<T> = T extends readonly (infer Item)[]
  ? readonly Sendable<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Sendable<T[Key]> }
    : T;

/** A good reply of this shape, and the error replies that any route can give. */
export function replies<T>(schema: z.ZodType<T>): {
  200: z.ZodType<Sendable<T>>;
} {
  return {
    200: schema,
    "4xx": errorReplySchema,
    "5xx": errorReplySchema,
  } as unknown as { 200: z.ZodType<Sendable<T>> };
}

/** The same for a route that makes something. */
export function createdReplies<T>(schema: z.ZodType<T>): {
  201: z.ZodType<Sendable<T>>;
} {
  return {
    201: schema,
    "4xx": errorReplySchema,
    "5xx": errorReplySchema,
  } as unknown as { 201: z.ZodType<Sendable<T>> };
}

/** The same for a route that has begun something which goes on. */
export function acceptedReplies<T>(schema: z.ZodType<T>): {
  202: z.ZodType<Sendable<T>>;
} {
  return {
    202: schema,
    "4xx": errorReplySchema,
    "5xx": errorReplySchema,
  } as unknown as { 202: z.ZodType<Sendable<T>> };
}

export const idParamsSchema = z.object({ id: z.string() });

export const benchViewSchema = z.strictObject({
  example: z.boolean(),
  parts: z.array(namedPartSchema),
  joints: z.array(namedJointSchema),
  claims: z.array(namedClaimSchema),
  goal: namedGoalSchema,
  undo: z.number().int(),
});

const benchThings = {
  parts: z.array(namedPartSchema),
  joints: z.array(namedJointSchema),
  claims: z.array(namedClaimSchema),
};

const listsSchema = z.strictObject({
  ...benchThings,
  models: z.array(namedModelSchema),
  evidence: z.array(namedEvidenceSchema),
  sightings: z.array(namedSightingSchema),
  entries: z.array(namedEntrySchema),
  measurements: z.array(namedMeasurementSchema),
  inspections: z.array(namedInspectionSchema),
  clearances: z.array(namedClearanceSchema),
});

/** The reply to a delete: what is gone, and how many steps can be undone now. */
export function removedReply<T>(deleted: z.ZodType<T>) {
  return z.strictObject({ deleted, undo: z.number().int() });
}

export const benchThingsSchema = z.strictObject(benchThings);
export const removedSchema = removedReply(benchThingsSchema);
export const restoredSchema = z.strictObject({
  restored: listsSchema.describe("What is there again, or is again as it was"),
  removed: listsSchema.describe(
    "What a purchase, a sale, a measuring, an inspection or a clearing had put there, and is gone again",
  ),
  undo: z.number().int(),
});
