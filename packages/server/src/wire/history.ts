import { z } from "zod";

export const authorSchema = z.strictObject({
  means: z
    .enum(["here", "device", "command-line"])
    .describe("At the machine that serves, from a paired device, or by the command line"),
  device: z.string().nullable().describe("The id of the device"),
  name: z.string().nullable().describe("The device's name, or this machine's, as it was then"),
});

const entrySchema = z.strictObject({
  table: z.string(),
  id: z.string(),
  before: z.unknown().describe("Null where it was not there"),
  after: z.unknown().describe("Null where it is not there any more"),
});

export const changeSchema = z
  .strictObject({
    number: z.number().int(),
    at: z.string().describe("The moment, as an ISO 8601 instant"),
    who: authorSchema,
    what: z.string().describe("What was done, as a code such as part-changed"),
    words: z.string(),
    things: z.number().int().describe("How many things it touched"),
    entries: z.array(entrySchema).describe("The first of them"),
    undoes: z.number().int().nullable().describe("The change that this one took back"),
    undoneBy: z
      .number()
      .int()
      .nullable()
      .describe("The change that took this one back, as long as that stands"),
  })
  .meta({ id: "Change" });
