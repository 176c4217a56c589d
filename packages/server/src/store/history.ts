import { keptJson } from "./kept-json.ts";
import type { ListName } from "./lists.ts";
import type { Database } from "./sqlite.ts";

/** What there is one of on a bench; each is kept track of under the id `bench`. */
export const singleNames = [
  "goal",
  "costs",
  "settings",
  "labels",
  "sale-template",
  "former-settings",
  "example",
] as const;
export type SingleName = (typeof singleNames)[number];

/** Where a thing is that the history keeps track of. The id of `labels-printed` is a part's place on the bench. */
export type TableName = ListName | "watches" | "labels-printed" | SingleName;

export type ThingNoun =
  | "part"
  | "joint"
  | "claim"
  | "model"
  | "price"
  | "sighting"
  | "entry"
  | "measurement"
  | "watch";

/** What somebody did. */
export type ChangeCode =
  | `${ThingNoun}-${"added" | "changed" | "deleted"}`
  | "taken-in"
  | "goal-changed"
  | "goal-deleted"
  | "costs-changed"
  | "settings-changed"
  | "settings-put-in"
  | "settings-taken-back"
  | "labels-changed"
  | "labels-printed"
  | "template-changed"
  | "listing-bought"
  | "parts-sold"
  | "club-measured"
  | "part-inspected"
  | "fault-cleared"
  | "batch-entered"
  | "example-loaded"
  | "own-bench-started"
  | "delete-undone"
  | "change-undone"
  | "changed";

/** Who made a change: at the machine that serves, from a paired device, or by the command line. */
export interface Author {
  readonly means: "here" | "device" | "command-line";
  /** The id of the device. */
  readonly device: string | null;
  /** The device's name, or this machine's, as it was then; null where it has none. */
  readonly name: string | null;
}

/** One thing that a change added (no `before`), took (no `after`) or changed. */
export interface ChangeEntry {
  readonly table: TableName;
  readonly id: string;
  /** Where it stood in the order of its list before the change, or stands since, where it was not there before. */
  readonly place: number | null;
  readonly before?: unknown;
  readonly after?: unknown;
}

export interface NewChange {
  /** The moment, as an ISO 8601 instant. */
  readonly at: string;
  readonly who: Author;
  readonly what: ChangeCode;
  /** The number of the change that this one takes back. */
  readonly undoes: number | null;
}

export interface KeptChange extends NewChange {
  readonly number: number;
  /** How many things it touched. */
  readonly things: number;
  /** The number of the change that took this one back, as long as that stands. */
  readonly undoneBy: number | null;
}

export interface ChangeQuery {
  /** Only changes with a lower number. */
  readonly before?: number | undefined;
  readonly limit: number;
  readonly table?: string | undefined;
  readonly id?: string | undefined;
}

/** Who changed what when. */
export interface HistoryTable {
  add(change: NewChange, entries: readonly ChangeEntry[]): number;
  get(number: number): KeptChange | undefined;
  /** The newest first. */
  list(query: ChangeQuery): KeptChange[];
  /** Those after a number, the oldest first. */
  after(number: number, limit: number): KeptChange[];
  entries(number: number, from?: number, limit?: number): ChangeEntry[];
  /** What became of one thing, the newest first. */
  ofThing(table: string, id: string, limit: number): (ChangeEntry & { readonly number: number })[];
  /** The number of the newest change; 0 where there is none. */
  latest(): number;
  oldest(): KeptChange | undefined;
  /** How many things all changes touched together. */
  things(): number;
  /** Notes what took a change back, or that it stands again; and so on along what it took back itself. */
  setUndone(number: number, by: number | null): void;
  /** Forgets changes up to a number. */
  forgetTo(number: number): void;
}

const fields = "number, at, means, device, who, what, things, undoes, undoneBy";
const entryFields = "change, listed, id, place, before, after";

