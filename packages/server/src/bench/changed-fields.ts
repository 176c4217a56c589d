import { isDeepStrictEqual } from "node:util";
import type { Entry } from "@ferrule/core";
import type { FormerFields } from "../store/deletions.ts";
import type { Tables } from "../store/tables.ts";

/** Fields of a line of the books as they were, with what was written in their place, so that later corrections can be told. */
export interface ChangedEntry extends FormerFields {
  readonly wrote?: Readonly<Record<string, unknown>>;
  /** The line that took a share of this one, as it was written. */
  readonly split?: Entry;
}

/**
 * What an undo changes back of a line: the fields that still hold what was written. Money that was divided goes together again
 * only where nobody has corrected either of the two lines since; else both stay, and not a minor unit is lost.
 */
export function fieldsToRestore(tables: Tables, change: ChangedEntry): FormerFields["fields"] {
  const { id, fields, wrote, split } = change;
  if (wrote === undefined) return fields;
  if (split) return isUncorrected(tables, change) ? fields : {};
  const now = tables.entries.get(id)?.value as Record<string, unknown> | undefined;
  return Object.fromEntries(Object.entries(fields).filter(([name]) => isSame(now?.[name], wrote[name])));
}

/** The lines that took a share of another and that an undo leaves, since one of the two has been corrected by hand. */
export function correctedSplits(tables: Tables, changes: readonly ChangedEntry[]): ReadonlySet<string> {
  return new Set(
    changes.flatMap((change) => (change.split && !isUncorrected(tables, change) ? change.split.id : [])),
  );
}

function isUncorrected(tables: Tables, { id, fields, wrote = {}, split }: ChangedEntry): boolean {
  const now = tables.entries.get(id)?.value as Record<string, unknown> | undefined;
  const stays = Object.keys(fields).every((name) => isSame(now?.[name], wrote[name]));
  return stays && (split === undefined || isDeepStrictEqual(tables.entries.get(split.id)?.value, split));
}

const isSame = (one: unknown, other: unknown) => isDeepStrictEqual(one ?? null, other ?? null);
