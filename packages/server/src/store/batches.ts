import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

export type BatchState = "running" | "done" | "stopped";

/** Many listings that were given at once, and how far they are. */
export interface KeptBatch {
  readonly id: string;
  readonly name: string;
  readonly state: BatchState;
  readonly total: number;
  readonly done: number;
  readonly startedOn: string;
}

/** One listing of a batch as it was given. */
export interface GivenRow {
  readonly text: string;
  readonly place?: string;
  readonly roundTripKm?: number;
}

/** What came of one listing. */
export interface RowResult {
  readonly sighting: string | null;
  readonly verdict: "buy" | "offer-up-to" | "ask-first" | "leave" | null;
  readonly mostToPayMinor: number | null;
  readonly netMinor: number | null;
  /** Ids of what is watched. */
  readonly hits: readonly string[];
  /** Why it could not be judged. */
  readonly problem: string | null;
}

export interface KeptRow {
  readonly row: number;
  readonly given: GivenRow;
  readonly result: RowResult;
}

export interface BatchesTable {
  /** The newest first. */
  all(): KeptBatch[];
  get(id: string): KeptBatch | undefined;
  /** Keeps the rows of a batch that is about to begin. */
  add(name: string, startedOn: string, rows: readonly GivenRow[]): KeptBatch;
  setState(id: string, state: BatchState): void;
  /** Rows that nothing has come of yet, in order. */
  open(id: string): { readonly row: number; readonly given: GivenRow }[];
  finish(id: string, row: number, result: RowResult): void;
  /** Rows that something has come of, those that bring most first. */
  best(id: string, limit: number): KeptRow[];
}

export function batchesTable(database: Database): BatchesTable {
  const columns = "id, name, state, total, done, startedOn";
  const all = database.prepare(`SELECT ${columns} FROM batches ORDER BY place DESC`);
  const one = database.prepare(`SELECT ${columns} FROM batches WHERE id = ?`);
  const next = database.prepare("SELECT 1 + coalesce(max(place), 0) AS number FROM batches");
  const insert = database.prepare(
    "INSERT INTO batches (id, name, state, total, done, startedOn) VALUES (?, ?, 'running', ?, 0, ?)",
  );
  const insertRow = database.prepare("INSERT INTO batch_rows (batch, row, given) VALUES (?, ?, ?)");
  const setState = database.prepare("UPDATE batches SET state = ? WHERE id = ?");
  const open = database.prepare(
    "SELECT row, given FROM batch_rows WHERE batch = ? AND result IS NULL ORDER BY row",
  );
  const finish = database.prepare(
    "UPDATE batch_rows SET result = ?, netMinor = ? WHERE batch = ? AND row = ? AND result IS NULL",
  );
  const count = database.prepare("UPDATE batches SET done = done + 1 WHERE id = ?");
  const best = database.prepare(
    `SELECT row, given, result FROM batch_rows WHERE batch = ? AND result IS NOT NULL
     ORDER BY netMinor IS NULL, netMinor DESC, row LIMIT ?`,
  );
  const get = (id: string) => one.get(id) as KeptBatch | undefined;
  return {
    all: () => all.all() as unknown as KeptBatch[],
    get,
    add: (name, startedOn, rows) => {
      const { number } = next.get() as { number: number };
      const id = `batch-${number}`;
      insert.run(id, name, rows.length, startedOn);
      rows.forEach((given, row) => {
        insertRow.run(id, row, JSON.stringify(given));
      });
      return get(id) as KeptBatch;
    },
    setState: (id, state) => void setState.run(state, id),
    open: (id) =>
      (open.all(id) as unknown as { row: number; given: string }[]).map(({ row, given }) => ({
        row,
        given: keptJson<GivenRow>(given),
      })),
    finish: (id, row, result) => {
      const { changes } = finish.run(JSON.stringify(result), result.netMinor, id, row);
      if (Number(changes) > 0) count.run(id);
    },
    best: (id, limit) =>
      (best.all(id, limit) as unknown as { row: number; given: string; result: string }[]).map((kept) => ({
        row: kept.row,
        given: keptJson<GivenRow>(kept.given),
        result: keptJson<RowResult>(kept.result),
      })),
  };
}
