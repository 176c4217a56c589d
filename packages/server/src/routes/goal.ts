import type { FastifyRequest } from "fastify";
import { done } from "../errors.ts";
import { onlyId } from "../store/history-tables.ts";
import { namedGoalSchema } from "../wire/named.ts";
import { removedSchema, replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

export function addGoal(app: App, { bench, history }: RouteContext): void {
  const hold = (request: FastifyRequest) =>
    holdToVersion(request, {
      present: () => done(bench.goal()),
      given: request.body,
      base: (tag) => history.version("goal", onlyId, tag),
    });
  app.get("/api/bench/goal", { schema: { response: replies(namedGoalSchema) } }, async (_request, reply) =>
    tagged(reply, bench.goal()),
  );
  app.put(
    "/api/bench/goal",
    { schema: { body: namedGoalSchema, response: replies(namedGoalSchema) } },
    async (request, reply) => {
      const goal = history.asOne(() => {
        hold(request);
        return bench.setGoal(request.body);
      });
      return tagged(reply, goal);
    },
  );
  app.delete("/api/bench/goal", { schema: { response: replies(removedSchema) } }, async (request) =>
    history.asOne(() => {
      hold(request);
      return bench.deleteGoal();
    }),
  );
}
