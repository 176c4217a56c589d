import { z } from "zod";
import { namedClaimSchema } from "../wire/named.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addClaims(app: App, { bench, history }: RouteContext): void {
  const schema = {
    querystring: z.strictObject(versionsQuery),
    response: replies(z.strictObject({ claims: z.array(namedClaimSchema), ...versionsReply })),
  };
  app.get("/api/bench/claims", { schema }, async ({ query }) => {
    const claims = bench.claims.all();
    return { claims, ...versionsIn(query, claims) };
  });
  addShelf(app, {
    url: "/api/bench/claims",
    table: "claims",
    history,
    shelf: bench.claims,
    schema: namedClaimSchema,
    inputSchema: namedClaimSchema,
    deletedSchema: benchThingsSchema,
  });
}
