import { catalogueModelSchema } from "@ferrule/core";
import { z } from "zod";
import { modelsSheet } from "../transfer/list-files.ts";
import { namedModelSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport, addListImport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = catalogueModelSchema.partial({ id: true });

export function addCatalogue(app: App, { bench, history }: RouteContext): void {
  const url = "/api/catalogue";
  const querystring = z.strictObject(versionsQuery);
  const response = replies(z.strictObject({ models: z.array(namedModelSchema), ...versionsReply }));
  app.get(url, { schema: { querystring, response } }, async ({ query }) => {
    const models = bench.models.all();
    return { models, ...versionsIn(query, models) };
  });
  const shelf = bench.models;
  addShelf(app, {
    url,
    table: "models",
    history,
    shelf,
    schema: namedModelSchema,
    inputSchema,
    deletedSchema: namedModelSchema,
  });
  addListExport(app, url, () => bench.models.all(), modelsSheet.columns, modelsSheet.always);
  addListImport(app, url, shelf, modelsSheet);
}
