import { evidenceSchema } from "@ferrule/core";
import { z } from "zod";
import { evidenceSheet } from "../transfer/list-files.ts";
import { namedEvidenceSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport, addListImport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = evidenceSchema.partial({ id: true });

export function addEvidence(app: App, { bench, history }: RouteContext): void {
  const url = "/api/evidence";
  const querystring = z.strictObject(versionsQuery);
  const response = replies(z.strictObject({ evidence: z.array(namedEvidenceSchema), ...versionsReply }));
  app.get(url, { schema: { querystring, response } }, async ({ query }) => {
    const evidence = bench.evidence.all();
    return { evidence, ...versionsIn(query, evidence) };
  });
  const shelf = bench.evidence;
  addShelf(app, {
    url,
    table: "evidence",
    history,
    shelf,
    schema: namedEvidenceSchema,
    inputSchema,
    deletedSchema: namedEvidenceSchema,
  });
  addListExport(app, url, () => bench.evidence.all(), evidenceSheet.columns, evidenceSheet.always);
  addListImport(app, url, shelf, evidenceSheet);
}
