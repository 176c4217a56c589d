import type { Claim, Goal, Joint, Part } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { DocumentTable } from "../store/document-table.ts";
import type { Tables } from "../store/tables.ts";
import { type BenchContents, emptyContents } from "./bench-contents.ts";
import { clearBench } from "./clear-bench.ts";
import { isUntouched } from "./is-untouched.ts";
import { newId } from "./new-id.ts";
import type { Removed, Shelf } from "./shelf.ts";
import { claimsShelf, jointsShelf, partsShelf } from "./shelves.ts";
import { type Restored, undoDelete } from "./undo.ts";

/** Everything on the bench, whether it is the example, and how many deletes can be undone. */
export interface BenchView extends BenchContents {
  readonly example: boolean;
  readonly undo: number;
}

/** The stored bench. Everything that changes it is on disk when it returns. */
export interface Bench {
  readonly parts: Shelf<Part>;
  readonly joints: Shelf<Joint>;
  readonly claims: Shelf<Claim>;
  goal(): Goal;
  setGoal(goal: Goal): Goal;
  /** Wants nothing in particular any more; undo brings the goal back. */
  deleteGoal(): Removed;
  view(): BenchView;
  /** Differs after every change of what is on the bench. */
  stamp(): string;
  undo(): Outcome<Restored>;
  /** Leaves the example for an empty bench of one's own. */
  startOwn(): Outcome<BenchView>;
  /** Puts the example on the bench; what was on it can be brought back by undo. */
  loadExample(confirmed: boolean): Outcome<BenchView>;
  /** Adds things that have been checked, or puts them in the place of those with the same id. */
  takeIn(contents: Partial<BenchContents>): void;
}

/** The bench kept in these tables. On the very first start the example is put on it, where there is one. */
export function openBench(tables: Tables, example: BenchContents = emptyContents): Bench {
  if (tables.settings.isExample() === undefined) tables.together(() => putExample(tables, example));
  return {
    parts: partsShelf(tables),
    joints: jointsShelf(tables),
    claims: claimsShelf(tables),
    goal: () => tables.goals.read(),
    setGoal: (goal) => {
      tables.goals.write(goal);
      return goal;
    },
    deleteGoal: () => tables.together(() => deleteGoal(tables)),
    view: () => viewOf(tables),
    stamp: () => tables.stamp(),
    undo: () => undoDelete(tables, example),
    startOwn: () => tables.together(() => startOwn(tables)),
    loadExample: (confirmed) => tables.together(() => loadExample(tables, example, confirmed)),
    takeIn: (contents) => tables.together(() => takeIn(tables, contents)),
  };
}

function viewOf(tables: Tables): BenchView {
  return {
    example: tables.settings.isExample() ?? false,
    parts: tables.parts.all().map(({ value }) => value),
    joints: tables.joints.all().map(({ value }) => value),
    claims: tables.claims.all().map(({ value }) => value),
    goal: tables.goals.read(),
    undo: tables.deletions.count(),
  };
}

function deleteGoal(tables: Tables): Removed {
  const nothing = { parts: [], joints: [], claims: [] };
  tables.deletions.push({ ...nothing, goal: tables.goals.read() });
  tables.goals.write({});
  return { deleted: nothing, undo: tables.deletions.count() };
}

function startOwn(tables: Tables): Outcome<BenchView> {
  if (!tables.settings.isExample()) return problem("not-the-example");
  tables.deletions.push(clearBench(tables));
  tables.settings.markExample(false);
  return done(viewOf(tables));
}

function loadExample(tables: Tables, example: BenchContents, confirmed: boolean): Outcome<BenchView> {
  const hasThings = tables.parts.all().length > 0 || tables.claims.all().length > 0;
  if (hasThings && !confirmed) return problem("bench-not-empty");
  const taken = clearBench(tables);
  if (!isUntouched(taken, example)) tables.deletions.push(taken);
  putExample(tables, example);
  return done(viewOf(tables));
}

function putExample(tables: Tables, example: BenchContents): void {
  takeIn(tables, example);
  tables.settings.markExample(example.parts.length > 0);
}

function takeIn(
  tables: Tables,
  { parts = [], joints = [], claims = [], goal }: Partial<BenchContents>,
): void {
  for (const part of parts) upsert(tables.parts, part);
  for (const joint of joints) upsert(tables.joints, named("joint", joint, tables.joints));
  for (const claim of claims) upsert(tables.claims, named("claim", claim, tables.claims));
  if (goal) tables.goals.write(goal);
}

function upsert<T extends { id?: string }>(table: DocumentTable<T>, value: T & { id: string }): void {
  if (table.get(value.id) === undefined) table.insert(value);
  else table.replace(value.id, value);
}

function named<T extends { id?: string }>(
  stem: string,
  value: T,
  table: DocumentTable<T>,
): T & { id: string } {
  return {
    ...value,
    id: value.id ?? newId(stem, (id) => table.get(id) !== undefined),
  };
}
