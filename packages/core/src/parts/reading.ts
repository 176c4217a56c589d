import { z } from "zod";
import { type FieldPath, fields } from "./fields.ts";

/** Where a reading came from. `typical` is filled in by the software when nothing better is known. */
export const readingSources = ["measured", "stated", "catalogue", "typical"] as const;
export type ReadingSource = (typeof readingSources)[number];

/** A quantity somebody stated or measured; `plusMinus` is a standard uncertainty in the field's own unit. */
export interface Reading {
  readonly value: number;
  readonly plusMinus: number;
  readonly source: ReadingSource;
}

/** A reading as it is written: a bare number, or the number with what is known of it. */
export type WrittenReading = number | { value: number; plusMinus?: number; source?: ReadingSource };

/** The schema of one numeric field: a number in its range, bare or with its uncertainty and source. */
export function readingSchema(path: FieldPath) {
  const { unit, min, max, meaning } = fields[path];
  const expected = `${meaning}: a number from ${min} to ${max}${unit === "none" ? "" : ` ${unit}`}`;
  const value = z.number({ error: expected }).min(min, { error: expected }).max(max, { error: expected });
  const full = z.strictObject({
    value,
    plusMinus: z
      .number({ error: "a standard uncertainty, zero or more" })
      .min(0)
      .max(max - min)
      .optional(),
    source: z.enum(readingSources).optional(),
  });
  return z.union([value, full], { error: expected }).meta({ description: expected });
}

/** The whole reading behind a written one. A bare number counts as stated; a missing uncertainty takes its field's default. */
export function readingFrom(path: FieldPath, written: WrittenReading): Reading {
  if (typeof written === "number") {
    return { value: written, plusMinus: fields[path].plusMinus.stated, source: "stated" };
  }
  const source = written.source ?? "stated";
  const known = source === "typical" ? fields[path].plusMinus.stated : fields[path].plusMinus[source];
  return { value: written.value, plusMinus: written.plusMinus ?? known, source };
}
