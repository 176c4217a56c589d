import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { benchViewSchema, replies, restoredSchema } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const exampleBodySchema = z.strictObject({ confirm: z.boolean().optional() }).nullish();

export function addBench(app: App, { bench }: RouteContext): void {
  const view = { response: replies(benchViewSchema) };
  app.get("/api/bench", { schema: view }, async () => bench.view());
  app.post("/api/bench/undo", { schema: { response: replies(restoredSchema) } }, async () =>
    valueOrThrow(bench.undo()),
  );
  app.post("/api/bench/start-own", { schema: view }, async () => valueOrThrow(bench.startOwn()));
  app.post("/api/bench/example", { schema: { body: exampleBodySchema, ...view } }, async ({ body }) =>
    valueOrThrow(bench.loadExample(body?.confirm ?? false)),
  );
}
