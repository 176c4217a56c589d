import { type BatchesTable, batchesTable } from "./batches.ts";
import { booksTable } from "./books.ts";
import { catalogueTable } from "./catalogue.ts";
import { claimsTable } from "./claims.ts";
import { clearancesTable } from "./clearances.ts";
import { type CostsTable, costsTable } from "./costs.ts";
import { inTransaction } from "./database.ts";
import { type DeletionsTable, deletionsTable } from "./deletions.ts";
import { type DevicesTable, devicesTable } from "./devices.ts";
import type { DocumentTable } from "./document-table.ts";
import { evidenceTable } from "./evidence.ts";
import { type GoalsTable, goalsTable } from "./goals.ts";
import { type HitsTable, hitsTable } from "./hits.ts";
import { inspectionsTable } from "./inspections.ts";
import { jointsTable } from "./joints.ts";
import { type KeptAnswersTable, keptAnswersTable } from "./kept-answers.ts";
import { type LabelsTable, labelsTable } from "./labels.ts";
import type { ListTables } from "./lists.ts";
import { measurementsTable } from "./measurements.ts";
import { partsTable } from "./parts.ts";
import { type SettingsTable, settingsTable } from "./settings.ts";
import { sightingsTable } from "./sightings.ts";
import type { Database } from "./sqlite.ts";
import { type WatchesTable, watchesTable } from "./watches.ts";

/** Every table of the bench's database. */
export interface Tables extends ListTables {
  readonly goals: GoalsTable;
  readonly costs: CostsTable;
  readonly deletions: DeletionsTable;
  readonly settings: SettingsTable;
  readonly labels: LabelsTable;
  readonly watches: WatchesTable;
  readonly hits: HitsTable;
  readonly batches: BatchesTable;
  readonly devices: DevicesTable;
  readonly keptAnswers: KeptAnswersTable;
  /** Runs work on the tables whole or not at all; once it returns, it is on disk. */
  together<T>(work: () => T): T;
  /** Differs after every change of one of these tables by this program, and after any change by another. */
  stampOf(...tables: readonly Pick<DocumentTable<never>, "changes">[]): string;
}

export function openTables(database: Database): Tables {
  const otherChanges = database.prepare("PRAGMA data_version");
  return {
    parts: partsTable(database),
    joints: jointsTable(database),
    claims: claimsTable(database),
    models: catalogueTable(database),
    evidence: evidenceTable(database),
    sightings: sightingsTable(database),
    entries: booksTable(database),
    measurements: measurementsTable(database),
    inspections: inspectionsTable(database),
    clearances: clearancesTable(database),
    goals: goalsTable(database),
    costs: costsTable(database),
    deletions: deletionsTable(database),
    settings: settingsTable(database),
    labels: labelsTable(database),
    watches: watchesTable(database),
    hits: hitsTable(database),
    batches: batchesTable(database),
    devices: devicesTable(database),
    keptAnswers: keptAnswersTable(database),
    stampOf: (...tables) => JSON.stringify([otherChanges.get(), ...tables.map((table) => table.changes())]),
    together: (work) => inTransaction(database, work),
  };
}