export function historyTable(database: Database): HistoryTable {
  const insert = database.prepare(
    "INSERT INTO changes (at, means, device, who, what, things, undoes) VALUES (?, ?, ?, ?, ?, ?, ?) " +
      "RETURNING number",
  );
  const insertEntry = database.prepare(
    "INSERT INTO change_entries (change, entry, listed, id, place, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)",
  );
  const one = database.prepare(`SELECT ${fields} FROM changes WHERE number = ?`);
  const all = database.prepare(`SELECT ${fields} FROM changes WHERE number < ? ORDER BY number DESC LIMIT ?`);
  const ofTable = database.prepare(
    `SELECT ${fields} FROM changes WHERE number < ?
       AND number IN (SELECT change FROM change_entries WHERE listed = ?) ORDER BY number DESC LIMIT ?`,
  );
  const ofOne = database.prepare(
    `SELECT ${fields} FROM changes WHERE number < ?
       AND number IN (SELECT change FROM change_entries WHERE listed = ? AND id = ?) ORDER BY number DESC LIMIT ?`,
  );
  const after = database.prepare(`SELECT ${fields} FROM changes WHERE number > ? ORDER BY number LIMIT ?`);
  const entries = database.prepare(
    `SELECT ${entryFields} FROM change_entries WHERE change = ? AND entry >= ? ORDER BY entry LIMIT ?`,
  );
  const ofThing = database.prepare(
    `SELECT ${entryFields} FROM change_entries WHERE listed = ? AND id = ? ORDER BY change DESC LIMIT ?`,
  );
  const latest = database.prepare("SELECT coalesce(max(number), 0) AS number FROM changes");
  const oldest = database.prepare(`SELECT ${fields} FROM changes ORDER BY number LIMIT 1`);
  const things = database.prepare("SELECT coalesce(sum(things), 0) AS things FROM changes");
  const setUndone = database.prepare("UPDATE changes SET undoneBy = ? WHERE number = ?");
  const forget = database.prepare("DELETE FROM changes WHERE number <= ?");
  const forgetEntries = database.prepare("DELETE FROM change_entries WHERE change <= ?");
  const get = (number: number) => changeOf(one.get(number));
  return {
    get,
    add: ({ at, who, what, undoes }, added) => {
      const { means, device, name } = who;
      const { number } = insert.get(at, means, device, name ?? "", what, added.length, undoes) as {
        number: number;
      };
      added.forEach(({ table, id, place, before, after: now }, entry) => {
        insertEntry.run(number, entry, table, id, place, textOf(before), textOf(now));
      });
      return number;
    },
    list: ({ before = Number.MAX_SAFE_INTEGER, limit, table, id }) => {
      if (table === undefined) return all.all(before, limit).flatMap((row) => changeOf(row) ?? []);
      const rows = id === undefined ? ofTable.all(before, table, limit) : ofOne.all(before, table, id, limit);
      return rows.flatMap((row) => changeOf(row) ?? []);
    },
    after: (number, limit) => after.all(number, limit).flatMap((row) => changeOf(row) ?? []),
    entries: (number, from = 0, limit = Number.MAX_SAFE_INTEGER) =>
      entries.all(number, from, limit).map(entryOf),
    ofThing: (table, id, limit) => ofThing.all(table, id, limit).map(entryOf),
    latest: () => (latest.get() as { number: number }).number,
    things: () => (things.get() as { things: number }).things,
    oldest: () => changeOf(oldest.get()),
    setUndone: (number, by) => {
      let [at, undoer] = [get(number), by];
      while (at !== undefined) {
        setUndone.run(undoer, at.number);
        const next = at.undoes === null ? undefined : get(at.undoes);
        undoer = undoer === null ? at.number : null;
        at = next;
      }
    },
    forgetTo: (number) => {
      forget.run(number);
      forgetEntries.run(number);
    },
  };
}

const textOf = (value: unknown) => (value === undefined ? null : JSON.stringify(value));

interface ChangeRow extends Omit<KeptChange, "who"> {
  readonly means: Author["means"];
  readonly device: string | null;
  readonly who: string;
}

function changeOf(row: unknown): KeptChange | undefined {
  if (row === undefined) return undefined;
  const { means, device, who, ...rest } = row as ChangeRow;
  return { ...rest, who: { means, device, name: who === "" ? null : who } };
}

function entryOf(row: unknown): ChangeEntry & { readonly number: number } {
  const { change, listed, id, place, before, after } = row as {
    change: number;
    listed: TableName;
    id: string;
    place: number | null;
    before: string | null;
    after: string | null;
  };
  return {
    number: change,
    table: listed,
    id,
    place,
    ...(before === null ? {} : { before: keptJson<unknown>(before) }),
    ...(after === null ? {} : { after: keptJson<unknown>(after) }),
  };
}
