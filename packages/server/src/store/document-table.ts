import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

/** A thing and its place in the order of the bench. */
export interface Placed<T> {
  readonly place: number;
  readonly value: T;
}

/** A table of whole things, each kept as JSON under its id, in the order of their places. */
export interface DocumentTable<T extends { id?: string }> {
  all(): Placed<T>[];
  /** Everything as the JSON that it is kept as. */
  texts(): string[];
  get(id: string): Placed<T> | undefined;
  /** The ids of everything. */
  ids(): Set<string>;
  /** The id of what stands at a place. */
  idAt(place: number): string | undefined;
  /** Adds a thing at the end, or back at the place it had; the place is returned. */
  insert(value: T & { id: string }, place?: number): number;
  replace(id: string, value: T): void;
  remove(id: string): void;
  clear(): void;
  /** How often this program has changed the table; also counts what was then rolled back. */
  changes(): number;
}

export function documentTable<T extends { id?: string }>(
  database: Database,
  name:
    | "parts"
    | "joints"
    | "claims"
    | "catalogue"
    | "evidence"
    | "sightings"
    | "books"
    | "watches"
    | "measurements"
    | "inspections"
    | "clearances",
): DocumentTable<T> {
  const all = database.prepare(`SELECT place, body FROM ${name} ORDER BY place`);
  const texts = database.prepare(`SELECT body FROM ${name} ORDER BY place`);
  const ids = database.prepare(`SELECT id FROM ${name}`);
  const one = database.prepare(`SELECT place, body FROM ${name} WHERE id = ?`);
  const idAt = database.prepare(`SELECT id FROM ${name} WHERE place = ?`);
  const insert = database.prepare(`INSERT INTO ${name} (id, body) VALUES (?, ?) RETURNING place`);
  const insertAt = database.prepare(`INSERT INTO ${name} (place, id, body) VALUES (?, ?, ?) RETURNING place`);
  const replace = database.prepare(`UPDATE ${name} SET body = ? WHERE id = ?`);
  const remove = database.prepare(`DELETE FROM ${name} WHERE id = ?`);
  const clear = database.prepare(`DELETE FROM ${name}`);
  const placed = (row: unknown): Placed<T> => {
    const { place, body } = row as { place: number; body: string };
    return { place, value: keptJson<T>(body) };
  };
  let changes = 0;
  const run = (statement: typeof replace, ...values: Parameters<typeof replace.run>) => {
    changes += 1;
    return statement.run(...values);
  };
  return {
    all: () => all.all().map(placed),
    texts: () => (texts.all() as unknown as { body: string }[]).map(({ body }) => body),
    ids: () => new Set((ids.all() as unknown as { id: string }[]).map(({ id }) => id)),
    get: (id) => {
      const row = one.get(id);
      return row === undefined ? undefined : placed(row);
    },
    idAt: (place) => (idAt.get(place) as { id: string } | undefined)?.id,
    insert: (value, place) => {
      const row = [value.id, JSON.stringify(value)] as const;
      changes += 1;
      const added = place === undefined ? insert.get(...row) : insertAt.get(place, ...row);
      return (added as { place: number }).place;
    },
    replace: (id, value) => void run(replace, JSON.stringify(value), id),
    remove: (id) => void run(remove, id),
    clear: () => void run(clear),
    changes: () => changes,
  };
}
