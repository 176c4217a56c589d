import { catalogueModelSchema } from "@ferrule/core";
import { z } from "zod";
import { modelsSheet } from "../transfer/list-files.ts";
import { namedModelSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport, addListImport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = catalogueModelSchema.partial({ id: true });

export function addCatalogue(app: App, { bench }: RouteContext): void {
  const url = "/api/catalogue";
  const response = replies(z.strictObject({ models: z.array(namedModelSchema) }));
  app.get(url, { schema: { response } }, async () => ({ models: bench.models.all() }));
  const shelf = bench.models;
  addShelf(app, { url, shelf, schema: namedModelSchema, inputSchema, deletedSchema: namedModelSchema });
  addListExport(app, url, () => bench.models.all(), modelsSheet.columns, modelsSheet.always);
  addListImport(app, url, shelf, modelsSheet);
}
