import { mergePatch, parseWith } from "@ferrule/core";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import type { Shelf } from "../bench/shelf.ts";
import { problem, valueOrThrow } from "../errors.ts";
import type { TableName } from "../store/history.ts";
import { createdReplies, idParamsSchema, removedReply, replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import type { App, RouteContext } from "./context.ts";

interface ShelfRoutes<T, Deleted> {
  readonly url: string;
  /** Where the history tells of these things. */
  readonly table: TableName;
  readonly history: RouteContext["history"];
  readonly shelf: Shelf<T, Deleted>;
  /** A thing as it is kept. */
  readonly schema: z.ZodType<T>;
  /** A thing as it is sent, where the id may be left out. */
  readonly inputSchema: z.ZodType;
  /** What a delete is told as. */
  readonly deletedSchema: z.ZodType<Deleted>;
  /** Puts back what a change may not leave out: where a field has to be there, `null` is its value and does not remove it. */
  readonly complete?: (changed: unknown) => unknown;
}

/** Read, add, replace, change and delete, for one kind of thing. */
export function addShelf<T extends object, Deleted>(
  app: App,
  {
    url,
    table,
    history,
    shelf,
    schema,
    inputSchema,
    deletedSchema,
    complete = (changed) => changed,
  }: ShelfRoutes<T, Deleted>,
): void {
  const params = idParamsSchema;
  const one = `${url}/:id`;
  const kept: z.ZodType = schema;
  const hold = (request: FastifyRequest, id: string) =>
    holdToVersion(request, {
      present: () => shelf.get(id),
      given: request.body,
      base: (tag) => history.version(table, id, tag),
    });
  app.get(one, { schema: { params, response: replies(kept) } }, async (request, reply) =>
    tagged(reply, valueOrThrow(shelf.get(request.params.id))),
  );
  app.post(url, { schema: { body: inputSchema, response: createdReplies(kept) } }, async (request, reply) =>
    reply.code(201).send(tagged(reply, valueOrThrow(shelf.add(request.body as T)))),
  );
  app.put(one, { schema: { params, body: inputSchema, response: replies(kept) } }, async (request, reply) => {
    hold(request, request.params.id);
    return tagged(reply, valueOrThrow(shelf.put(request.params.id, request.body as T)));
  });
  app.patch(
    one,
    {
      schema: {
        params,
        body: z.record(z.string(), z.unknown()),
        response: replies(kept),
      },
    },
    async (request, reply) => {
      hold(request, request.params.id);
      const before = valueOrThrow(shelf.get(request.params.id));
      const changed = parseWith(schema, complete(mergePatch(before, request.body)));
      if (!changed.ok)
        return valueOrThrow(problem("bad-request", "The change was not taken", changed.refusals));
      return tagged(reply, valueOrThrow(shelf.put(request.params.id, changed.value)));
    },
  );
  const removed: z.ZodType = removedReply(deletedSchema);
  app.delete(one, { schema: { params, response: replies(removed) } }, async (request) => {
    hold(request, request.params.id);
    return valueOrThrow(shelf.remove(request.params.id));
  });
}
