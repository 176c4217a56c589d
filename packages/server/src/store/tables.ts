import { type ClaimsTable, claimsTable } from "./claims.ts";
import { type Database, inTransaction } from "./database.ts";
import { type DeletionsTable, deletionsTable } from "./deletions.ts";
import { type GoalsTable, goalsTable } from "./goals.ts";
import { type JointsTable, jointsTable } from "./joints.ts";
import { type PartsTable, partsTable } from "./parts.ts";
import { type SettingsTable, settingsTable } from "./settings.ts";

/** Every table of the bench's database. */
export interface Tables {
  readonly parts: PartsTable;
  readonly joints: JointsTable;
  readonly claims: ClaimsTable;
  readonly goals: GoalsTable;
  readonly deletions: DeletionsTable;
  readonly settings: SettingsTable;
  /** Runs work on the tables whole or not at all; once it returns, it is on disk. */
  together<T>(work: () => T): T;
}

export function openTables(database: Database): Tables {
  return {
    parts: partsTable(database),
    joints: jointsTable(database),
    claims: claimsTable(database),
    goals: goalsTable(database),
    deletions: deletionsTable(database),
    settings: settingsTable(database),
    together: (work) => inTransaction(database, work),
  };
}
