import { z } from "zod";
import { settingsPartSchema } from "./settings-file.ts";

/** First values of a part of the world, and what each rests on. */
export const regionSchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(80),
  settings: settingsPartSchema,
  rows: z.array(z.strictObject({ of: z.string(), basis: z.string() })),
});
export type Region = z.infer<typeof regionSchema>;

/** The regions whose values there are, by the names of their files. */
export const regionNames = ["europe", "britain", "north-america", "australia"] as const;
