import { type Sighting, sightingSchema } from "@ferrule/core";
import { ProblemError } from "../errors.ts";
import { sightingColumns } from "../transfer/list-columns.ts";
import { fileFormat } from "./file-format.ts";
import type { InputText } from "./input-text.ts";
import { listFrom } from "./list-from.ts";

/** The log as `export --list sightings` writes it as JSON; its CSV leaves out what was read from the words. */
export function sightingsFrom(given: InputText): readonly Sighting[] {
  if (fileFormat(given.from, given.text) === "csv")
    throw new ProblemError({
      code: "bad-request",
      message: `${given.from} cannot be taken for the log`,
      refusals: [{ field: given.from, got: "CSV", expected: "JSON, as export --list sightings writes it" }],
    });
  return listFrom<Sighting>(given, {
    list: "sightings",
    columns: sightingColumns,
    schema: sightingSchema.partial({ id: true }),
    required: [],
    stem: "sighting",
    where: "in the file",
  });
}
