import { type Joint, mergePatch, type Part } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { Deletion } from "../store/deletions.ts";
import type { DocumentTable, Placed } from "../store/document-table.ts";
import { type Listed, type ListName, type Lists, listOf, mapLists, tableOf } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import type { Example } from "./bench-contents.ts";
import { type ChangedEntry, correctedSplits, fieldsToRestore } from "./changed-fields.ts";
import { clearBench } from "./clear-bench.ts";
import { isUntouched } from "./is-untouched.ts";
import { namedParts } from "./named-parts.ts";
import { newId } from "./new-id.ts";
import { jointRefusals } from "./shelves.ts";

export interface Restored {
  /** What is there again, or is again as it was. */
  readonly restored: Lists;
  /** What a purchase or a sale had put there, and is gone again. */
  readonly removed: Lists;
  readonly undo: number;
}

/**
 * Takes back what was done last: a delete, a purchase or a sale. What a delete took comes back where it stood. A part whose id
 * has been given to another in the meantime comes back under a new one, and a joint whose place has been taken stays undone; the
 * reply says what came back. A line of the books that has been corrected since keeps its correction. Where that is a whole bench, the present one goes to the bottom of what can be undone, unless it
 * is untouched: nothing of the user's is lost.
 */
export function undoDelete(tables: Tables, example: Example): Outcome<Restored> {
  return tables.together(
    () => {
      const deletion = tables.deletions.top();
      if (deletion === undefined) return problem("nothing-to-undo");
      const change = tables.deletions.topChange();
      if (change !== undefined) tables.recorder.undoes(change);
      tables.deletions.dropTop();
      if (deletion.bench) makeRoom(tables, deletion.bench, example);
      if (deletion.goal) tables.goals.write(deletion.goal);
      const restorable = withoutCorrected(tables, deletion);
      const removed = removeAdded(tables, restorable);
      const back = putAllBack(tables, deletion);
      const changed = mapLists((name) => changeBack(tables, name, restorable));
      const restored = mapLists((name) => [...listOf(back, name), ...listOf(changed, name)]);
      return done({ restored, removed, undo: tables.deletions.count() });
    },
    { what: "delete-undone" },
  );
}

/** The same without what the user has corrected in the books since: that is left as it is. */
function withoutCorrected(tables: Tables, deletion: Deletion): Deletion {
  const entries: readonly ChangedEntry[] = deletion.changed?.entries ?? [];
  if (entries.length === 0) return deletion;
  const staying = correctedSplits(tables, entries);
  const changes = entries.map((change) => ({ id: change.id, fields: fieldsToRestore(tables, change) }));
  return {
    ...deletion,
    added: {
      ...deletion.added,
      entries: (deletion.added?.entries ?? []).filter((id) => !staying.has(id)),
    },
    changed: {
      ...deletion.changed,
      entries: changes.filter(({ fields }) => Object.keys(fields).length > 0),
    },
  };
}

/** A joint made since with a part that goes cannot stay. */
function removeAdded(tables: Tables, { added = {} }: Deletion): Lists {
  const going = new Set(added.parts);
  const joints = tables.joints.all().filter(({ value }) => value.parts.some((id) => going.has(id)));
  const ids = {
    ...added,
    joints: [...(added.joints ?? []), ...joints.map(({ value }) => value.id as string)],
  };
  return mapLists((name) => (ids[name] ?? []).flatMap((id) => takeAway(tableOf(tables, name), id)));
}

function takeAway<T extends { id?: string }>(table: DocumentTable<T>, id: string): T[] {
  const placed = table.get(id);
  if (placed === undefined) return [];
  table.remove(id);
  return [placed.value];
}

function changeBack<Name extends ListName>(
  tables: Tables,
  name: Name,
  { changed = {} }: Deletion,
): Listed[Name][] {
  const table = tableOf(tables, name);
  return (changed[name] ?? []).flatMap(({ id, fields }) => {
    const placed = table.get(id);
    if (placed === undefined) return [];
    const value = mergePatch(placed.value, fields) as Listed[Name];
    table.replace(id, value);
    return [value];
  });
}

function putAllBack(tables: Tables, deletion: Deletion): Lists {
  const before = deletion.parts ?? [];
  const parts = before.map((placed) => putBack(tables.parts, placed, namedParts(tables)));
  const renamed = new Map(before.map(({ value }, at) => [value.id, parts[at]?.id ?? value.id]));
  const joints = (deletion.joints ?? [])
    .map((placed) => ({ ...placed, value: withNames(placed.value, renamed) }))
    .filter(({ value }) => jointRefusals(tables, { ...value, id: undefined }).length === 0)
    .map((placed) => putBack(tables.joints, placed));
  const rest = <T extends { id?: string }>(table: DocumentTable<T>, placed: readonly Placed<T>[] = []) =>
    placed.map((one) => putBack(table, one));
  return {
    parts,
    joints,
    claims: rest(tables.claims, deletion.claims),
    models: rest(tables.models, deletion.models),
    evidence: rest(tables.evidence, deletion.evidence),
    sightings: rest(tables.sightings, deletion.sightings),
    entries: rest(tables.entries, deletion.entries),
    measurements: rest(tables.measurements, deletion.measurements),
    inspections: rest(tables.inspections, deletion.inspections),
    clearances: rest(tables.clearances, deletion.clearances),
  };
}

/** The older deletes still to be undone belong to the bench that comes back, so the present one goes beneath them. */
function makeRoom(tables: Tables, bench: NonNullable<Deletion["bench"]>, example: Example): void {
  const cleared = clearBench(tables);
  if (!isUntouched(cleared, example)) tables.deletions.pushUnder(cleared);
  tables.goals.write(bench.goal);
  tables.settings.markExample(bench.example);
}

function putBack<T extends { id?: string }>(
  table: DocumentTable<T>,
  { place, value }: Placed<T>,
  named?: ReadonlySet<string>,
): T {
  const stem = value.id as string;
  const isTaken = (id: string) => table.get(id) !== undefined;
  const isNamed = (id: string) => isTaken(id) || named?.has(id) === true;
  const back = {
    ...value,
    id: isTaken(stem) ? newId(stem, isNamed, 2) : stem,
  };
  table.insert(back, place);
  return back;
}

function withNames(joint: Joint, renamed: ReadonlyMap<Part["id"], Part["id"]>): Joint {
  const [a, b] = joint.parts;
  return { ...joint, parts: [renamed.get(a) ?? a, renamed.get(b) ?? b] };
}
