import type {
  CatalogueModel,
  Claim,
  Entry,
  Evidence,
  Goal,
  Joint,
  Measurement,
  Part,
  Sighting,
} from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import { type Lists, listNames } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import { type BenchContents, type Example, emptyContents } from "./bench-contents.ts";
import { type BenchText, benchText } from "./bench-text.ts";
import { clearBench } from "./clear-bench.ts";
import { isUntouched } from "./is-untouched.ts";
import {
  entriesShelf,
  evidenceShelf,
  type ListShelf,
  measurementsShelf,
  modelsShelf,
  sightingsShelf,
} from "./list-shelves.ts";
import { namedParts } from "./named-parts.ts";
import type { Rates } from "./rates.ts";
import { type Removed, type Shelf, takeIn as takeInto } from "./shelf.ts";
import { claimsShelf, jointsShelf, partsShelf } from "./shelves.ts";
import { type Restored, undoDelete } from "./undo.ts";

/** Everything on the bench, whether it is the example, and how many deletes can be undone. */
export interface BenchView extends BenchContents {
  readonly example: boolean;
  readonly undo: number;
}

/** The stored bench and the lists about it. Everything that changes them is on disk when it returns. */
export interface Bench {
  readonly parts: Shelf<Part>;
  readonly joints: Shelf<Joint>;
  readonly claims: Shelf<Claim>;
  readonly models: ListShelf<CatalogueModel>;
  readonly evidence: ListShelf<Evidence>;
  readonly sightings: ListShelf<Sighting>;
  readonly entries: ListShelf<Entry>;
  readonly measurements: ListShelf<Measurement>;
  goal(): Goal;
  setGoal(goal: Goal): Goal;
  /** Wants nothing in particular any more; undo brings the goal back. */
  deleteGoal(): Removed;
  view(): BenchView;
  /** The same as it is sent. */
  text(): BenchText;
  /** Differs after every change of parts, joints or claims. */
  stamp(): string;
  undo(): Outcome<Restored>;
  /** Leaves the example for an empty bench of one's own. */
  startOwn(): Outcome<BenchView>;
  /** Puts the example on the bench; what was on it can be brought back by undo. */
  loadExample(confirmed: boolean): Outcome<BenchView>;
  /** Adds things that have been checked, or puts them in the place of those with the same id. */
  takeIn(contents: Partial<BenchContents>): void;
}

/**
 * The bench kept in these tables. On the very first start the example is put on it, where there is one; it may be read when
 * it is needed. `rates` are those of its books.
 */
export function openBench(
  tables: Tables,
  rates: () => Rates,
  given: Example | (() => Example) = emptyContents,
): Bench {
  const example = typeof given === "function" ? once(given) : () => given;
  if (tables.settings.isExample() === undefined)
    tables.together(() => putExample(tables, example()), { isUnrecorded: true });
  return {
    parts: partsShelf(tables),
    joints: jointsShelf(tables),
    claims: claimsShelf(tables),
    models: modelsShelf(tables),
    evidence: evidenceShelf(tables),
    sightings: sightingsShelf(tables),
    entries: entriesShelf(tables, rates),
    measurements: measurementsShelf(tables),
    goal: () => tables.goals.read(),
    setGoal: (goal) => {
      tables.together(() => tables.goals.write(goal), { what: "goal-changed" });
      return goal;
    },
    deleteGoal: () => tables.together(() => deleteGoal(tables), { what: "goal-deleted" }),
    view: () => viewOf(tables),
    text: benchText(tables),
    stamp: () => tables.stampOf(tables.parts, tables.joints, tables.claims),
    undo: () => undoDelete(tables, example()),
    startOwn: () => tables.together(() => startOwn(tables), { what: "own-bench-started" }),
    loadExample: (confirmed) =>
      tables.together(() => loadExample(tables, example(), confirmed), { what: "example-loaded" }),
    takeIn: (contents) => tables.together(() => takeIn(tables, contents), { what: "taken-in" }),
  };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
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

function loadExample(tables: Tables, example: Example, confirmed: boolean): Outcome<BenchView> {
  const hasThings = listNames.some((name) => tables[name].all().length > 0);
  if (hasThings && !confirmed) return problem("bench-not-empty");
  const taken = clearBench(tables);
  if (!isUntouched(taken, example)) tables.deletions.push(taken);
  putExample(tables, example);
  return done(viewOf(tables));
}

function putExample(tables: Tables, example: Example): void {
  takeIn(tables, example);
  tables.settings.markExample(example.parts.length > 0);
}

function takeIn(tables: Tables, contents: Partial<Lists & { readonly goal: Goal }>): void {
  const named = () => namedParts(tables);
  takeInto({ table: tables.parts, stem: ({ kind }) => kind, named }, contents.parts ?? []);
  takeInto({ table: tables.joints, stem: () => "joint" }, contents.joints ?? []);
  takeInto({ table: tables.claims, stem: () => "claim" }, contents.claims ?? []);
  takeInto({ table: tables.models, stem: () => "model" }, contents.models ?? []);
  takeInto({ table: tables.evidence, stem: () => "price" }, contents.evidence ?? []);
  takeInto({ table: tables.sightings, stem: () => "sighting" }, contents.sightings ?? []);
  takeInto({ table: tables.entries, stem: () => "entry" }, contents.entries ?? []);
  takeInto({ table: tables.measurements, stem: () => "measurement" }, contents.measurements ?? []);
  takeInto({ table: tables.inspections, stem: () => "inspection" }, contents.inspections ?? []);
  takeInto({ table: tables.clearances, stem: () => "clearance" }, contents.clearances ?? []);
  if (contents.goal) tables.goals.write(contents.goal);
}
