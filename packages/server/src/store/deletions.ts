import type { Goal } from "@ferrule/core";
import type { Recorder } from "./history-recorder.ts";
import { keptJson } from "./kept-json.ts";
import type { ListName, PlacedLists } from "./lists.ts";
import type { Database } from "./sqlite.ts";

/** What one delete took, or what one purchase or sale did: all that an undo needs. Lists that hold nothing may be left out. */
export interface Deletion extends Partial<PlacedLists> {
  /** Only when the goal alone was deleted. */
  readonly goal?: Goal;
  /** Only when everything was cleared: the bench's goal, and whether it was the example. */
  readonly bench?: { readonly goal: Goal; readonly example: boolean };
  /** Ids of what was put there, to be taken away by an undo. */
  readonly added?: { readonly [Name in ListName]?: readonly string[] };
  /** What was changed in place: the fields as they were, `null` where there was none. */
  readonly changed?: { readonly [Name in ListName]?: readonly FormerFields[] };
}

/** Fields of one thing as they were, as a merge patch (RFC 7396). */
export interface FormerFields {
  readonly id: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

/** Deletes that can be undone, the last one on top. */
export interface DeletionsTable {
  push(deletion: Deletion): void;
  /** Puts one beneath all others, to be undone last. */
  pushUnder(deletion: Deletion): void;
  top(): Deletion | undefined;
  /** The number that the last one has in the history, if it has one. */
  topChange(): number | undefined;
  /** Drops what a change put there. */
  dropOf(change: number): void;
  dropTop(): void;
  count(): number;
}

export function deletionsTable(database: Database, recorder: Pick<Recorder, "onNumber">): DeletionsTable {
  const push = database.prepare("INSERT INTO deletions (body) VALUES (?) RETURNING number");
  const pushUnder = database.prepare(
    "INSERT INTO deletions (number, body) SELECT coalesce(min(number), 1) - 1, ? FROM deletions RETURNING number",
  );
  const setChange = database.prepare("UPDATE deletions SET change = ? WHERE number = ?");
  const top = database.prepare("SELECT body, change FROM deletions ORDER BY number DESC LIMIT 1");
  const dropTop = database.prepare(
    "DELETE FROM deletions WHERE number = (SELECT max(number) FROM deletions)",
  );
  const dropOf = database.prepare("DELETE FROM deletions WHERE change = ?");
  const count = database.prepare("SELECT count(*) AS count FROM deletions");
  const numbered = (row: unknown) =>
    recorder.onNumber((change) => void setChange.run(change, (row as { number: number }).number));
  return {
    push: (deletion) => numbered(push.get(JSON.stringify(deletion))),
    pushUnder: (deletion) => numbered(pushUnder.get(JSON.stringify(deletion))),
    topChange: () => (top.get() as { change: number | null } | undefined)?.change ?? undefined,
    dropOf: (change) => void dropOf.run(change),
    top: () => {
      const row = top.get() as { body: string } | undefined;
      return row === undefined ? undefined : keptJson<Deletion>(row.body);
    },
    dropTop: () => void dropTop.run(),
    count: () => (count.get() as { count: number }).count,
  };
}
