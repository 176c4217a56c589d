import { z } from "zod";
import { faultSchema } from "../parts/fault.ts";
import {
  clubTypeSchema,
  flexSchema,
  formSchema,
  handSchema,
  lengthBases,
  moneySchema,
} from "../parts/part.ts";
import { itemKindSchema } from "./catalogue.ts";

export const intents = ["sell", "wanted", "swap"] as const;
export const intentSchema = z.enum(intents);
/** What the writer is after: to sell, to find, or to have something else for it. */
export type Intent = z.infer<typeof intentSchema>;

/** A word when the words say how, an amount when they say how much. */
export const postageSchema = z.union([z.enum(["included", "extra", "collection-only"]), moneySchema]);
/** Who bears the cost of sending, or how much it is. */
export type Postage = z.infer<typeof postageSchema>;

const positive = z.number().positive();

/** One thing, or several identical things, that a listing offers. `null` where the words do not say. */
export const listingItemSchema = z.strictObject({
  kind: itemKindSchema,
  /** How many identical things. */
  quantity: z.number().int().min(1).max(999),
  maker: z.string().max(200).nullable(),
  model: z.string().max(200).nullable(),
  /** The model of the catalogue, where it knows the words. */
  modelId: z.string().max(80).nullable(),
  year: z.number().int().min(1900).max(2200).nullable(),
  clubType: clubTypeSchema.nullable(),
  /** As the trade writes it: "3", "PW", "4-PW" for a set. */
  clubNumber: z.string().max(12).nullable(),
  loftDeg: positive.max(90).nullable(),
  hand: handSchema.nullable(),
  flex: flexSchema.nullable(),
  shaftMaterial: z.enum(["graphite", "steel", "multi"]).nullable(),
  shaftMassG: positive.max(400).nullable(),
  length: z.strictObject({ lengthIn: positive.max(80), basis: z.enum(lengthBases) }).nullable(),
  tip: z.strictObject({ diameterIn: positive.max(1).nullable(), form: formSchema.nullable() }).nullable(),
  /** On a shaft: whether an adapter is on its tip. On a head or a club: whether one comes with it. */
  adapter: z.enum(["fitted", "none"]).nullable(),
  adapterFamily: z.string().max(80).nullable(),
  cover: z.boolean().nullable(),
  wrench: z.boolean().nullable(),
  /** Faults asserted. */
  faults: z.array(faultSchema),
  /** Faults that the words say are not there. */
  deniedFaults: z.array(faultSchema),
  /** The price of one of it, where the words price it apart. */
  price: moneySchema.nullable(),
});
/** An item in the words' own facts: loft in degrees, mass in grams, lengths in inches. A `null` is no `false`. */
export type ListingItem = z.infer<typeof listingItemSchema>;

/** The exact words a fact was read from; offsets in UTF-16 units, as JavaScript counts them. */
export const spanSchema = z.strictObject({
  /** `asking`, `postage`, … or `items.0.loftDeg`; a fault is `items.0.faults.sky-mark`. */
  field: z.string(),
  start: z.number().int().min(0),
  end: z.number().int().min(0),
  words: z.string(),
});
/** Where one fact stands: `slice(start, end)` of the listing's text is `words`. */
export type Span = z.infer<typeof spanSchema>;

/** Something a reader of the words would not be sure of, in a sentence. */
export const doubtSchema = z.strictObject({
  field: z.string().nullable(),
  start: z.number().int().min(0).nullable(),
  end: z.number().int().min(0).nullable(),
  text: z.string(),
});
/** A caution about the reading, with the fact and the place in the text; `null` where it is about no one fact or place. */
export type Doubt = z.infer<typeof doubtSchema>;

/** Somebody's words about things for sale, read. */
export const listingSchema = z.strictObject({
  intent: intentSchema.nullable(),
  /** For the whole listing. */
  asking: moneySchema.nullable(),
  /** Whether the words invite an offer (`true`) or refuse one (`false`). */
  negotiable: z.boolean().nullable(),
  postage: postageSchema.nullable(),
  items: z.array(listingItemSchema).max(200),
  spans: z.array(spanSchema),
  doubts: z.array(doubtSchema),
});
/** What is known of a listing, as it was read or as the user corrected it. */
export type Listing = z.infer<typeof listingSchema>;
