import { z } from "zod";
import { itemKindSchema } from "../listing/catalogue.ts";

const minor = z.number().int().min(0).max(100_000_000);
const percent = z.number().min(0).max(100);
const id = z.string().min(1).max(80);

/** A share of the price: each tier's percent is taken of the part of the price inside the tier. `upToMinor` null is the rest. */
export const feeTierSchema = z.strictObject({ upToMinor: minor.nullable(), percent });

/** What selling through one place costs. */
export const feeTableSchema = z.strictObject({
  id,
  name: z.string().min(1).max(200),
  /** Paid for listing, sold or not. */
  listingMinor: minor,
  tiers: z.array(feeTierSchema).min(1).max(20),
  fixedMinor: minor,
  /** The most that tiers and fixed part come to together; null for no cap. */
  capMinor: minor.nullable(),
  /** Whether the percentages are taken of the postage too. */
  onPostage: z.boolean(),
  /** For taking the payment: a percent of price and postage, and a fixed part. */
  paymentPercent: percent,
  paymentFixedMinor: minor,
  /** Taken of what is left when the money is drawn out. */
  cashOutPercent: percent,
});
/** One place to sell, as its charges were typed in: amounts in whole minor units of the bench's currency. */
export type FeeTable = z.infer<typeof feeTableSchema>;

/** A parcel as it is sent: a box, or a tube whose width and height are its diameter. */
export const parcelSchema = z.strictObject({
  shape: z.enum(["box", "tube"]),
  lengthCm: z.number().positive().max(500),
  widthCm: z.number().positive().max(500),
  heightCm: z.number().positive().max(500),
  massG: z.number().positive().max(100_000),
});
/** What a service is asked to take: centimetres, and grams with the packaging. */
export type Parcel = z.infer<typeof parcelSchema>;

/** What a carrier takes and for how much; a limit that it does not have is null. */
export const postageServiceSchema = z.strictObject({
  id,
  name: z.string().min(1).max(200),
  priceMinor: minor,
  maxMassG: z.number().positive().nullable(),
  maxLengthCm: z.number().positive().nullable(),
  /** Longest side plus girth: 2 × (width + height) of a box, π × diameter of a tube. */
  maxLengthPlusGirthCm: z.number().positive().nullable(),
  /** For tubes: length plus twice the diameter. */
  maxLengthPlusTwoDiametersCm: z.number().positive().nullable(),
  maxVolumeM3: z.number().positive().nullable(),
  /** Kilograms charged for one cubic metre when that is more than the parcel weighs. */
  kgPerM3: z.number().positive().nullable(),
});
/** One way to send a parcel: a price in whole minor units, limits in grams, centimetres and cubic metres. */
export type PostageService = z.infer<typeof postageServiceSchema>;

/** A factor on the price for something explicit; `fitted` says whether evidence may move it. */
export const adjustmentsSchema = z.strictObject({
  /** Against `good`, as a factor on the price. */
  asNew: z.number().positive().max(5),
  fair: z.number().positive().max(5),
  poor: z.number().positive().max(5),
  /** A club without its cover, one without its wrench. */
  noCover: z.number().positive().max(5),
  noWrench: z.number().positive().max(5),
  /** What is asked over what is paid. */
  askedOverSold: z.number().positive().max(5),
  /** By month, January first, against the year's mean. */
  season: z.array(z.number().positive().max(5)).length(12),
  /** Whether evidence may move these where there is enough of it. */
  fit: z.boolean(),
});
/** Factors on a price; 1 leaves it as it is. */
export type Adjustments = z.infer<typeof adjustmentsSchema>;

/** Everything about money that the user decides. */
export const costSettingsSchema = z.strictObject({
  currency: z.string().regex(/^[A-Z]{3}$/),
  /** How many units of the bench's currency one unit of each other currency is worth, as typed in. */
  rates: z.record(z.string().regex(/^[A-Z]{3}$/), z.number().positive().max(1_000_000)),
  /** What an hour at the bench or on the road is worth to the user. */
  hourValueMinor: minor,
  /** The least a deal must bring, and the greatest chance of a loss it may carry, to be worth a yes. */
  leastNetMinor: minor,
  mostLossChance: z.number().min(0).max(1),
  feeTables: z.array(feeTableSchema).min(1).max(50),
  /** Where the user sells, by the id of the fee table. */
  sellsBy: id,
  services: z.array(postageServiceSchema).max(100),
  parcels: z.partialRecord(itemKindSchema, parcelSchema),
  packagingMinor: minor,
  /** Whether buyers pay the postage on top of the price. */
  buyerPaysPostage: z.boolean(),
  perKmMinor: minor,
  minutesPerKm: z.number().min(0).max(60),
  /** Own figures for steps of work, by the step's name. */
  work: z.record(
    z.string(),
    z.strictObject({ minutes: z.number().min(0).max(10_000).optional(), costMinor: minor.optional() }),
  ),
  /** Time to look over, photograph, describe and pack one sale. */
  saleMinutes: z.number().min(0).max(10_000),
  /** What keeping one thing on the shelf for a week costs, and what money must earn in a year. */
  holdingPerWeekMinor: minor,
  discountPerYearPercent: percent,
  /** Give up waiting for a part after so many weeks; null for never. */
  deadlineWeeks: z.number().positive().max(1000).nullable(),
  /** An offer under this share of the price asked is not made; where offers are invited, one under the second. */
  leastOfferPercent: percent,
  leastOfferInvitedPercent: percent,
  /** A price under this share of the low end of what its like went for is looked at twice. */
  farUnderPercent: percent,
  /** What a missing part that nobody has seen a price of is taken to cost: a share of what it makes whole. */
  unpricedPartPercent: percent,
  /** One in so many weeks is how often a part is taken to turn up, until the log of listings tells better. */
  unseenPartWeeks: z.number().min(0.1).max(1000),
  adjustments: adjustmentsSchema,
});
/**
 * The user's own terms, on which everything of worth is reckoned: whole minor units of `currency`, minutes, weeks, percents.
 */
export type CostSettings = z.infer<typeof costSettingsSchema>;
