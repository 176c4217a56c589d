import { z } from "zod";
import { clubTypeSchema } from "../parts/part.ts";

/** What a listing can hold: a part, or a complete club. */
export const itemKinds = ["club", "head", "adapter", "shaft", "grip", "cover", "wrench"] as const;
/** Takes one of `itemKinds`, in listings, in the catalogue, in prices and in the costs of parcels. */
export const itemKindSchema = z.enum(itemKinds);
/** What is for sale. The parts of a bench have the same kinds, but for `club`. */
export type ItemKind = z.infer<typeof itemKindSchema>;

const name = z.string().min(1).max(200);

/** One model that the user knows of: what it is, what it is called, and the adapter family of its receiver or adapter. */
export const catalogueModelSchema = z.strictObject({
  id: z.string().min(1).max(80),
  kind: itemKindSchema,
  maker: name,
  model: name,
  /** Other ways in which sellers write the model. */
  aliases: z.array(name).max(40).nullish(),
  clubType: clubTypeSchema.nullish(),
  adapterFamily: z.string().min(1).max(80).nullish(),
  year: z.number().int().min(1900).max(2200).nullish(),
});

/** A model as the user keeps it; a field that is left out or `null` is not known. */
export type CatalogueModel = z.infer<typeof catalogueModelSchema>;
