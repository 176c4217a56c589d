import { conditions, entryPartsMax } from "@ferrule/core";
import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { moneyInSchema } from "../wire/money.ts";
import {
  namedEntrySchema,
  namedEvidenceSchema,
  namedJointSchema,
  namedPartSchema,
  namedSightingSchema,
} from "../wire/named.ts";
import { idParamsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const rate = z.number().positive().max(1_000_000).optional();

const buySchema = z.strictObject({
  paid: moneyInSchema,
  rate,
  on: z.iso.date(),
  items: z.array(z.number().int().min(0)).max(200).optional(),
  roundTripKm: z.number().min(0).max(5000).optional(),
  minutes: z.number().min(0).max(100_000).optional(),
  postage: moneyInSchema.optional(),
});

const boughtSchema = z.strictObject({
  parts: z.array(namedPartSchema),
  joints: z.array(namedJointSchema),
  entries: z.array(namedEntrySchema),
  sighting: namedSightingSchema,
});

const sellSchema = z.strictObject({
  parts: z.array(z.string()).min(1).max(entryPartsMax),
  club: z.string().min(1).max(200).optional(),
  price: moneyInSchema,
  rate,
  on: z.iso.date(),
  daysToSell: z.number().min(0).max(3650).optional(),
  fees: moneyInSchema.optional(),
  postage: moneyInSchema.optional(),
  condition: z.enum(conditions).optional(),
  note: z.string().max(2000).optional(),
  notToBeSwung: z.boolean().optional().describe("Sold as broken, and the buyer told so"),
});

const soldSchema = z.strictObject({
  entries: z.array(namedEntrySchema),
  parts: z.array(namedPartSchema),
  evidence: namedEvidenceSchema.nullable(),
});

export function addTrade(app: App, { trade }: RouteContext): void {
  app.post(
    "/api/sightings/:id/buy",
    { schema: { params: idParamsSchema, body: buySchema, response: replies(boughtSchema) } },
    async ({ params, body }) => valueOrThrow(trade.buy(params.id, body)),
  );
  app.post(
    "/api/books/sell",
    { schema: { body: sellSchema, response: replies(soldSchema) } },
    async ({ body }) => valueOrThrow(trade.sell(body)),
  );
}
