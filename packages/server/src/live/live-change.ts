import { changeWords } from "../history/change-words.ts";
import type { Author, HistoryTable, KeptChange } from "../store/history.ts";

/** A change as open pages are told of it: what to read again, and whose it was. */
export interface LiveChange {
  readonly number: number;
  readonly at: string;
  readonly who: Author;
  readonly what: string;
  readonly words: string;
  readonly things: number;
  /** By table. */
  readonly ids: Readonly<Record<string, readonly string[]>>;
  /** Whether `ids` names all that was touched. */
  readonly isWhole: boolean;
  readonly undoes: number | null;
}

const idsMost = 200;

export function liveChange(history: HistoryTable, change: KeptChange): LiveChange {
  const { number, at, who, what, things, undoes } = change;
  const entries = history.entries(number, 0, idsMost);
  const ids: Record<string, string[]> = {};
  for (const { table, id } of entries) {
    ids[table] ??= [];
    ids[table].push(id);
  }
  const words = changeWords(change, entries.slice(0, 5));
  return { number, at, who, what, words, things, ids, isWhole: things <= idsMost, undoes };
}
