import { costSettingsSchema, type Reference } from "@ferrule/core";
import { z } from "zod";
import { settingsSchema } from "../store/settings.ts";
import { namedEvidenceSchema, namedModelSchema, namedSightingSchema } from "../wire/named.ts";
import { benchViewSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const snapshotSchema = benchViewSchema.extend({
  models: z.array(namedModelSchema),
  evidence: z.array(namedEvidenceSchema),
  sightings: z.array(namedSightingSchema),
  codes: z.record(z.string(), z.string()).describe("The ids of parts by the codes of their labels"),
  costs: costSettingsSchema,
  settings: settingsSchema,
  reference: z
    .custom<Reference>()
    .describe("The trade tables: typical values, steps of work and their cautions"),
});

const replySchema = z.strictObject({
  stamp: z.string().describe("Differs after every change of what is in a snapshot"),
  snapshot: snapshotSchema.nullable().describe("Null where the stamp asked with still holds"),
});

/** All that a device needs to go on without a signal, at once. */
export function addSnapshot(
  app: App,
  { bench, models, costs, settings, reference, labelDesk, snapshotStamp }: RouteContext,
): void {
  const schema = {
    querystring: z.strictObject({ since: z.string().max(500).optional() }),
    response: replies(replySchema),
  };
  const { typical, work, cautions } = reference;
  app.get("/api/snapshot", { schema }, async ({ query }) => {
    const stamp = snapshotStamp();
    if (query.since === stamp) return { stamp, snapshot: null };
    const snapshot = {
      ...bench.view(),
      models: [...models.all()],
      evidence: bench.evidence.all(),
      sightings: bench.sightings.all(),
      codes: Object.fromEntries(labelDesk.codes()),
      costs: costs.read(),
      settings: settings.read(),
      reference: { typical, work, cautions },
    };
    return { stamp, snapshot };
  });
}
