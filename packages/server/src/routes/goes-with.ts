import { goesWith, isSold } from "@ferrule/core";
import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { namedPartSchema } from "../wire/named.ts";
import { idParamsSchema, replies } from "../wire/replies.ts";
import { clubSchema, countsSchema, nearMissSchema, questionSchema, wantSchema } from "../wire/resolution.ts";
import { goalWith, resolveQuerySchema } from "../wire/resolve-query.ts";
import type { App, RouteContext } from "./context.ts";

const replySchema = z.strictObject({
  part: namedPartSchema,
  clubs: z.array(clubSchema),
  nearMisses: z.array(nearMissSchema),
  wants: z.array(wantSchema),
  questions: z.array(questionSchema),
  counts: countsSchema,
});

/** The most that core returns of each; for a head or a shaft, only what names it is looked at in the first place. */
const widest = 5000;

/** What has been sold goes with nothing any more. */
const nothing = { clubs: [], nearMisses: [], wants: [], questions: [] };

export function addGoesWith(app: App, { bench, answers }: RouteContext): void {
  const schema = {
    params: idParamsSchema,
    querystring: resolveQuerySchema,
    response: replies(replySchema),
  };
  app.get("/api/bench/parts/:id/goes-with", { schema }, async ({ params, query }) => {
    const part = valueOrThrow(bench.parts.get(params.id));
    if (isSold(part)) return goesWith(part, nothing, widest);
    const asked = goalWith(bench.goal(), query);
    const resolution = valueOrThrow(answers.resolve({ ...asked, limit: widest }, part.id));
    return goesWith(part, resolution, asked.limit ?? 200);
  });
}
