import { claimSchema } from "@ferrule/core";
import { z } from "zod";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

export function addClaims(app: App, { bench }: RouteContext): void {
  const schema = { response: replies(z.strictObject({ claims: z.array(claimSchema) })) };
  app.get("/api/bench/claims", { schema }, async () => ({ claims: bench.claims.all() }));
  addShelf(app, { url: "/api/bench/claims", shelf: bench.claims, schema: claimSchema, inputSchema: claimSchema });
}
