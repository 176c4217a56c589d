import { dealVerdicts } from "@ferrule/core";
import { z } from "zod";
import { batchFormats, splitBatch } from "../batches/split-batch.ts";
import { valueOrThrow } from "../errors.ts";
import { moneyReplySchema } from "../wire/money.ts";
import { namedListingSchema } from "../wire/named.ts";
import { acceptedReplies, idParamsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const count = z.number().int();
const batch = {
  id: z.string(),
  name: z.string(),
  state: z.enum(["running", "done", "stopped"]),
  total: count,
  done: count,
  startedOn: z.string(),
};
const batchSchema = z.strictObject(batch).meta({ id: "Batch" });

const rowSchema = z
  .strictObject({
    row: count,
    text: z.string(),
    listing: namedListingSchema.nullable(),
    verdict: z.enum(dealVerdicts).nullable(),
    mostToPayMinor: count.nullable(),
    netMinor: count.nullable(),
    asking: moneyReplySchema.nullable(),
    hits: z.array(z.string()),
    sighting: z.string().nullable(),
    problem: z.string().nullable(),
  })
  .meta({ id: "BatchRow" });
const viewSchema = z.strictObject({ ...batch, rows: z.array(rowSchema) });

const textExpected = "the words of many listings, at most 6,000,000 characters";
const bodySchema = z.strictObject({
  text: z.string({ error: textExpected }).max(6_000_000, { error: textExpected }),
  format: z.enum(batchFormats).optional(),
  name: z.string().min(1).max(200).optional(),
});
const querySchema = z.strictObject({
  limit: z
    .string()
    .regex(/^([1-9]\d{0,2}|[1-4]\d{3}|5000)$/, "a whole number from 1 to 5000")
    .optional(),
});

export function addBatches(app: App, { batches }: RouteContext): void {
  const url = "/api/batches";
  const params = idParamsSchema;
  const started = acceptedReplies(z.strictObject({ batch: z.string(), total: count }));
  app.post(url, { schema: { body: bodySchema, response: started } }, async ({ body }, reply) => {
    const { id, total } = batches.add(valueOrThrow(splitBatch(body.text, body.format)), body.name);
    return reply.code(202).send({ batch: id, total });
  });
  const listSchema = z.strictObject({ batches: z.array(batchSchema) });
  app.get(url, { schema: { response: replies(listSchema) } }, async () => ({ batches: batches.all() }));
  app.get(
    `${url}/:id`,
    { schema: { params, querystring: querySchema, response: replies(viewSchema) } },
    async (request) => valueOrThrow(batches.get(request.params.id, Number(request.query.limit ?? 200))),
  );
  const one = { schema: { params, response: replies(batchSchema) } };
  app.delete(`${url}/:id`, one, async (request) => valueOrThrow(await batches.stop(request.params.id)));
  app.post(`${url}/:id/resume`, one, async (request) => valueOrThrow(batches.resume(request.params.id)));
}
