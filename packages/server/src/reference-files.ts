import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type CostSettings,
  catalogueModelSchema,
  costSettingsSchema,
  entrySchema,
  evidenceSchema,
  type InspectionRow,
  parseWith,
  type Reference,
  sightingSchema,
} from "@ferrule/core";
import { z } from "zod";
import { benchContentsSchema, completeContents, type Example } from "./bench/bench-contents.ts";
import { type Region, regionNames, regionSchema } from "./settings/regions.ts";

/** The trade tables, and what there is to look at on each kind of part. */
export interface ReferenceTables extends Reference {
  readonly inspection: readonly InspectionRow[];
}

/** The tables of a checkout, and what is given for costs until the user says otherwise. */
export interface ReferenceFiles extends ReferenceTables {
  readonly firstCosts: CostSettings;
  /** First values of parts of the world, to be chosen. */
  readonly regions?: readonly Region[];
}

/** Everything that a server needs of a checkout's `data/reference`. */
export function readReference(dataFolder: string): ReferenceFiles {
  const firstCosts = readWith(costSettingsSchema, join(dataFolder, "reference", "first-costs.json"));
  const regions = regionNames.map((name) =>
    readWith(regionSchema, join(dataFolder, "reference", `first-values-${name}.json`)),
  );
  return { ...readTables(dataFolder), firstCosts, regions };
}

/** The trade tables alone. */
export function readTables(dataFolder: string): ReferenceTables {
  const table = (name: string) => readJson(join(dataFolder, "reference", `${name}.json`));
  return {
    typical: table("typical") as Reference["typical"],
    work: table("work") as Reference["work"],
    cautions: table("cautions") as Reference["cautions"],
    inspection: table("inspection") as ReferenceTables["inspection"],
  };
}

/** The example of a checkout, where there is one: the bench, and as many of the lists about it as there are files. */
export function readDemo(dataFolder: string): Example | undefined {
  const file = (name: string) => join(dataFolder, "demo", `${name}.json`);
  if (!existsSync(file("bench"))) return undefined;
  const list = <T>(name: string, schema: z.ZodType<T>): T[] =>
    existsSync(file(name)) ? readWith(z.array(schema), file(name)) : [];
  return {
    ...completeContents(readWith(benchContentsSchema, file("bench"))),
    models: list("catalogue", catalogueModelSchema),
    evidence: list("evidence", evidenceSchema),
    sightings: list("sightings", sightingSchema),
    entries: list("books", entrySchema),
  };
}

/** What is in a file of ours; that it is not as it should be is our bug, and thrown. */
function readWith<T>(schema: z.ZodType<T>, file: string): T {
  const parsed = parseWith(schema, readJson(file));
  if (parsed.ok) return parsed.value;
  const [first] = parsed.refusals;
  throw new Error(`${file}: ${first?.field} is ${first?.got}, expected ${first?.expected}`);
}

function readJson(file: string): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}
