import { z } from "zod";
import { importText } from "../transfer/import-text.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const bodySchema = z.strictObject({
  format: z.enum(["csv", "json"], { error: "csv or json" }),
  text: z.string({ error: "the text of the file" }),
  take: z.enum(["good", "all-or-none"], {
    error: "good, to take the good rows, or all-or-none",
  }),
  dryRun: z.boolean().optional(),
  existing: z.enum(["refuse", "replace"], { error: "refuse or replace" }).optional(),
});

const replySchema = z.strictObject({
  taken: z.number().int(),
  dryRun: z.boolean(),
  refused: z.array(
    z.strictObject({
      line: z.number().int(),
      column: z.string(),
      got: z.string(),
      expected: z.string(),
    }),
  ),
});

export function addImport(app: App, { bench }: RouteContext): void {
  const schema = { body: bodySchema, response: replies(replySchema) };
  app.post("/api/bench/import", { schema }, async ({ body }) => importText(bench, body));
}
