import { z } from "zod";
import { amountMinorMost } from "../money.ts";
import { faultSchema } from "./fault.ts";
import { readingSchema } from "./reading.ts";

/** What a head can be made for. A rule or a typical figure may hold for one of them alone. */
export const clubTypes = ["driver", "fairway", "hybrid", "iron", "wedge", "putter"] as const;
export const clubTypeSchema = z.enum(clubTypes);
/** What sort of club a head makes, whatever its number and its loft. */
export type ClubType = z.infer<typeof clubTypeSchema>;

export const handSchema = z.enum(["right", "left"]);
export type Hand = z.infer<typeof handSchema>;

/** Flexes in the words of the trade, the softest first. */
export const flexes = ["ladies", "senior", "regular", "regular-plus", "stiff", "x-stiff"] as const;
export const flexSchema = z.enum(flexes);
/** How stiff a shaft's own maker says that it is: a word of that maker, no measured figure. */
export type Flex = z.infer<typeof flexSchema>;

const amountExpected = `whole minor units, from -${amountMinorMost} to ${amountMinorMost}`;

/** Whole minor units of one currency; never a float. */
export const moneySchema = z.strictObject({
  amountMinor: z
    .number({ error: amountExpected })
    .int({ error: amountExpected })
    .min(-amountMinorMost, { error: amountExpected })
    .max(amountMinorMost, { error: amountExpected }),
  currency: z.string().regex(/^[A-Z]{3}$/, "an ISO 4217 code such as EUR"),
});

/** A name for a part, unique on its bench. */
export const partIdSchema = z.string().min(1).max(80);

const dateSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, "a date such as 2026-05-31");

const common = {
  id: partIdSchema,
  maker: z.string().max(200).optional(),
  model: z.string().max(200).optional(),
  year: z.number().int().min(1900).max(2200).optional(),
  /** Faults asserted. */
  faults: z.array(faultSchema).optional(),
  /** Faults looked for and not there. */
  deniedFaults: z.array(faultSchema).optional(),
  note: z.string().max(4000).optional(),
  paid: moneySchema.optional(),
  acquiredOn: dateSchema.optional(),
  soldFor: moneySchema.optional(),
  soldOn: dateSchema.optional(),
};

export const formSchema = z.enum(["parallel", "taper"]);
export type Form = z.infer<typeof formSchema>;

/** A hole in the head that takes the shaft itself. */
export const boreSocketSchema = z.strictObject({
  type: z.literal("bore"),
  diameterIn: readingSchema("socket.diameterIn").optional(),
  form: formSchema.optional(),
  depthIn: readingSchema("socket.depthIn").optional(),
  bbgmIn: readingSchema("socket.bbgmIn").optional(),
  throughBore: z.boolean().optional(),
  outsideDiameterIn: readingSchema("socket.outsideDiameterIn").optional(),
});

/** A head's seat for an adapter of some family. */
export const receiverSocketSchema = z.strictObject({
  type: z.literal("receiver"),
  family: z.string().min(1).max(80).optional(),
  seatToGroundIn: readingSchema("socket.seatToGroundIn").optional(),
});

export const socketSchema = z.discriminatedUnion("type", [boreSocketSchema, receiverSocketSchema]);

/** Heads and everything joined to them are looked at with `z.looseObject`: a field we do not know is kept, and named in the reply. */
export const headSchema = z.looseObject({
  ...common,
  kind: z.literal("head"),
  clubType: clubTypeSchema.optional(),
  clubNumber: z.string().max(12).optional(),
  hand: handSchema.optional(),
  loftDeg: readingSchema("loftDeg").optional(),
  lieDeg: readingSchema("lieDeg").optional(),
  faceAngleDeg: readingSchema("faceAngleDeg").optional(),
  massG: readingSchema("massG").optional(),
  volumeCm3: readingSchema("volumeCm3").optional(),
  heelToToeIn: readingSchema("heelToToeIn").optional(),
  faceToBackIn: readingSchema("faceToBackIn").optional(),
  soleToCrownIn: readingSchema("soleToCrownIn").optional(),
  neckToSoleIn: readingSchema("neckToSoleIn").optional(),
  soleRadiusIn: readingSchema("soleRadiusIn").optional(),
  cgAlongAxisIn: readingSchema("cgAlongAxisIn").optional(),
  socket: socketSchema.optional(),
});

/**
 * `family` names the interface, `bore` is the hole for the shaft's tip, and `settings` are the turns in which it can be put in,
 * in degrees.
 */
