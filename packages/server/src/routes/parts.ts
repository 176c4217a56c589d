import { z } from "zod";
import { namedPartSchema } from "../wire/named.ts";
import { partInputSchema } from "../wire/part-input.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

const querySchema = z.strictObject({
  kind: z.enum(["head", "adapter", "shaft", "grip", "cover", "wrench"]).optional(),
  ...versionsQuery,
});

export function addParts(app: App, { bench, history }: RouteContext): void {
  const schema = {
    querystring: querySchema,
    response: replies(z.strictObject({ parts: z.array(namedPartSchema), ...versionsReply })),
  };
  app.get("/api/bench/parts", { schema }, async ({ query }) => {
    const parts = bench.parts.all().filter(({ kind }) => query.kind === undefined || kind === query.kind);
    return { parts, ...versionsIn(query, parts) };
  });
  addShelf(app, {
    url: "/api/bench/parts",
    table: "parts",
    history,
    shelf: bench.parts,
    schema: namedPartSchema,
    inputSchema: partInputSchema,
    deletedSchema: benchThingsSchema,
  });
}
