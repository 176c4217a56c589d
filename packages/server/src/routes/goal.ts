import { goalSchema } from "@ferrule/core";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

export function addGoal(app: App, { bench }: RouteContext): void {
  app.get("/api/bench/goal", { schema: { response: replies(goalSchema) } }, async () => bench.goal());
  app.put("/api/bench/goal", { schema: { body: goalSchema, response: replies(goalSchema) } }, async ({ body }) => bench.setGoal(body));
}
