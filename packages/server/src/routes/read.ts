import { readListing, splitListings } from "@ferrule/core";
import { z } from "zod";
import { problem, valueOrThrow } from "../errors.ts";
import { namedListingSchema, namedModelSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const listingsMost = 2000;
const textMost = 2_000_000;

const catalogue = z.array(namedModelSchema).max(20_000).optional();
const oneSchema = z.strictObject({ text: listingText(), catalogue });
const manySchema = z.strictObject({
  text: z.string({ error: manyExpected() }).max(textMost, { error: manyExpected() }),
  catalogue,
});
const manyReplySchema = z.strictObject({
  listings: z.array(z.strictObject({ text: z.string(), listing: namedListingSchema })),
});

/** The words of one listing. */
export function listingText() {
  const error = "the words of a listing, at most 20,000 characters";
  return z.string({ error }).max(20_000, { error });
}

export function addRead(app: App, { models }: RouteContext): void {
  app.post(
    "/api/read",
    { schema: { body: oneSchema, response: replies(namedListingSchema) } },
    async ({ body }) => readListing(body.text, models.readyWith(body.catalogue ?? [])),
  );
  app.post(
    "/api/read-many",
    { schema: { body: manySchema, response: replies(manyReplySchema) } },
    async ({ body }) => {
      const texts = splitListings(body.text);
      if (texts.length > listingsMost) {
        const refusal = { field: "text", got: `${texts.length} listings`, expected: manyExpected() };
        return valueOrThrow(problem("bad-request", "These are too many listings at once", [refusal]));
      }
      const ready = models.readyWith(body.catalogue ?? []);
      return { listings: texts.map((text) => ({ text, listing: readListing(text, ready) })) };
    },
  );
}

function manyExpected(): string {
  return `the words of at most ${listingsMost} listings, in at most ${textMost} characters`;
}
