import type { Joint, Part } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { Deletion } from "../store/deletions.ts";
import type { DocumentTable, Placed } from "../store/document-table.ts";
import type { Tables } from "../store/tables.ts";
import type { BenchContents } from "./bench-contents.ts";
import { clearBench } from "./clear-bench.ts";
import { isUntouched } from "./is-untouched.ts";
import { newId } from "./new-id.ts";
import { type Removed, valuesOf } from "./shelf.ts";
import { jointRefusals } from "./shelves.ts";

export interface Restored {
  readonly restored: Removed["deleted"];
  readonly undo: number;
}

/**
 * Brings back what the last delete took, where it stood. A part whose id has been given to another in the meantime comes
 * back under a new one, and a joint whose place has been taken stays undone; the reply says what came back. Where that is a
 * whole bench, the present one goes to the bottom of what can be undone, unless it is untouched: nothing of the user's is lost.
 */
export function undoDelete(tables: Tables, example: BenchContents): Outcome<Restored> {
  return tables.together(() => {
    const deletion = tables.deletions.top();
    if (deletion === undefined) return problem("nothing-to-undo");
    tables.deletions.dropTop();
    if (deletion.bench) makeRoom(tables, deletion.bench, example);
    if (deletion.goal) tables.goals.write(deletion.goal);
    return done({
      restored: valuesOf(restore(tables, deletion)),
      undo: tables.deletions.count(),
    });
  });
}

function restore(tables: Tables, deletion: Deletion): Deletion {
  const parts = deletion.parts.map((placed) => putBack(tables.parts, placed));
  const renamed = new Map(deletion.parts.map(({ value }, at) => [value.id, parts[at]?.value.id ?? value.id]));
  const joints = deletion.joints
    .map((placed) => ({ ...placed, value: withNames(placed.value, renamed) }))
    .filter(({ value }) => jointRefusals(tables, { ...value, id: undefined }).length === 0)
    .map((placed) => putBack(tables.joints, placed));
  return {
    parts,
    joints,
    claims: deletion.claims.map((placed) => putBack(tables.claims, placed)),
  };
}

/** The older deletes still to be undone belong to the bench that comes back, so the present one goes beneath them. */
function makeRoom(tables: Tables, bench: NonNullable<Deletion["bench"]>, example: BenchContents): void {
  const cleared = clearBench(tables);
  if (!isUntouched(cleared, example)) tables.deletions.pushUnder(cleared);
  tables.goals.write(bench.goal);
  tables.settings.markExample(bench.example);
}

function putBack<T extends { id?: string }>(table: DocumentTable<T>, { place, value }: Placed<T>): Placed<T> {
  const stem = value.id as string;
  const isTaken = (id: string) => table.get(id) !== undefined;
  const named = {
    ...value,
    id: isTaken(stem) ? newId(stem, isTaken, 2) : stem,
  };
  table.insert(named, place);
  return { place, value: named };
}

function withNames(joint: Joint, renamed: ReadonlyMap<Part["id"], Part["id"]>): Joint {
  const [a, b] = joint.parts;
  return { ...joint, parts: [renamed.get(a) ?? a, renamed.get(b) ?? b] };
}
