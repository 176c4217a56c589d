import { entrySchema, summariseBooks } from "@ferrule/core";
import { z } from "zod";
import { newestFirst } from "../bench/newest-first.ts";
import { entriesSheet } from "../transfer/list-files.ts";
import { booksSummarySchema } from "../wire/books-summary.ts";
import { namedEntrySchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport, addListImport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = entrySchema.partial({ id: true });

export function addBooks(app: App, { bench, costs, history }: RouteContext): void {
  const url = "/api/books";
  const querystring = z.strictObject(versionsQuery);
  const response = replies(z.strictObject({ entries: z.array(namedEntrySchema), ...versionsReply }));
  const all = () => newestFirst(bench.entries.all(), ({ on }) => on);
  app.get(url, { schema: { querystring, response } }, async ({ query }) => {
    const entries = all();
    return { entries, ...versionsIn(query, entries) };
  });
  app.get(`${url}/summary`, { schema: { response: replies(booksSummarySchema) } }, async () =>
    summariseBooks(bench.entries.all(), costs.read()),
  );
  const shelf = bench.entries;
  addShelf(app, {
    url,
    table: "entries",
    history,
    shelf,
    schema: namedEntrySchema,
    inputSchema,
    deletedSchema: namedEntrySchema,
  });
  addListExport(app, url, () => bench.entries.all(), entriesSheet.columns, entriesSheet.always);
  addListImport(app, url, shelf, entriesSheet);
}
