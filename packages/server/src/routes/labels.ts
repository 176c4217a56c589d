import { z } from "zod";
import { done, valueOrThrow } from "../errors.ts";
import { reachedBy } from "../labels/reached-by.ts";
import { onlyId } from "../store/history-tables.ts";
import { labelSetupSchema } from "../store/labels.ts";
import { replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

const labelSchema = z
  .strictObject({ code: z.string(), part: z.string(), joined: z.array(z.string()), printed: z.boolean() })
  .meta({ id: "Label" });
const namedSetupSchema = labelSetupSchema.meta({ id: "LabelSetup" });

const labelsSchema = z.strictObject({
  labels: z.array(labelSchema),
  setup: namedSetupSchema,
  address: z
    .string()
    .nullable()
    .describe("What a label's address begins with; null where only this machine could open it"),
});
const printedSchema = z.strictObject({
  codes: z.array(z.string().max(40)).min(1).max(5000),
  printed: z.boolean(),
});
const foundSchema = z.strictObject({
  code: z.string(),
  part: z.string().nullable(),
  near: z.array(z.strictObject({ code: z.string(), part: z.string() })),
});

export function addLabels(app: App, { labelDesk, network, history }: RouteContext): void {
  app.get("/api/labels", { schema: { response: replies(labelsSchema) } }, async (request) => ({
    labels: labelDesk.labels(),
    setup: labelDesk.setup(),
    address: reachedBy(request, network),
  }));
  app.put(
    "/api/labels/setup",
    { schema: { body: namedSetupSchema, response: replies(namedSetupSchema) } },
    async (request, reply) => {
      const changed = history.asOne(() => {
        holdToVersion(request, {
          present: () => done(labelDesk.setup()),
          given: request.body,
          base: (tag) => history.version("labels", onlyId, tag),
        });
        return labelDesk.changeSetup(request.body);
      });
      return tagged(reply, changed);
    },
  );
  app.post(
    "/api/labels/printed",
    { schema: { body: printedSchema, response: replies(z.strictObject({ labels: z.array(labelSchema) })) } },
    async ({ body }) => ({ labels: valueOrThrow(labelDesk.markPrinted(body.codes, body.printed)) }),
  );
  app.get(
    "/api/codes/:code",
    { schema: { params: z.object({ code: z.string() }), response: replies(foundSchema) } },
    async ({ params }) => labelDesk.find(params.code),
  );
}
