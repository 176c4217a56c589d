import { settingsSchema } from "../store/settings.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

export function addSettings(app: App, { settings }: RouteContext): void {
  app.get("/api/settings", { schema: { response: replies(settingsSchema) } }, async () => settings.read());
  app.put(
    "/api/settings",
    {
      schema: {
        body: settingsSchema.partial(),
        response: replies(settingsSchema),
      },
    },
    async ({ body }) => {
      settings.write({ ...settings.read(), ...body });
      return settings.read();
    },
  );
}
