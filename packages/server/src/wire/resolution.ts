import {
  type Club,
  type NearMiss,
  type Question,
  type Resolution,
  skillSchema,
  verdicts,
  type Want,
} from "@ferrule/core";
import { z } from "zod";
import { estimatesSchema } from "./estimates.ts";
import { namedJointSchema } from "./named.ts";

const verdictSchema = z.enum(verdicts);
const dataSchema = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()]));

const citedFactSchema = z.discriminatedUnion("of", [
  z.strictObject({
    of: z.literal("part"),
    part: z.string(),
    field: z.string(),
    value: z.unknown(),
  }),
  z.strictObject({ of: z.literal("claim"), index: z.number().int() }),
  z.strictObject({
    of: z.literal("goal"),
    field: z.string(),
    value: z.unknown(),
  }),
]);

const findingSchema = z
  .strictObject({
    rule: z.string(),
    strength: z.enum(["must", "should", "note"]),
    verdict: verdictSchema,
    code: z.string(),
    data: dataSchema,
    parts: z.array(z.string()),
    facts: z.array(citedFactSchema),
    text: z.string(),
    source: z.string(),
    hint: z.string().optional(),
  })
  .meta({ id: "Finding" });

export const workStepSchema = z
  .strictObject({
    step: z.string(),
    parts: z.array(z.string()),
    minutes: z.number(),
    waitMinutes: z.number(),
    costMinor: z.number(),
    skill: skillSchema,
    cautions: z.array(z.strictObject({ code: z.string(), text: z.string() })),
    data: dataSchema,
    text: z.string(),
  })
  .meta({ id: "WorkStep" });

export const questionSchema = z
  .strictObject({
    part: z.string(),
    field: z.string(),
    text: z.string(),
    clubs: z.number().int(),
    settles: z.number().int(),
  })
  .meta({ id: "Question" }) satisfies z.ZodType<Question>;

export const clubSchema = z
  .strictObject({
    id: z.string(),
    head: z.string(),
    adapter: z.string().nullable(),
    shaft: z.string(),
    grip: z.string(),
    verdict: verdictSchema,
    work: z.array(workStepSchema),
    minutes: z.number(),
    skill: skillSchema,
    undoes: z.array(namedJointSchema),
    estimates: estimatesSchema,
    findings: z.array(findingSchema),
    questions: z.array(questionSchema),
  })
  .meta({ id: "Club" }) satisfies z.ZodType<Club>;

export const nearMissSchema = z
  .strictObject({
    head: z.string(),
    shaft: z.string(),
    adapter: z.string().nullable(),
    verdict: z.literal("does-not-fit"),
    proof: z.strictObject({
      findings: z.array(findingSchema),
      facts: z.array(citedFactSchema),
      joints: z.array(namedJointSchema),
      text: z.string(),
    }),
  })
  .meta({ id: "NearMiss" }) satisfies z.ZodType<NearMiss>;

export const wantSchema = z
  .strictObject({
    id: z.string(),
    kind: z.enum(["head", "adapter", "shaft", "grip"]),
    needs: z.record(z.string(), z.unknown()),
    text: z.string(),
    completes: z.array(
      z.strictObject({
        head: z.string().nullable(),
        shaft: z.string().nullable(),
      }),
    ),
    count: z.number().int(),
  })
  .meta({ id: "Want" }) satisfies z.ZodType<Want>;

export const countsSchema = z.strictObject({
  clubs: z.number().int(),
  nearMisses: z.number().int(),
  wants: z.number().int(),
  questions: z.number().int(),
});

/** Core's `Resolution` as it goes over the wire. */
export const resolutionSchema = z
  .strictObject({
    clubs: z.array(clubSchema),
    nearMisses: z.array(nearMissSchema),
    wants: z.array(wantSchema),
    questions: z.array(questionSchema),
    counts: countsSchema,
    skill: skillSchema,
    skillOpens: z.array(z.strictObject({ skill: skillSchema, moreClubs: z.number().int() })),
    notices: z.array(z.string()),
  })
  .meta({ id: "Resolution" }) satisfies z.ZodType<Resolution>;
