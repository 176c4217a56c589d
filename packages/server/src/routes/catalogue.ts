import { catalogueModelSchema } from "@ferrule/core";
import { z } from "zod";
import { modelColumns } from "../transfer/list-columns.ts";
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
  const columns = modelColumns;
  addListExport(app, url, () => bench.models.all(), columns, ["id", "kind", "maker", "model"]);
  const required = ["kind", "maker", "model"];
  addListImport(app, url, shelf, {
    list: "models",
    columns,
    schema: inputSchema,
    required,
    stem: "model",
    where: "in the catalogue",
  });
}
