import { type Alternative, type Deal, dealVerdicts, type WaitingAnswer, ways } from "@ferrule/core";
import { z } from "zod";
import { daysSchema, moneyReplySchema } from "./money.ts";
import { resaleSchema, shortBasis } from "./resale.ts";
import { workStepSchema } from "./resolution.ts";

const minor = z.number().int();
const reasonSchema = z.strictObject({ code: z.string(), text: z.string() });
const lineSchema = z.strictObject({ code: z.string(), text: z.string(), amountMinor: minor });
const intervalSchema = z.strictObject({ valueMinor: minor, lowMinor: minor, highMinor: minor });

const waitingSchema = z.strictObject({
  want: z.string(),
  text: z.string(),
  takeAtOrUnderMinor: minor,
  expectedWaitWeeks: z.number().nullable(),
  chanceByDeadline: z.number().nullable(),
  chanceWithinWeeks: z.array(z.strictObject({ weeks: z.number(), chance: z.number() })),
  valueMinor: minor,
  ratePerWeek: z.number(),
  sightings: z.number().int(),
  priorOnly: z.boolean(),
}) satisfies z.ZodType<WaitingAnswer>;

const alternativeSchema = z
  .strictObject({
    way: z.enum(ways),
    possible: z.boolean(),
    outlayMinor: minor.nullable(),
    net: intervalSchema.nullable(),
    mostToPayMinor: minor.nullable(),
    lossChance: z.number().nullable(),
    minutes: z.number().nullable(),
    profitPerHourMinor: minor.nullable(),
    daysToMoney: daysSchema.nullable(),
    lines: z.array(lineSchema),
    risks: z.array(reasonSchema),
    reasons: z.array(reasonSchema),
    clubs: z.array(z.string()),
    usesParts: z.array(z.string()),
    waiting: waitingSchema.nullable(),
  })
  .meta({ id: "Alternative" }) satisfies z.ZodType<Alternative>;

const itemSchema = z.strictObject({
  title: z.string(),
  parts: z.array(z.string()),
  resale: resaleSchema,
  clubs: z.array(
    z.strictObject({
      id: z.string(),
      verdict: z.enum(["fits", "fits-with-work", "unsettled"]),
      title: z.string(),
      resale: resaleSchema,
      work: z.array(workStepSchema),
    }),
  ),
  wants: z.array(z.strictObject({ id: z.string(), text: z.string() })),
});

const questionSchema = z.strictObject({
  to: z.enum(["seller", "you"]),
  field: z.string(),
  text: z.string(),
  swingMinor: minor,
  decides: z.boolean(),
});

/** Core's `Deal` as it goes over the wire. */
export const dealSchema = z
  .strictObject({
    verdict: z.enum(dealVerdicts),
    mostToPay: moneyReplySchema.nullable(),
    asking: moneyReplySchema.nullable(),
    gettingHereMinor: minor,
    alternatives: z.array(alternativeSchema),
    best: z.enum(ways),
    items: z.array(itemSchema),
    questions: z.array(questionSchema),
    message: z.string(),
    cares: z.array(reasonSchema),
    reasons: z.array(reasonSchema),
    notices: z.array(z.string()),
  })
  .meta({ id: "Deal" }) satisfies z.ZodType<Deal>;

/** A deal with the basis of each of its estimates cut to what weighs most. */
export function shortDeal(deal: Deal): Deal {
  return {
    ...deal,
    items: deal.items.map((item) => ({
      ...item,
      resale: shortBasis(item.resale),
      clubs: item.clubs.map((club) => ({ ...club, resale: shortBasis(club.resale) })),
    })),
  };
}
