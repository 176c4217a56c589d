import { z } from "zod";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const replySchema = z.strictObject({
  ok: z.literal(true),
  version: z.string(),
  parts: z.number().int(),
  example: z.boolean(),
});

export function addHealth(app: App, { bench, version }: RouteContext): void {
  app.get("/api/health", { schema: { response: replies(replySchema) } }, async () => {
    const { parts, example } = bench.view();
    return { ok: true as const, version, parts: parts.length, example };
  });
}
