import { type ClaimsTable, claimsTable } from "./claims.ts";
import { inTransaction } from "./database.ts";
import { type DeletionsTable, deletionsTable } from "./deletions.ts";
import { type GoalsTable, goalsTable } from "./goals.ts";
import { type JointsTable, jointsTable } from "./joints.ts";
import { type PartsTable, partsTable } from "./parts.ts";
import { type SettingsTable, settingsTable } from "./settings.ts";
import type { Database } from "./sqlite.ts";

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
  /** Differs after every change, by this program or another. */
  stamp(): string;
}

export function openTables(database: Database): Tables {
  const ownChanges = database.prepare("SELECT total_changes() AS count");
  const otherChanges = database.prepare("PRAGMA data_version");
  return {
    parts: partsTable(database),
    joints: jointsTable(database),
    claims: claimsTable(database),
    goals: goalsTable(database),
    deletions: deletionsTable(database),
    settings: settingsTable(database),
    stamp: () => JSON.stringify([ownChanges.get(), otherChanges.get()]),
    together: (work) => inTransaction(database, work),
  };
}
