import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { judgeListing } from "../trade/judge-listing.ts";
import { dealSchema, shortDeal } from "../wire/deal.ts";
import { namedListingSchema, namedSightingSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { worldShape } from "../wire/world.ts";
import type { App, RouteContext } from "./context.ts";
import { listingText } from "./read.ts";

const bodySchema = z.strictObject({
  text: listingText().optional(),
  listing: namedListingSchema.optional(),
  sighting: z.string().optional(),
  roundTripKm: z.number().min(0).max(5000).optional(),
  place: z.string().max(200).optional(),
  log: z.boolean().optional(),
  ...worldShape,
});

const replySchema = z.strictObject({
  deal: dealSchema,
  listing: namedListingSchema,
  sighting: namedSightingSchema.nullable(),
});

export function addJudge(app: App, context: RouteContext): void {
  const schema = { body: bodySchema, response: replies(replySchema) };
  app.post("/api/judge", { schema }, async ({ body }) => {
    const judged = valueOrThrow(await judgeListing(context, body));
    return { ...judged, deal: shortDeal(judged.deal) };
  });
}
