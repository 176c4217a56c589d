import type { BooksLine, BooksSummary, OutcomeTrust } from "@ferrule/core";
import { z } from "zod";
import { wholeMinorSchema as minor } from "./money.ts";

const line = {
  inMinor: minor,
  outMinor: minor,
  feesMinor: minor,
  postageMinor: minor,
  tripsMinor: minor,
  materialsMinor: minor,
  netMinor: minor,
  km: z.number(),
  minutes: z.number(),
  profitPerHourMinor: minor.nullable(),
  sales: z.number().int(),
};
const lineSchema = z.strictObject(line) satisfies z.ZodType<BooksLine>;

const trustSchema = z.strictObject({
  count: z.number().int(),
  pricesInside: z.number().nullable(),
  priceBias: z.number().nullable(),
  priceSpread: z.number().nullable(),
  daysBias: z.number().nullable(),
  rows: z.array(
    z.strictObject({
      entry: z.string(),
      on: z.string(),
      club: z.string().nullable(),
      expectedMinor: minor,
      lowMinor: minor,
      highMinor: minor,
      outcomeMinor: minor,
      expectedDays: z.number().nullable(),
      days: z.number().nullable(),
      inside: z.boolean(),
    }),
  ),
}) satisfies z.ZodType<OutcomeTrust>;

/** Core's `BooksSummary` as it goes over the wire. */
export const booksSummarySchema = z
  .strictObject({
    currency: z.string(),
    totals: lineSchema,
    byClub: z.array(z.strictObject({ ...line, club: z.string().nullable() })),
    byMonth: z.array(z.strictObject({ ...line, month: z.string() })),
    byYear: z.array(z.strictObject({ ...line, year: z.number().int() })),
    trust: trustSchema,
    unconverted: z.array(z.strictObject({ entry: z.string(), currency: z.string() })),
  })
  .meta({ id: "BooksSummary" }) satisfies z.ZodType<BooksSummary>;
