import { estimateResale } from "@ferrule/core";
import { z } from "zod";
import { namedSubjectSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { resaleSchema } from "../wire/resale.ts";
import type { App, RouteContext } from "./context.ts";

const bodySchema = z.strictObject({ subject: namedSubjectSchema });

export function addResale(app: App, { bench, costs, today }: RouteContext): void {
  const schema = { body: bodySchema, response: replies(resaleSchema) };
  app.post("/api/resale", { schema }, async ({ body }) =>
    estimateResale(body.subject, bench.evidence.all(), costs.read(), today()),
  );
}
