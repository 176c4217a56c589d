import { mergePatch, parseWith } from "@ferrule/core";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import type { Shelf } from "../bench/shelf.ts";
import { done, type Outcome, problem, valueOrThrow } from "../errors.ts";
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
  const hold = (request: FastifyRequest, id: string, present: T) =>
    holdToVersion(request, {
      present: () => done(present),
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
    const { id } = request.params;
    const put = shelf.change(id, (present) => {
      hold(request, id, present);
      return done(request.body as T);
    });
    return tagged(reply, valueOrThrow(put));
  });
  const patched = (present: T, patch: unknown): Outcome<T> => {
    const parsed = parseWith(schema, complete(mergePatch(present, patch)));
    return parsed.ok
      ? done(parsed.value)
      : problem("bad-request", "The change was not taken", parsed.refusals);
  };
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
      const { id } = request.params;
      const changed = shelf.change(id, (present) => {
        hold(request, id, present);
        return patched(present, request.body);
      });
      return tagged(reply, valueOrThrow(changed));
    },
  );
  const removed: z.ZodType = removedReply(deletedSchema);
  app.delete(one, { schema: { params, response: replies(removed) } }, async (request) => {
    const { id } = request.params;
    return valueOrThrow(shelf.remove(id, (present) => hold(request, id, present)));
  });
}
