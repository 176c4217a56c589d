import { z } from "zod";
import { namedClaimSchema } from "../wire/named.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addClaims(app: App, { bench }: RouteContext): void {
  const schema = {
    response: replies(z.strictObject({ claims: z.array(namedClaimSchema) })),
  };
  app.get("/api/bench/claims", { schema }, async () => ({
    claims: bench.claims.all(),
  }));
  addShelf(app, {
    url: "/api/bench/claims",
    shelf: bench.claims,
    schema: namedClaimSchema,
    inputSchema: namedClaimSchema,
    deletedSchema: benchThingsSchema,
  });
}
