import { costSettingsSchema } from "@ferrule/core";
import { done, valueOrThrow } from "../errors.ts";
import { onlyId } from "../store/history-tables.ts";
import { namedCostsSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

export function addCosts(app: App, { costs, history }: RouteContext): void {
  const response = replies(namedCostsSchema);
  app.get("/api/costs", { schema: { response } }, async (_request, reply) => tagged(reply, costs.read()));
  app.put(
    "/api/costs",
    { schema: { body: costSettingsSchema.partial(), response } },
    async (request, reply) => {
      const changed = history.asOne(() => {
        holdToVersion(request, {
          present: () => done(costs.read()),
          given: request.body,
          base: (tag) => history.version("costs", onlyId, tag),
        });
        return costs.change(request.body);
      });
      return tagged(reply, valueOrThrow(changed));
    },
  );
}
