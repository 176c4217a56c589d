import { costSettingsSchema } from "@ferrule/core";
import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import { judgeListing } from "../trade/judge-listing.ts";
import { dealSchema, shortDeal } from "../wire/deal.ts";
import {
  namedClaimSchema,
  namedEvidenceSchema,
  namedGoalSchema,
  namedJointSchema,
  namedListingSchema,
  namedModelSchema,
  namedPartSchema,
  namedSightingSchema,
} from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";
import { listingText } from "./read.ts";

const bodySchema = z.strictObject({
  text: listingText().optional(),
  listing: namedListingSchema.optional(),
  sighting: z.string().optional(),
  roundTripKm: z.number().min(0).max(5000).optional(),
  place: z.string().max(200).optional(),
  log: z.boolean().optional(),
  today: z.iso.date().optional(),
  catalogue: z.array(namedModelSchema).max(20_000).optional(),
  parts: z.array(namedPartSchema).optional(),
  joints: z.array(namedJointSchema).optional(),
  claims: z.array(namedClaimSchema).optional(),
  goal: namedGoalSchema.optional(),
  evidence: z.array(namedEvidenceSchema).optional(),
  sightings: z.array(namedSightingSchema).optional(),
  costs: costSettingsSchema.partial().optional(),
});

const replySchema = z.strictObject({
  deal: dealSchema,
  listing: namedListingSchema,
  sighting: namedSightingSchema.nullable(),
});

export function addJudge(app: App, context: RouteContext): void {
  const schema = { body: bodySchema, response: replies(replySchema) };
  app.post("/api/judge", { schema }, async ({ body }) => {
    const judged = valueOrThrow(judgeListing(context, body));
    return { ...judged, deal: shortDeal(judged.deal) };
  });
}
