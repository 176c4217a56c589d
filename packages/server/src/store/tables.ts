import { type BatchesTable, batchesTable } from "./batches.ts";
import { booksTable } from "./books.ts";
import { catalogueTable } from "./catalogue.ts";
import { claimsTable } from "./claims.ts";
import { clearancesTable } from "./clearances.ts";
import { costsTable } from "./costs.ts";
import { type DeletionsTable, deletionsTable } from "./deletions.ts";
import { type DevicesTable, devicesTable } from "./devices.ts";
import type { DocumentTable } from "./document-table.ts";
import { evidenceTable } from "./evidence.ts";
import { type GoalsTable, goalsTable } from "./goals.ts";
import { type Author, type HistoryTable, historyTable } from "./history.ts";
import { type OwnNameTable, ownNameTable } from "./history-own-name.ts";
import { openRecorder, type Recorder } from "./history-recorder.ts";
import {
  type RecordedCosts,
  recordedCosts,
  recordedGoals,
  recordedLabels,
  recordedSettings,
  recordedTable,
} from "./history-tables.ts";
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
  readonly costs: RecordedCosts;
  readonly deletions: DeletionsTable;
  readonly settings: SettingsTable;
  readonly labels: LabelsTable;
  readonly watches: WatchesTable;
  readonly hits: HitsTable;
  readonly batches: BatchesTable;
  readonly devices: DevicesTable;
  readonly keptAnswers: KeptAnswersTable;
  readonly history: HistoryTable;
  readonly ownName: OwnNameTable;
  /** Runs work on the tables whole or not at all, as one change of the history; once it returns, it is on disk. */
  readonly together: Recorder["together"];
  /** What else becomes of the change under way, and who hears of changes. */
  readonly recorder: Pick<Recorder, "undoes" | "onChange">;
  /** Whoever asks for a change at the moment. */
  readonly author: () => Author;
  /** Differs after every change of one of these tables by this program, and after any change by another. */
  stampOf(...tables: readonly Pick<DocumentTable<never>, "changes">[]): string;
}

export interface TablesOptions {
  /** Whoever asks for a change at the moment; a program that does not say is the command line. */
  readonly author?: () => Author;
  /** Milliseconds since 1970; by default this machine's. */
  readonly now?: () => number;
}

const commandLine = (): Author => ({ means: "command-line", device: null, name: null });

export function openTables(
  database: Database,
  { author = commandLine, now = Date.now }: TablesOptions = {},
): Tables {
  const otherChanges = database.prepare("PRAGMA data_version");
  const history = historyTable(database);
  const recorder = openRecorder(database, history, author, now);
  return {
    ...recordedLists(database, recorder),
    goals: recordedGoals(goalsTable(database), recorder),
    costs: recordedCosts(costsTable(database), recorder),
    settings: recordedSettings(settingsTable(database), recorder),
    labels: recordedLabels(labelsTable(database), recorder),
    watches: recordedTable(watchesTable(database), "watches", recorder),
    deletions: deletionsTable(database, recorder),
    hits: hitsTable(database),
    batches: batchesTable(database),
    devices: devicesTable(database),
    keptAnswers: keptAnswersTable(database),
    ownName: ownNameTable(database),
    history,
    recorder,
    author,
    stampOf: (...tables) => JSON.stringify([otherChanges.get(), ...tables.map((table) => table.changes())]),
    together: recorder.together,
  };
}

function recordedLists(database: Database, recorder: Recorder): ListTables {
  return {
    parts: recordedTable(partsTable(database), "parts", recorder),
    joints: recordedTable(jointsTable(database), "joints", recorder),
    claims: recordedTable(claimsTable(database), "claims", recorder),
    models: recordedTable(catalogueTable(database), "models", recorder),
    evidence: recordedTable(evidenceTable(database), "evidence", recorder),
    sightings: recordedTable(sightingsTable(database), "sightings", recorder),
    entries: recordedTable(booksTable(database), "entries", recorder),
    measurements: recordedTable(measurementsTable(database), "measurements", recorder),
    inspections: recordedTable(inspectionsTable(database), "inspections", recorder),
    clearances: recordedTable(clearancesTable(database), "clearances", recorder),
  };
}
