import { hitSchema, type Watch, watchSchema } from "@ferrule/core";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { done, type Outcome, problem, valueOrThrow } from "../errors.ts";
import { moneyReplySchema } from "../wire/money.ts";
import { createdReplies, idParamsSchema, replies } from "../wire/replies.ts";
import { holdToVersion, tagged } from "../wire/version-tag.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";

const minor = z.number().int();
const namedWatchSchema = watchSchema.meta({ id: "Watch" });

const entrySchema = z
  .strictObject({
    watch: namedWatchSchema,
    worthMinor: minor.nullable(),
    capMinor: minor.nullable(),
    clubs: z.array(z.string()),
    search: z.strictObject({ any: z.array(z.string()), without: z.array(z.string()) }),
    waiting: z
      .strictObject({
        takeAtOrUnderMinor: minor,
        expectedWaitWeeks: z.number().nullable(),
        ratePerWeek: z.number(),
        sightings: z.number().int(),
        priorOnly: z.boolean(),
      })
      .nullable(),
    hits: z.number().int(),
  })
  .meta({ id: "WatchEntry" });

const seenHitSchema = hitSchema
  .extend({
    wanted: z.string(),
    text: z.string(),
    asking: moneyReplySchema.nullable(),
    verdict: z.enum(["buy", "offer-up-to", "ask-first", "leave"]).nullable(),
  })
  .meta({ id: "Hit" });

const inputSchema = watchSchema.partial({ id: true, by: true });
const { pinned, muted, capMinor, place, note } = watchSchema.shape;
const changeSchema = z.strictObject({
  pinned: pinned.nullable(),
  muted: muted.nullable(),
  capMinor: capMinor.nullable(),
  place: place.nullable(),
  note: note.nullable(),
});
const hitsQuerySchema = z.strictObject({ all: z.enum(["true", "false", "1", "0", ""]).optional() });

export function addWatch(app: App, { watchlist, history }: RouteContext): void {
  const present = (id: string): Outcome<Watch> => {
    const watch = watchlist.watches().find((each) => each.id === id);
    return watch ? done(watch) : problem("not-found");
  };
  const hold = (request: FastifyRequest, id: string) =>
    holdToVersion(request, {
      present: () => present(id),
      given: request.body,
      base: (tag) => history.version("watches", id, tag),
    });
  const params = idParamsSchema;
  const listSchema = z.strictObject({
    entries: z.array(entrySchema),
    upToDate: z.boolean(),
    ...versionsReply,
  });
  const one = replies(namedWatchSchema);
  const querystring = z.strictObject(versionsQuery);
  app.get("/api/watch", { schema: { querystring, response: replies(listSchema) } }, async ({ query }) => {
    const list = watchlist.entries();
    const watches = list.entries.map(({ watch }) => watch);
    return { ...list, ...versionsIn(query, watches) };
  });
  app.post(
    "/api/watch",
    { schema: { body: inputSchema, response: createdReplies(namedWatchSchema) } },
    async ({ body }, reply) =>
      reply.code(201).send(tagged(reply, valueOrThrow(watchlist.add({ ...body, by: "hand" })))),
  );
  app.patch(
    "/api/watch/:id",
    { schema: { params, body: changeSchema, response: one } },
    async (request, reply) => {
      const { id } = request.params;
      const changed = history.asOne(() => {
        hold(request, id);
        return watchlist.change(id, request.body);
      });
      return tagged(reply, valueOrThrow(changed));
    },
  );
  const deleted = replies(z.strictObject({ deleted: namedWatchSchema }));
  app.delete("/api/watch/:id", { schema: { params, response: deleted } }, async (request) => {
    const { id } = request.params;
    const removed = history.asOne(() => {
      hold(request, id);
      return watchlist.remove(id);
    });
    return { deleted: valueOrThrow(removed) };
  });
}

export function addHits(app: App, { watchlist }: RouteContext): void {
  const listSchema = z.strictObject({ hits: z.array(seenHitSchema) });
  app.get(
    "/api/hits",
    { schema: { querystring: hitsQuerySchema, response: replies(listSchema) } },
    async ({ query: { all } }) => ({
      hits: watchlist.hits(all !== undefined && all !== "false" && all !== "0"),
    }),
  );
  const body = z.strictObject({ isDealtWith: z.boolean() });
  app.patch(
    "/api/hits/:id",
    { schema: { params: idParamsSchema, body, response: replies(seenHitSchema) } },
    async (request) => valueOrThrow(watchlist.deal(request.params.id, request.body.isDealtWith)),
  );
}
