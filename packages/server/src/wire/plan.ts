import type { Plan, PlanAction } from "@ferrule/core";
import { z } from "zod";
import { workStepSchema } from "./resolution.ts";

const minor = z.number().int();

const actionSchema = z
  .strictObject({
    do: z.enum(["buy", "fetch", "take-apart", "build", "sell", "wait"]),
    title: z.string(),
    parts: z.array(z.string()),
    sightings: z.array(z.string()),
    netMinor: minor,
    outlayMinor: minor,
    minutes: z.number(),
    work: z.array(workStepSchema),
    waitsFor: z.strictObject({ want: z.string(), text: z.string(), takeAtOrUnderMinor: minor }).nullable(),
  })
  .meta({ id: "PlanAction" }) satisfies z.ZodType<PlanAction>;

/** Core's `Plan` as it goes over the wire. */
export const planSchema = z
  .strictObject({
    actions: z.array(actionSchema),
    currency: z.string(),
    netMinor: minor,
    outlayMinor: minor,
    minutes: z.number(),
    boundMinor: z.number(),
    gap: z.number(),
    stopped: z.boolean(),
    binding: z.array(
      z.strictObject({
        limit: z.enum(["budget", "minutes", "clubs-of-type", "part"]),
        text: z.string(),
        worthMinor: minor,
      }),
    ),
    leftOut: z.array(
      z.strictObject({
        sighting: z.string(),
        code: z.enum(["no-price", "no-rate", "not-for-sale", "nothing-read", "nothing-left", "no-distance"]),
        text: z.string(),
      }),
    ),
    kept: z.array(z.string()),
    nextBest: z
      .strictObject({ netMinor: minor, without: z.string(), actions: z.array(actionSchema) })
      .nullable(),
  })
  .meta({ id: "Plan" }) satisfies z.ZodType<Plan>;
