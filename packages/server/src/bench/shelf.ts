import type { Claim, Joint, Part, Refusal } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { Deletion } from "../store/deletions.ts";
import type { DocumentTable, Placed } from "../store/document-table.ts";
import type { ThingNoun } from "../store/history.ts";
import { listNames } from "../store/lists.ts";
import type { Tables } from "../store/tables.ts";
import { newId } from "./new-id.ts";

/** What a delete took away, and how many deletes can be undone now. */
export interface Removed<Deleted = BenchThings> {
  readonly deleted: Deleted;
  readonly undo: number;
}

/** A part goes with its joints, so deletes on the bench are told as what went of each. */
export interface BenchThings {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly claims: readonly Claim[];
}

/** One kind of thing on the bench, or in a list about it. `Deleted` is how a delete is told. */
export interface Shelf<T, Deleted = BenchThings> {
  all(): T[];
  get(id: string): Outcome<T>;
  /** Adds a thing; one without an id is given one. */
  add(value: T): Outcome<T>;
  /** Puts a thing in the place of the one with this id, and keeps the id. */
  put(id: string, value: T): Outcome<T>;
  /** The same for what is made of the thing that is there, between which and the change nothing comes. */
  change(id: string, next: (present: T) => Outcome<T>): Outcome<T>;
  /** `hold` may refuse, by throwing, what is there. */
  remove(id: string, hold?: (present: T) => void): Outcome<Removed<Deleted>>;
  /** Why a thing that its schema takes cannot stand beside what is here, its own former self left out. */
  refusals(value: T & { id: string }): Refusal[];
  /** Adds things that have been checked, or puts them in the place of those with the same id. */
  takeIn(values: readonly T[]): void;
}

export interface ShelfSpec<T extends { id?: string }, Deleted> {
  /** What one thing is called in a message, and where it is. */
  readonly noun: ThingNoun;
  readonly where: string;
  readonly table: DocumentTable<T>;
  stem(value: T): string;
  /** Ids that something elsewhere names, so that no new thing is given one of them. */
  named?(): ReadonlySet<string>;
  refusals(value: T & { id: string }): Refusal[];
  deletion(placed: Placed<T>): Deletion;
  tell(deletion: Deletion): Deleted;
}

export function openShelf<T extends { id?: string }, Deleted>(
  tables: Tables,
  spec: ShelfSpec<T, Deleted>,
): Shelf<T, Deleted> {
  const { table } = spec;
  const change: Shelf<T>["change"] = (id, next) =>
    tables.together(
      () =>
        found(spec, id, ({ value }) => {
          const made = next(value);
          return made.ok ? put(spec, id, made.value) : made;
        }),
      { what: `${spec.noun}-changed` },
    );
  return {
    all: () => table.all().map(({ value }) => value),
    get: (id) => found(spec, id, ({ value }) => done(value)),
    add: (value) => tables.together(() => add(spec, value), { what: `${spec.noun}-added` }),
    put: (id, value) => change(id, () => done(value)),
    change,
    remove: (id, hold = () => {}) =>
      tables.together(
        () =>
          found(spec, id, (placed) => {
            hold(placed.value);
            return done(removeFrom(tables, spec, placed));
          }),
        { what: `${spec.noun}-deleted` },
      ),
    refusals: (value) => spec.refusals(value),
    takeIn: (values) => tables.together(() => takeIn(spec, values), { what: "taken-in" }),
  };
}

function found<T extends { id?: string }, R>(
  spec: ShelfSpec<T, unknown>,
  id: string,
  then: (placed: Placed<T>) => Outcome<R>,
): Outcome<R> {
  const placed = spec.table.get(id);
  return placed === undefined
    ? problem("not-found", `There is no ${spec.noun} "${id}" ${spec.where}`)
    : then(placed);
}

function add<T extends { id?: string }>(spec: ShelfSpec<T, unknown>, value: T): Outcome<T> {
  const isTaken = (id: string) => spec.table.get(id) !== undefined;
  if (value.id !== undefined && isTaken(value.id)) {
    const refusal = {
      field: "id",
      got: JSON.stringify(value.id),
      expected: `an id that no other ${spec.noun} ${spec.where} has`,
    };
    return problem("id-taken", `There is a ${spec.noun} "${value.id}" ${spec.where} already`, [refusal]);
  }
  const named = { ...value, id: value.id ?? freeId(spec, value) };
  return settle(spec, named, () => spec.table.insert(named));
}

type IdSpec<T extends { id?: string }> = Pick<ShelfSpec<T, unknown>, "table" | "stem" | "named">;

/** An id that nothing has and that nothing elsewhere names. */
function freeId<T extends { id?: string }>(spec: IdSpec<T>, value: T): string {
  return idMaker(spec)(value);
}

/** Gives one id after the other; where many things come without one, the numbers that are taken are passed once. */
function idMaker<T extends { id?: string }>({ table, stem, named }: IdSpec<T>, taken = table.ids()) {
  const elsewhere = named?.();
  const next = new Map<string, number>();
  return (value: T): string => {
    const word = stem(value);
    const id = newId(word, (one) => taken.has(one) || elsewhere?.has(one) === true, next.get(word));
    next.set(word, Number(id.slice(word.length + 1)) + 1);
    return id;
  };
}

function put<T extends { id?: string }>(spec: ShelfSpec<T, unknown>, id: string, value: T): Outcome<T> {
  if (value.id !== undefined && value.id !== id) {
    const refusal = {
      field: "id",
      got: JSON.stringify(value.id),
      expected: `${JSON.stringify(id)}, or nothing; an id does not change`,
    };
    return problem("bad-request", `The ${spec.noun} "${id}" was not changed`, [refusal]);
  }
  const named = { ...value, id };
  return settle(spec, named, () => spec.table.replace(id, named));
}

function settle<T extends { id?: string }>(
  spec: ShelfSpec<T, unknown>,
  named: T & { id: string },
  write: () => void,
): Outcome<T> {
  const refusals = spec.refusals(named);
  if (refusals.length > 0)
    return problem("bad-request", `The ${spec.noun} "${named.id}" was not taken`, refusals);
  write();
  return done<T>(named);
}

/** Puts checked things into a table, those without an id under a new one. */
export function takeIn<T extends { id?: string }>(spec: IdSpec<T>, values: readonly T[]): void {
  const { table } = spec;
  const taken = table.ids();
  const idFor = idMaker(spec, taken);
  for (const value of values) {
    const id = value.id ?? idFor(value);
    if (taken.has(id)) table.replace(id, value);
    else table.insert({ ...value, id });
    taken.add(id);
  }
}

function removeFrom<T extends { id?: string }, Deleted>(
  tables: Tables,
  spec: ShelfSpec<T, Deleted>,
  placed: Placed<T>,
): Removed<Deleted> {
  const deletion = spec.deletion(placed);
  for (const name of listNames)
    for (const { value } of deletion[name] ?? []) tables[name].remove(value.id as string);
  tables.deletions.push(deletion);
  return { deleted: spec.tell(deletion), undo: tables.deletions.count() };
}
