import { evidenceSchema } from "@ferrule/core";
import { z } from "zod";
import { evidenceSheet } from "../transfer/list-files.ts";
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
  addListExport(app, url, () => bench.evidence.all(), evidenceSheet.columns, evidenceSheet.always);
  addListImport(app, url, shelf, evidenceSheet);
}
