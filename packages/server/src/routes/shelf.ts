import { parseWith } from "@ferrule/core";
import { z } from "zod";
import type { Shelf } from "../bench/shelf.ts";
import { problem, valueOrThrow } from "../errors.ts";
import { createdReplies, idParamsSchema, removedSchema, replies } from "../wire/replies.ts";
import type { App } from "./context.ts";
import { mergePatch } from "./merge-patch.ts";

interface ShelfRoutes<T> {
  readonly url: string;
  readonly shelf: Shelf<T>;
  /** A thing as it is kept. */
  readonly schema: z.ZodType<T>;
  /** A thing as it is sent, where the id may be left out. */
  readonly inputSchema: z.ZodType;
}

/** Read, add, replace, change and delete, for one kind of thing on the bench. */
export function addShelf<T extends object>(
  app: App,
  { url, shelf, schema, inputSchema }: ShelfRoutes<T>,
): void {
  const params = idParamsSchema;
  const one = `${url}/:id`;
  const kept: z.ZodType = schema;
  app.get(one, { schema: { params, response: replies(kept) } }, async (request) =>
    valueOrThrow(shelf.get(request.params.id)),
  );
  app.post(url, { schema: { body: inputSchema, response: createdReplies(kept) } }, async (request, reply) =>
    reply.code(201).send(valueOrThrow(shelf.add(request.body as T))),
  );
  app.put(one, { schema: { params, body: inputSchema, response: replies(kept) } }, async (request) =>
    valueOrThrow(shelf.put(request.params.id, request.body as T)),
  );
  app.patch(
    one,
    {
      schema: {
        params,
        body: z.record(z.string(), z.unknown()),
        response: replies(kept),
      },
    },
    async (request) => {
      const changed = parseWith(schema, mergePatch(valueOrThrow(shelf.get(request.params.id)), request.body));
      if (!changed.ok)
        return valueOrThrow(problem("bad-request", "The change was not taken", changed.refusals));
      return valueOrThrow(shelf.put(request.params.id, changed.value));
    },
  );
  app.delete(one, { schema: { params, response: replies(removedSchema) } }, async (request) =>
    valueOrThrow(shelf.remove(request.params.id)),
  );
}
