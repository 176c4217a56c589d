import type { Claim, Goal, Joint, Part } from "@ferrule/core";
import type { Placed } from "./document-table.ts";
import type { Database } from "./sqlite.ts";

/** What one delete took from the bench. */
export interface Deletion {
  readonly parts: readonly Placed<Part>[];
  readonly joints: readonly Placed<Joint>[];
  readonly claims: readonly Placed<Claim>[];
  /** Only when the goal alone was deleted. */
  readonly goal?: Goal;
  /** Only when the whole bench was cleared: its goal, and whether it was the example. */
  readonly bench?: { readonly goal: Goal; readonly example: boolean };
}

/** Deletes that can be undone, the last one on top. */
export interface DeletionsTable {
  push(deletion: Deletion): void;
  /** Puts one beneath all others, to be undone last. */
  pushUnder(deletion: Deletion): void;
  top(): Deletion | undefined;
  dropTop(): void;
  count(): number;
}

export function deletionsTable(database: Database): DeletionsTable {
  const push = database.prepare("INSERT INTO deletions (body) VALUES (?)");
  const pushUnder = database.prepare(
    "INSERT INTO deletions (number, body) SELECT coalesce(min(number), 1) - 1, ? FROM deletions",
  );
  const top = database.prepare("SELECT body FROM deletions ORDER BY number DESC LIMIT 1");
  const dropTop = database.prepare(
    "DELETE FROM deletions WHERE number = (SELECT max(number) FROM deletions)",
  );
  const count = database.prepare("SELECT count(*) AS count FROM deletions");
  return {
    push: (deletion) => void push.run(JSON.stringify(deletion)),
    pushUnder: (deletion) => void pushUnder.run(JSON.stringify(deletion)),
    top: () => {
      const row = top.get() as { body: string } | undefined;
      return row === undefined ? undefined : (JSON.parse(row.body) as Deletion);
    },
    dropTop: () => void dropTop.run(),
    count: () => (count.get() as { count: number }).count,
  };
}
