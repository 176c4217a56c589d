import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { benchViewSchema, replies, restoredSchema } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

/** Whether If-None-Match names this version (RFC 9110, 13.1.2, by weak comparison). */
const namesTag = (wanted: string | undefined, tag: string) =>
  wanted?.split(",").some((one) => [tag, `W/${tag}`].includes(one.trim())) ?? false;

const exampleBodySchema = z.strictObject({ confirm: z.boolean().optional() }).nullish();

export function addBench(app: App, { bench }: RouteContext): void {
  const view = { response: replies(benchViewSchema) };
  app.get("/api/bench", { schema: view }, async (request, reply) => {
    const { bytes, tag } = bench.text();
    reply.header("etag", tag).header("cache-control", "no-cache");
    if (namesTag(request.headers["if-none-match"], tag))
      return reply.code(304 as 200).send(undefined as never);
    // Already the text of the reply: to read and hold a large bench to the schema again took longer than everything else.
    return reply.type("application/json; charset=utf-8").send(bytes as never);
  });
  app.post("/api/bench/undo", { schema: { response: replies(restoredSchema) } }, async () =>
    valueOrThrow(bench.undo()),
  );
  app.post("/api/bench/start-own", { schema: view }, async () => valueOrThrow(bench.startOwn()));
  app.post("/api/bench/example", { schema: { body: exampleBodySchema, ...view } }, async ({ body }) =>
    valueOrThrow(bench.loadExample(body?.confirm ?? false)),
  );
}
