import { entryPartsMax, salePlaceholders } from "@ferrule/core";
import { z } from "zod";
import { done, valueOrThrow } from "../errors.ts";
import { onlyId } from "../store/history-tables.ts";
import { replies } from "../wire/replies.ts";
import { saleDescriptionSchema } from "../wire/sheet.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

const part = z.string().min(1).max(80);
const template = z.string().min(1).max(8000);

const templateReplySchema = z.strictObject({
  template: z.string(),
  isFirst: z.boolean(),
  placeholders: z.array(z.enum(salePlaceholders)),
});

export function addAdvert(app: App, { sheetDesk, history }: RouteContext): void {
  const querystring = z.strictObject({ part: z.union([part, z.array(part).min(1).max(entryPartsMax)]) });
  app.get(
    "/api/advert",
    { schema: { querystring, response: replies(saleDescriptionSchema) } },
    async ({ query }) => valueOrThrow(sheetDesk.advert([query.part].flat())),
  );
  const body = z.strictObject({ parts: z.array(part).min(1).max(entryPartsMax), template });
  app.post("/api/advert", { schema: { body, response: replies(saleDescriptionSchema) } }, async (request) =>
    valueOrThrow(sheetDesk.advert(request.body.parts, request.body.template)),
  );
  const response = replies(templateReplySchema);
  const placeholders = [...salePlaceholders];
  app.get("/api/advert/template", { schema: { response } }, async (_request, reply) =>
    tagged(reply, { ...sheetDesk.template(), placeholders }, sheetDesk.template().template),
  );
  const keepSchema = z.strictObject({ template: template.nullable() });
  app.put("/api/advert/template", { schema: { body: keepSchema, response } }, async (request, reply) => {
    const outcome = history.asOne(() => {
      holdToVersion(request, {
        present: () => done(sheetDesk.template().template),
        given: request.body.template,
        base: (tag) => history.version("sale-template", onlyId, tag),
      });
      return sheetDesk.keepTemplate(request.body.template);
    });
    const kept = valueOrThrow(outcome);
    return tagged(reply, { ...kept, placeholders }, kept.template);
  });
}
