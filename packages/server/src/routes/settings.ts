import { z } from "zod";
import { done, problem, valueOrThrow } from "../errors.ts";
import { regionSchema } from "../settings/regions.ts";
import { readSettingsFile, settingsFileSchema } from "../settings/settings-file.ts";
import { onlyId } from "../store/history-tables.ts";
import { settingsSchema } from "../store/settings.ts";
import { idParamsSchema, replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

const putInSchema = z.strictObject({
  dryRun: z.boolean().default(false).describe("Shows what would change, and changes nothing"),
  rate: z
    .number()
    .positive()
    .max(1_000_000)
    .optional()
    .describe("How much of the new currency one unit of the old is worth"),
});
const changedSchema = z.strictObject({
  changes: z.array(z.strictObject({ path: z.string(), before: z.unknown(), after: z.unknown() })),
  done: z.boolean(),
});
const regionsSchema = z.strictObject({
  regions: z.array(regionSchema.meta({ id: "Region" })),
  canTakeBack: z.boolean(),
});

export function addSettings(app: App, { settings, settingsDesk, history }: RouteContext): void {
  app.get("/api/settings", { schema: { response: replies(settingsSchema) } }, async (_request, reply) =>
    tagged(reply, settings.read()),
  );
  const response = replies(settingsSchema);
  app.put(
    "/api/settings",
    { schema: { body: settingsSchema.partial(), response } },
    async (request, reply) => {
      history.asOne(() => {
        holdToVersion(request, {
          present: () => done(settings.read()),
          given: request.body,
          base: (tag) => history.version("settings", onlyId, tag),
        });
        settings.write({ ...settings.read(), ...request.body });
      });
      return tagged(reply, settings.read());
    },
  );
  app.get(
    "/api/settings/file",
    { schema: { response: replies(settingsFileSchema.meta({ id: "SettingsFile" })) } },
    async (_request, reply) =>
      reply
        .header("content-disposition", 'attachment; filename="ferrule-settings.json"')
        .send(settingsDesk.file()),
  );
  const changed = replies(changedSchema);
  const fileBody = putInSchema.extend({ text: z.string().max(1_000_000) });
  app.post("/api/settings/file", { schema: { body: fileBody, response: changed } }, async ({ body }) =>
    valueOrThrow(settingsDesk.putIn(valueOrThrow(readSettingsFile(body.text)), body)),
  );
  app.get("/api/settings/regions", { schema: { response: replies(regionsSchema) } }, async () => ({
    regions: settingsDesk.regions,
    canTakeBack: settingsDesk.canTakeBack(),
  }));
  app.post(
    "/api/settings/regions/:id",
    { schema: { params: idParamsSchema, body: putInSchema, response: changed } },
    async ({ params, body }) => {
      const region = settingsDesk.regions.find(({ id }) => id === params.id);
      return valueOrThrow(
        region
          ? settingsDesk.putIn(region.settings, body)
          : problem("not-found", `There are no first values for "${params.id}"`),
      );
    },
  );
  app.post("/api/settings/undo", { schema: { response: changed } }, async () =>
    valueOrThrow(settingsDesk.takeBack()),
  );
}
