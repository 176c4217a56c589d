import { outcomes, type Sighting, sightingSchema } from "@ferrule/core";
import { z } from "zod";
import { newestFirst } from "../bench/newest-first.ts";
import { sightingsSheet } from "../transfer/list-files.ts";
import { namedSightingSchema } from "../wire/named.ts";
import { replies } from "../wire/replies.ts";
import { versionsIn, versionsQuery, versionsReply } from "../wire/versions.ts";
import type { App, RouteContext } from "./context.ts";
import { addListExport } from "./list-files.ts";
import { addShelf } from "./shelf.ts";

const inputSchema = sightingSchema.partial({ id: true });
const querySchema = z.strictObject({ outcome: z.enum(outcomes).optional(), ...versionsQuery });

/** What a listing says of itself, where it says nothing. */
const unsaid = { intent: null, asking: null, negotiable: null, postage: null };

export function addSightings(app: App, { bench, history }: RouteContext): void {
  const url = "/api/sightings";
  const response = replies(z.strictObject({ sightings: z.array(namedSightingSchema), ...versionsReply }));
  const all = () => newestFirst(bench.sightings.all(), ({ seenOn }) => seenOn);
  app.get(url, { schema: { querystring: querySchema, response } }, async ({ query }) => {
    const sightings = all().filter(({ outcome }) => query.outcome === undefined || outcome === query.outcome);
    return { sightings, ...versionsIn(query, sightings) };
  });
  addShelf(app, {
    url,
    table: "sightings",
    history,
    shelf: bench.sightings,
    schema: namedSightingSchema,
    inputSchema,
    deletedSchema: namedSightingSchema,
    complete: (changed) => ({
      ...(changed as Sighting),
      listing: { ...unsaid, ...(changed as Sighting).listing },
      read: { ...unsaid, ...(changed as Sighting).read },
    }),
  });
  const { columns, always, rowOf } = sightingsSheet;
  addListExport(app, url, () => bench.sightings.all().map(rowOf), columns, always);
}