export const adapterSchema = z.looseObject({
  ...common,
  kind: z.literal("adapter"),
  family: z.string().min(1).max(80).optional(),
  hand: z.enum(["right", "left", "either"]).optional(),
  bore: z
    .strictObject({
      diameterIn: readingSchema("bore.diameterIn").optional(),
      form: formSchema.optional(),
      depthIn: readingSchema("bore.depthIn").optional(),
    })
    .optional(),
  tipStopFromSeatIn: readingSchema("tipStopFromSeatIn").optional(),
  massG: readingSchema("massG").optional(),
  tiltDeg: readingSchema("tiltDeg").optional(),
  settings: z
    .array(z.strictObject({ label: z.string().min(1).max(40), rotationDeg: z.number().min(-360).max(360) }))
    .max(64)
    .optional(),
});

export const lengthBases = ["shaft-alone", "with-adapter", "playing", "unstated"] as const;

/**
 * `length` is what it measures now and over what, `rawLengthIn` and `rawMassG` are what left the maker, and `suits` is which
 * heads it was made for.
 */
export const shaftSchema = z.looseObject({
  ...common,
  kind: z.literal("shaft"),
  suits: z.enum(["wood", "hybrid", "iron", "putter"]).optional(),
  material: z.enum(["graphite", "steel", "multi"]).optional(),
  flex: flexSchema.optional(),
  massG: readingSchema("massG").optional(),
  length: z
    .strictObject({ lengthIn: readingSchema("length.lengthIn"), basis: z.enum(lengthBases).optional() })
    .optional(),
  rawLengthIn: readingSchema("rawLengthIn").optional(),
  rawMassG: readingSchema("rawMassG").optional(),
  tip: z
    .strictObject({
      diameterIn: readingSchema("tip.diameterIn").optional(),
      form: formSchema.optional(),
      parallelSectionIn: readingSchema("tip.parallelSectionIn").optional(),
      trimmedIn: readingSchema("tip.trimmedIn").optional(),
    })
    .optional(),
  buttDiameterIn: readingSchema("buttDiameterIn").optional(),
  balanceFromTipIn: readingSchema("balanceFromTipIn").optional(),
  frequency: z
    .strictObject({
      cpm: readingSchema("frequency.cpm"),
      clampIn: readingSchema("frequency.clampIn").optional(),
      tipMassG: readingSchema("frequency.tipMassG").optional(),
      beamLengthIn: readingSchema("frequency.beamLengthIn").optional(),
    })
    .optional(),
  torqueDeg: readingSchema("torqueDeg").optional(),
});

/** `coreDiameterIn` is inside, `outsideDiameterIn` outside; the centre of mass is measured from the cap end. */
export const gripSchema = z.looseObject({
  ...common,
  kind: z.literal("grip"),
  massG: readingSchema("massG").optional(),
  coreDiameterIn: readingSchema("coreDiameterIn").optional(),
  lengthIn: readingSchema("lengthIn").optional(),
  outsideDiameterIn: readingSchema("outsideDiameterIn").optional(),
  capThicknessIn: readingSchema("capThicknessIn").optional(),
  cgFromCapIn: readingSchema("cgFromCapIn").optional(),
  ribbed: z.boolean().optional(),
});

/** A head cover: sold with a club, never part of one. */
export const coverSchema = z.looseObject({
  ...common,
  kind: z.literal("cover"),
  clubType: clubTypeSchema.optional(),
});
/** The wrench that turns the screw of one family of adapters. It goes with a club as a cover does. */
export const wrenchSchema = z.looseObject({
  ...common,
  kind: z.literal("wrench"),
  family: z.string().max(80).optional(),
});

/**
 * Tells the six kinds apart by `kind`. Figures are readings in the unit of the field's name; fields we do not know are kept.
 */
export const partSchema = z.discriminatedUnion("kind", [
  headSchema,
  adapterSchema,
  shaftSchema,
  gripSchema,
  coverSchema,
  wrenchSchema,
]);

/** A head as somebody described it, of which only `id` and `kind` are sure to be there. */
export type Head = z.infer<typeof headSchema>;
/** The piece on a shaft's tip that is screwed into a head's receiver. Lengths in inches, angles in degrees, mass in grams. */
export type Adapter = z.infer<typeof adapterSchema>;
/** A shaft by itself, even where a joint says that something is on it. Lengths in inches, masses in grams. */
export type Shaft = z.infer<typeof shaftSchema>;
/** A grip, new or on a shaft: its lengths and diameters in inches, its mass in grams. */
export type Grip = z.infer<typeof gripSchema>;
/** Anything that lies on a bench under an id of its own. A fact that is left out is unknown, which is not the same as no. */
export type Part = z.infer<typeof partSchema>;
/** What a part is, and so which fields it has. */
export type PartKind = Part["kind"];
/** An amount with its ISO 4217 code: 12.50 euros are 1250 of `EUR`. */
export type Money = z.infer<typeof moneySchema>;
