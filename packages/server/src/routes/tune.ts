import { buildSchema, type Grip, goalSchema, gripSchema, tune } from "@ferrule/core";
import { z } from "zod";
import { problem, valueOrThrow } from "../errors.ts";
import { clubInputShape, clubPartsFrom } from "../wire/club-inputs.ts";
import { replies } from "../wire/replies.ts";
import { tuneCautions } from "../wire/tune-cautions.ts";
import { tunedSchema } from "../wire/tuned.ts";
import type { App, RouteContext } from "./context.ts";

const bodySchema = z.strictObject({
  ...clubInputShape,
  build: buildSchema.optional(),
  target: goalSchema
    .pick({ playingLengthIn: true, swingWeightPoints: true })
    .refine((target) => Object.values(target).some((value) => value !== undefined), {
      error: "playingLengthIn, swingWeightPoints or both",
    }),
  /** Grips that could go on instead; each needs an id, since the answer names it. */
  options: z
    .strictObject({
      grips: z
        .array(gripSchema.partial({ kind: true }))
        .max(200)
        .optional(),
    })
    .optional(),
});

export function addTune(app: App, { reference }: RouteContext): void {
  app.post(
    "/api/tune",
    { schema: { body: bodySchema, response: replies(tunedSchema) } },
    async ({ body }) => {
      const grips = body.options?.grips?.map((grip): Grip => ({ ...grip, kind: "grip" }));
      const parts = clubPartsFrom(body);
      const tuned = tune(parts, body.build ?? {}, body.target, { grips }, reference);
      if (!tuned.ok)
        return valueOrThrow(problem("bad-request", "The club cannot be tuned from this", tuned.refusals));
      const { before, solutions } = tuned;
      return { before, solutions, cautions: tuneCautions(parts, solutions, reference) };
    },
  );
}
