import { buildSchema, estimateClub } from "@ferrule/core";
import { z } from "zod";
import { problem, valueOrThrow } from "../errors.ts";
import { clubInputShape, clubPartsFrom } from "../wire/club-inputs.ts";
import { estimatesSchema } from "../wire/estimates.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const bodySchema = z.strictObject({
  ...clubInputShape,
  build: buildSchema.optional(),
});

export function addEstimate(app: App, { reference }: RouteContext): void {
  const schema = { body: bodySchema, response: replies(estimatesSchema) };
  app.post("/api/estimate", { schema }, async ({ body }) => {
    const result = estimateClub(clubPartsFrom(body), body.build ?? {}, reference);
    if (result.ok) return result.estimates;
    return valueOrThrow(problem("bad-request", "The club cannot be estimated from this", result.refusals));
  });
}
