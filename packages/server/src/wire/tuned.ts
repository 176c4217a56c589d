import { buildSchema, type TuneSolution } from "@ferrule/core";
import { z } from "zod";
import { estimatesSchema } from "./estimates.ts";

const effectSchema = z.strictObject({ before: z.number(), after: z.number(), change: z.number() }).nullable();

const effectsSchema = z.strictObject({
  playingLengthIn: effectSchema,
  swingWeightPoints: effectSchema,
  massG: effectSchema,
  balanceFromButtIn: effectSchema,
  moiKgCm2: effectSchema,
  frequencyCpm: effectSchema,
}) satisfies z.ZodType<TuneSolution["effects"]>;

const solutionSchema = z.strictObject({
  build: buildSchema,
  grip: z.string(),
  change: z.number(),
  effects: effectsSchema,
  estimates: estimatesSchema,
}) satisfies z.ZodType<TuneSolution>;

const cautionsSchema = z
  .array(z.strictObject({ code: z.string(), text: z.string() }))
  .describe("What to take care of in the steps that the solutions take, each once");

/** What core's `tune` found, as it goes over the wire; the smallest change comes first. */
export const tunedSchema = z
  .strictObject({ before: estimatesSchema, solutions: z.array(solutionSchema), cautions: cautionsSchema })
  .meta({ id: "Tuned" });
