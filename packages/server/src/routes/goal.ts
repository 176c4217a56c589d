import { namedGoalSchema } from "../wire/named.ts";
import { removedSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

export function addGoal(app: App, { bench }: RouteContext): void {
  app.get("/api/bench/goal", { schema: { response: replies(namedGoalSchema) } }, async () => bench.goal());
  app.put(
    "/api/bench/goal",
    { schema: { body: namedGoalSchema, response: replies(namedGoalSchema) } },
    async ({ body }) => bench.setGoal(body),
  );
  app.delete("/api/bench/goal", { schema: { response: replies(removedSchema) } }, async () =>
    bench.deleteGoal(),
  );
}
