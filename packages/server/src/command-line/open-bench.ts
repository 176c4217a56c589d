import { openBench } from "../bench/bench.ts";
import { readEnvironment } from "../environment.ts";
import { ProblemError } from "../errors.ts";
import { readReference } from "../reference-files.ts";
import { closeDatabase, openDatabase, openToRead } from "../store/database.ts";
import { latestSchema, schemaOf } from "../store/migrations.ts";
import { readOneMoment } from "../store/read-one-moment.ts";
import type { Database } from "../store/sqlite.ts";
import { openTables, type Tables } from "../store/tables.ts";
import { openCosts } from "../trade/costs.ts";
import { openReadyModels } from "../trade/ready-models.ts";
import type { WorldTools } from "../trade/world.ts";
import type { Given, Surroundings } from "./command.ts";

/** A bench that a command works on, until it is closed. */
export interface OpenedBench {
  readonly database: Database;
  readonly tables: Tables;
  readonly tools: WorldTools;
  close(): void;
}

/** The folder of the user's own bench. */
export function benchFolder({ env }: Surroundings): string {
  return readEnvironment({ ...env, FERRULE_PORT: undefined }).dataFolder;
}

/**
 * The bench to look things up in, to which nothing is written: the user's own, or an empty one in memory where `--bench` says
 * that nothing stored counts. Throws a `ProblemError` where there is none.
 */
export function benchToRead(given: Given, around: Surroundings): OpenedBench {
  if (given.value("bench") !== undefined) return emptyBench(around);
  const found = storedToRead(around);
  if (found) return found;
  throw noBench(benchFolder(around));
}

/** The user's own bench for reading; nothing where there is none yet. */
export function storedToRead(around: Surroundings): OpenedBench | undefined {
  const database = openToRead(benchFolder(around));
  if (database === undefined) return undefined;
  try {
    checkSchema(database);
    readOneMoment(database);
    if (isBegun(database)) return opened(database, around, () => database.close());
    database.close();
    return undefined;
  } catch (error) {
    database.close();
    throw error;
  }
}

/** The first start marks whether the bench is the example; one that broke off before that holds nothing. */
const isBegun = (database: Database) => openTables(database).settings.isExample() !== undefined;

/** A bench in memory with nothing on it. */
export function emptyBench(around: Surroundings): OpenedBench {
  const database = openDatabase(undefined);
  return opened(database, around, () => database.close());
}

/** The user's own bench for writing, made where there is none yet. */
export function benchToWrite(around: Surroundings): OpenedBench {
  const folder = benchFolder(around);
  const before = openToRead(folder);
  try {
    if (before) checkSchema(before);
  } finally {
    before?.close();
  }
  const database = openDatabase(folder);
  return opened(database, around, () => closeDatabase(database));
}

export function noBench(folder: string): ProblemError {
  return new ProblemError({
    code: "not-found",
    message:
      `There is no bench in ${folder} yet. Start Ferrule once (npm start), bring one in (ferrule import FILE), ` +
      "name its folder in FERRULE_DATA, or give an exported one with --bench",
  });
}

function opened(database: Database, around: Surroundings, close: () => void): OpenedBench {
  const { firstCosts, ...reference } = readReference(around.tablesFolder);
  const tables = openTables(database);
  const costs = openCosts(tables, firstCosts);
  const bench = openBench(tables, costs.read);
  const models = openReadyModels(tables);
  return { database, tables, tools: { bench, costs, models, reference, today: around.today }, close };
}

/** A bench is brought up to date by the start of Ferrule and never from here: an older one may still be running on it. */
function checkSchema(database: Database): void {
  const schema = schemaOf(database);
  if (schema === latestSchema) return;
  const age = schema < latestSchema ? "an older" : "a newer";
  const way =
    schema < latestSchema
      ? "Start Ferrule once (npm start) to bring it up to date; ferrule backup keeps a copy as it is now"
      : "Update Ferrule, or name another folder in FERRULE_DATA";
  throw new ProblemError({
    code: "bad-request",
    message: `The bench's database was written by ${age} version of Ferrule (schema ${schema}, this one knows ${latestSchema}). ${way}`,
  });
}
