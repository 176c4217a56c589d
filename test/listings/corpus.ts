import { readFileSync } from "node:fs";
import { z } from "zod";
import { type CatalogueModel, catalogueModelSchema } from "../../packages/core/src/listing/catalogue.ts";
import { listingItemSchema, listingSchema } from "../../packages/core/src/listing/listing.ts";

/** A listing's words, and what a person who followed the guide in README.md read in them. */
export interface AnnotatedListing {
  readonly id: string;
  /** What is awkward in it. */
  readonly about: string;
  readonly text: string;
  readonly expect: ReadFacts;
}

const readFactsSchema = listingSchema.omit({ spans: true, doubts: true });
/** What was read, without the places it was read from. */
export type ReadFacts = z.infer<typeof readFactsSchema>;

const silentListing = { intent: null, asking: null, negotiable: null, postage: null };
const silentItem = {
  ...Object.fromEntries(Object.keys(listingItemSchema.shape).map((field) => [field, null])),
  quantity: 1,
  faults: [],
  deniedFaults: [],
};

const writtenSchema = z.strictObject({
  id: z.string().regex(/^[a-z]\d{3}$/),
  about: z.string().min(3),
  text: z.string().min(1).max(20_000),
  expect: z
    .looseObject({ items: z.array(z.looseObject({})) })
    .transform(({ items, ...listing }): unknown => ({
      ...silentListing,
      ...listing,
      items: items.map((item) => ({ ...silentItem, ...item })),
    }))
    .pipe(readFactsSchema),
});

const textOf = (path: string) => readFileSync(new URL(path, import.meta.url), "utf8");

/** The files of the corpus: those that the reader is tuned on, and the one that stays closed meanwhile. */
export const tuningNames = ["tuning", "tuning-more", "tuning-third", "tuning-fourth"] as const;
export const corpusNames = [...tuningNames, "held-out"] as const;
export type CorpusName = (typeof corpusNames)[number];

/** The listings of one file of the corpus; what an annotation leaves out is filled in. Throws where one breaks the shape. */
export function readCorpus(name: CorpusName): AnnotatedListing[] {
  const lines = textOf(`./${name}.jsonl`).split("\n");
  return lines
    .filter((line) => line.trim() !== "")
    .map((line, index) => {
      const read = writtenSchema.safeParse(JSON.parse(line));
      if (read.success) return read.data;
      throw new Error(`${name}.jsonl, listing ${index + 1}: ${z.prettifyError(read.error)}`);
    });
}

/** The invented models that the annotations name. */
export function readCatalogue(): CatalogueModel[] {
  return z.array(catalogueModelSchema).parse(JSON.parse(textOf("../../data/demo/catalogue.json")));
}
