import { isDeepStrictEqual } from "node:util";
import { inTransaction } from "./database.ts";
import type { Author, ChangeCode, ChangeEntry, HistoryTable } from "./history.ts";
import { forgetOld } from "./history-kept.ts";
import type { Database } from "./sqlite.ts";

/** What one write did to one thing; `undefined` where it was not, or is no more, there. */
export interface Noted {
  readonly table: ChangeEntry["table"];
  readonly id: string;
  readonly before?: { readonly place: number | null; readonly value: unknown } | undefined;
  readonly after?: { readonly place: number | null; readonly value: unknown } | undefined;
}

/** How the work is called in the history. */
export interface Recording {
  readonly what?: ChangeCode;
  /** Instead of whoever asks. */
  readonly by?: Author | undefined;
  /** For what nobody did, such as the first start. */
  readonly isUnrecorded?: boolean;
}

/** Writes down what is changed, as part of the change. */
export interface Recorder {
  /**
   * Runs work on the tables whole or not at all, as one change of the history; within other such work it is part of that.
   * Once it returns, it is on disk.
   */
  together<T>(work: () => T, recording?: Recording): T;
  note(noted: Noted): void;
  /** The change under way takes another back. */
  undoes(number: number): void;
  /** Called with the number of the change under way once it has one, before it is on disk. */
  onNumber(then: (number: number) => void): void;
  /** Called after a change is on disk. */
  onChange(then: () => void): void;
}

interface OpenChange {
  what: ChangeCode | undefined;
  readonly by: Author | undefined;
  readonly isUnrecorded: boolean;
  readonly noted: Map<string, Noted>;
  readonly onNumber: ((number: number) => void)[];
  undoes: number | null;
}

/** `author` is whoever asks at the moment. */
export function openRecorder(
  database: Database,
  history: HistoryTable,
  author: () => Author,
  now: () => number,
): Recorder {
  let open: OpenChange | undefined;
  const listeners: (() => void)[] = [];
  const write = (change: OpenChange) => {
    const entries = entriesOf(change);
    if (change.isUnrecorded || entries.length === 0) return false;
    const { what = "changed", by = author(), undoes } = change;
    const at = now();
    const number = history.add({ at: new Date(at).toISOString(), who: by, what, undoes }, entries);
    for (const then of change.onNumber) then(number);
    if (undoes !== null) history.setUndone(undoes, number);
    forgetOld(history, number, entries.length, at);
    return true;
  };
  const alone = <T>(change: OpenChange, work: () => T): T => {
    const both = () => ({ result: work(), isWritten: write(change) });
    open = change;
    try {
      // Somebody may have begun a transaction of their own, and ends it.
      const { result, isWritten } = database.isTransaction ? both() : inTransaction(database, both);
      open = undefined;
      if (isWritten) for (const listener of listeners) listener();
      return result;
    } finally {
      open = undefined;
    }
  };
  return {
    together: (work, { what, by, isUnrecorded = false } = {}) => {
      if (open === undefined)
        return alone({ what, by, isUnrecorded, noted: new Map(), onNumber: [], undoes: null }, work);
      open.what ??= what;
      return work();
    },
    note: (noted) => {
      if (open === undefined) throw new Error(`a change of ${noted.table} outside of any transaction`);
      const key = JSON.stringify([noted.table, noted.id]);
      const first = open.noted.get(key);
      open.noted.set(key, first ? { ...noted, before: first.before } : noted);
    },
    undoes: (number) => {
      if (open) open.undoes = number;
    },
    onNumber: (then) => void open?.onNumber.push(then),
    onChange: (then) => void listeners.push(then),
  };
}

/** What a change comes to in the end: nothing for what is again as it was. */
function entriesOf({ noted }: OpenChange): ChangeEntry[] {
  return [...noted.values()]
    .filter(({ before, after }) => !isSame(before, after))
    .map(({ table, id, before, after }) => ({
      table,
      id,
      place: (before ?? after)?.place ?? null,
      ...(before && { before: before.value }),
      ...(after && { after: after.value }),
    }));
}

/** Fields that hold nothing are not written. */
function isSame(before: Noted["before"], after: Noted["after"]): boolean {
  if (before === undefined || after === undefined) return before === after;
  return isDeepStrictEqual(JSON.parse(JSON.stringify(before)), JSON.parse(JSON.stringify(after)));
}
