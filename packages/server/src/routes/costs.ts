import { costSettingsSchema } from "@ferrule/core";
import { valueOrThrow } from "../errors.ts";
import { namedCostsSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

export function addCosts(app: App, { costs }: RouteContext): void {
  const response = replies(namedCostsSchema);
  app.get("/api/costs", { schema: { response } }, async () => costs.read());
  app.put("/api/costs", { schema: { body: costSettingsSchema.partial(), response } }, async ({ body }) =>
    valueOrThrow(costs.change(body)),
  );
}
