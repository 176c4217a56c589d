import { z } from "zod";
import { namedPartSchema } from "../wire/named.ts";
import { partInputSchema } from "../wire/part-input.ts";
import { benchThingsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { addShelf } from "./shelf.ts";

const querySchema = z.strictObject({
  kind: z.enum(["head", "adapter", "shaft", "grip", "cover", "wrench"]).optional(),
});

export function addParts(app: App, { bench }: RouteContext): void {
  const schema = {
    querystring: querySchema,
    response: replies(z.strictObject({ parts: z.array(namedPartSchema) })),
  };
  app.get("/api/bench/parts", { schema }, async ({ query }) => ({
    parts: bench.parts.all().filter(({ kind }) => query.kind === undefined || kind === query.kind),
  }));
  addShelf(app, {
    url: "/api/bench/parts",
    shelf: bench.parts,
    schema: namedPartSchema,
    inputSchema: partInputSchema,
    deletedSchema: benchThingsSchema,
  });
}
