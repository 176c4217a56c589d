import type { Claim, Joint, Part, Refusal } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { Deletion } from "../store/deletions.ts";
import type { DocumentTable, Placed } from "../store/document-table.ts";
import type { Tables } from "../store/tables.ts";
import { newId } from "./new-id.ts";

/** What a delete took away, and how many deletes can be undone now. */
export interface Removed {
  readonly deleted: {
    readonly parts: readonly Part[];
    readonly joints: readonly Joint[];
    readonly claims: readonly Claim[];
  };
  readonly undo: number;
}

/** One kind of thing on the bench: parts, joints or claims. */
export interface Shelf<T> {
  all(): T[];
  get(id: string): Outcome<T>;
  /** Adds a thing; one without an id is given one. */
  add(value: T): Outcome<T>;
  /** Puts a thing in the place of the one with this id, and keeps the id. */
  put(id: string, value: T): Outcome<T>;
  remove(id: string): Outcome<Removed>;
}

export interface ShelfSpec<T extends { id?: string }> {
  /** What one thing is called in a message. */
  readonly noun: string;
  readonly table: DocumentTable<T>;
  stem(value: T): string;
  /** Why this thing cannot stand beside what is on the bench, its own former self left out. */
  refusals(value: T & { id: string }): Refusal[];
  deletion(placed: Placed<T>): Deletion;
}

export function openShelf<T extends { id?: string }>(tables: Tables, spec: ShelfSpec<T>): Shelf<T> {
  const { table } = spec;
  return {
    all: () => table.all().map(({ value }) => value),
    get: (id) => found(spec, id, ({ value }) => done(value)),
    add: (value) => tables.together(() => add(spec, value)),
    put: (id, value) => tables.together(() => found(spec, id, () => put(spec, id, value))),
    remove: (id) =>
      tables.together(() => found(spec, id, (placed) => done(removeFrom(tables, spec.deletion(placed))))),
  };
}

function found<T extends { id?: string }, R>(
  spec: ShelfSpec<T>,
  id: string,
  then: (placed: Placed<T>) => Outcome<R>,
): Outcome<R> {
  const placed = spec.table.get(id);
  return placed === undefined
    ? problem("not-found", `There is no ${spec.noun} "${id}" on the bench`)
    : then(placed);
}

function add<T extends { id?: string }>(spec: ShelfSpec<T>, value: T): Outcome<T> {
  const isTaken = (id: string) => spec.table.get(id) !== undefined;
  if (value.id !== undefined && isTaken(value.id)) {
    const refusal = {
      field: "id",
      got: JSON.stringify(value.id),
      expected: `an id that no other ${spec.noun} on the bench has`,
    };
    return problem("id-taken", `There is a ${spec.noun} "${value.id}" on the bench already`, [refusal]);
  }
  const named = { ...value, id: value.id ?? newId(spec.stem(value), isTaken) };
  return settle(spec, named, () => spec.table.insert(named));
}

function put<T extends { id?: string }>(spec: ShelfSpec<T>, id: string, value: T): Outcome<T> {
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
  spec: ShelfSpec<T>,
  named: T & { id: string },
  write: () => void,
): Outcome<T> {
  const refusals = spec.refusals(named);
  if (refusals.length > 0)
    return problem("bad-request", `The ${spec.noun} "${named.id}" was not taken`, refusals);
  write();
  return done<T>(named);
}

function removeFrom(tables: Tables, deletion: Deletion): Removed {
  for (const { value } of deletion.joints) tables.joints.remove(value.id as string);
  for (const { value } of deletion.parts) tables.parts.remove(value.id);
  for (const { value } of deletion.claims) tables.claims.remove(value.id as string);
  tables.deletions.push(deletion);
  return { deleted: valuesOf(deletion), undo: tables.deletions.count() };
}

/** A deletion's things without their places. */
export function valuesOf({ parts, joints, claims }: Deletion): Removed["deleted"] {
  return {
    parts: parts.map(({ value }) => value),
    joints: joints.map(({ value }) => value),
    claims: claims.map(({ value }) => value),
  };
}
