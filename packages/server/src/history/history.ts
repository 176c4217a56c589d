import { done, type Outcome } from "../errors.ts";
import type { ChangeEntry, ChangeQuery, KeptChange } from "../store/history.ts";
import type { Tables } from "../store/tables.ts";
import type { Costs } from "../trade/costs.ts";
import { versionTag } from "../wire/version-tag.ts";
import { changeWords } from "./change-words.ts";
import { noSuchChange } from "./no-such-change.ts";
import { undoChange } from "./undo-change.ts";

/** A change as it is told, with some of its things. */
export interface ToldChange extends KeptChange {
  readonly words: string;
  readonly entries: readonly ToldEntry[];
}

interface ToldEntry {
  readonly table: ChangeEntry["table"];
  readonly id: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** Who changed what when, and the undoing of any one change. */
export interface History {
  /** The newest first; `next` is what the next page comes before. */
  list(query: ChangeQuery): { readonly changes: ToldChange[]; readonly next: number | null };
  get(number: number, from: number, limit: number): Outcome<ToldChange & { readonly next: number | null }>;
  undo(number: number): Outcome<{ readonly change: ToldChange; readonly undo: number }>;
  /** Runs work whole or not at all, so that nothing comes between what it looks at and what it changes. */
  asOne<T>(work: () => T): T;
  /** A thing as it was in the version of this tag, where that is known. */
  version(table: string, id: string, tag: string): unknown;
}

/** Things of a change that are told in a list. */
const entriesInList = 5;
const versionsMost = 100;

export function openHistory(tables: Tables, costs: Costs): History {
  const { history, deletions } = tables;
  const told = (change: KeptChange, from = 0, limit = entriesInList): ToldChange => {
    const entries = history.entries(change.number, from, limit);
    const first = from === 0 ? entries : history.entries(change.number, 0, entriesInList);
    const words = changeWords(change, first.slice(0, entriesInList));
    return { ...change, words, entries: entries.map(toldEntry) };
  };
  return {
    list: (query) => {
      const changes = history.list({ ...query, limit: query.limit + 1 });
      const page = changes.slice(0, query.limit);
      const next = changes.length > page.length ? (page.at(-1)?.number ?? null) : null;
      return { changes: page.map((change) => told(change)), next };
    },
    get: (number, from, limit) => {
      const change = history.get(number);
      if (change === undefined) return { ok: false, problem: noSuchChange(number) };
      const next = from + limit < change.things ? from + limit : null;
      return done({ ...told(change, from, limit), next });
    },
    undo: (number) => {
      const undone = undoChange(tables, costs, number);
      if (!undone.ok) return undone;
      const change = history.get(undone.value) as KeptChange;
      return done({ change: told(change), undo: deletions.count() });
    },
    asOne: (work) => tables.together(work),
    version: (table, id, tag) => {
      for (const { after, before } of history.ofThing(table, id, versionsMost)) {
        if (after !== undefined && versionTag(after) === tag) return after;
        if (before !== undefined && versionTag(before) === tag) return before;
      }
      return undefined;
    },
  };
}

function toldEntry({ table, id, before, after }: ChangeEntry): ToldEntry {
  return { table, id, before: before ?? null, after: after ?? null };
}
