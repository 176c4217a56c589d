import { z } from "zod";
import type { ListShelf } from "../bench/list-shelves.ts";
import type { Columns } from "../transfer/columns.ts";
import { importText } from "../transfer/import-text.ts";
import { type ListFile, listTarget } from "../transfer/list-target.ts";
import { writeListCsv } from "../transfer/write-csv.ts";
import { errorReplySchema, replies } from "../wire/replies.ts";
import type { App } from "./context.ts";
import { importBodySchema, importReplySchema } from "./import.ts";

export const csvReply = {
  200: { content: { "text/csv": { schema: z.string() } } },
  "4xx": errorReplySchema,
  "5xx": errorReplySchema,
};

/** `<url>/export.csv`: a list as CSV, with the columns that are always there and those that some row fills. */
export function addListExport(
  app: App,
  url: string,
  all: () => readonly object[],
  columns: Columns,
  always: readonly string[],
): void {
  const name = `ferrule-${url.split("/").at(-1)}.csv`;
  app.get(`${url}/export.csv`, { schema: { response: csvReply } }, async (_request, reply) => {
    reply.header("content-disposition", `attachment; filename="${name}"`).type("text/csv; charset=utf-8");
    return reply.send(writeListCsv(all(), columns, always));
  });
}

/** `<url>/import`: CSV or JSON into a list. */
export function addListImport<T extends { id?: string }>(
  app: App,
  url: string,
  shelf: ListShelf<T>,
  file: ListFile<T>,
): void {
  const schema = { body: importBodySchema, response: replies(importReplySchema) };
  app.post(`${url}/import`, { schema }, async ({ body }) => importText(listTarget(shelf, file), body));
}
