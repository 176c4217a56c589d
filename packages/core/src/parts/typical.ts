import { z } from "zod";
import { clubTypeSchema } from "./part.ts";
import type { Reading } from "./reading.ts";

/** One row of `data/reference/typical.json`: what a field usually is when nobody has said, and where that comes from. */
export const typicalRowSchema = z.strictObject({
  kind: z.enum(["head", "adapter", "shaft", "grip"]),
  field: z.string(),
  /** The row holds only for this club type (heads), for what the shaft suits, or for its material; absent means any. */
  clubType: clubTypeSchema.optional(),
  suits: z.enum(["wood", "hybrid", "iron", "putter"]).optional(),
  material: z.enum(["graphite", "steel", "multi"]).optional(),
  clubNumber: z.string().optional(),
  value: z.number(),
  plusMinus: z.number().positive(),
  source: z.string(),
});

/**
 * A usual figure with its standard uncertainty, both in the field's own unit. A refusal that rests on one comes to `unsettled`.
 */
export type TypicalRow = z.infer<typeof typicalRowSchema>;

interface Described {
  readonly kind: string;
  readonly clubType?: unknown;
  readonly clubNumber?: unknown;
  readonly suits?: unknown;
  readonly material?: unknown;
}

/** The fields of a part that its typical readings are looked up by. */
export const typicalConditions = ["clubType", "clubNumber", "suits", "material"] as const;

/** The typical reading of a field for this part: the row with most conditions that all hold, or nothing. */
export function typicalReading(
  rows: readonly TypicalRow[],
  part: Described,
  field: string,
): Reading | undefined {
  let best: TypicalRow | undefined;
  let bestCount = -1;
  for (const row of rows) {
    if (row.kind !== part.kind || row.field !== field) continue;
    const stated = typicalConditions.filter((name) => row[name] !== undefined);
    if (stated.length > bestCount && stated.every((name) => row[name] === part[name])) {
      best = row;
      bestCount = stated.length;
    }
  }
  return best && { value: best.value, plusMinus: best.plusMinus, source: "typical" };
}
