import { evidenceSchema } from "@ferrule/core";
import { z } from "zod";
import { evidenceColumns } from "../transfer/list-columns.ts";
import { namedEvidenceSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport, addListImport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = evidenceSchema.partial({ id: true });

export function addEvidence(app: App, { bench }: RouteContext): void {
  const url = "/api/evidence";
  const response = replies(z.strictObject({ evidence: z.array(namedEvidenceSchema) }));
  app.get(url, { schema: { response } }, async () => ({ evidence: bench.evidence.all() }));
  const shelf = bench.evidence;
  addShelf(app, { url, shelf, schema: namedEvidenceSchema, inputSchema, deletedSchema: namedEvidenceSchema });
  const columns = evidenceColumns;
  const always = ["id", "on", "what", "price.amountMinor", "price.currency", "kind"];
  addListExport(app, url, () => bench.evidence.all(), columns, always);
  addListImport(app, url, shelf, {
    list: "evidence",
    columns,
    schema: inputSchema,
    required: ["on", "what", "kind"],
    money: "price",
    stem: "price",
    where: "in the evidence",
  });
}
