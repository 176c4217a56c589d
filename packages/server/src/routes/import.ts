import { z } from "zod";
import { benchTarget } from "../transfer/bench-target.ts";
import { importText } from "../transfer/import-text.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

export const importBodySchema = z.strictObject({
  format: z.enum(["csv", "json"], { error: "csv or json" }),
  text: z.string({ error: "the text of the file" }),
  take: z.enum(["good", "all-or-none"], {
    error: "good, to take the good rows, or all-or-none",
  }),
  dryRun: z.boolean().optional(),
  existing: z.enum(["refuse", "replace"], { error: "refuse or replace" }).optional(),
});

export const importReplySchema = z.strictObject({
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
  const schema = { body: importBodySchema, response: replies(importReplySchema) };
  app.post("/api/bench/import", { schema }, async ({ body }) => importText(benchTarget(bench), body));
}
