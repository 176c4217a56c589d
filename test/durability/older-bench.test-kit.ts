import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { migrate } from "../../packages/server/src/store/migrations.ts";
import { type Database, openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { bondedShaft, looseParts } from "../api/server.test-kit.ts";
import { asked, entry, model, sighting } from "../api/trade.test-kit.ts";

type Row = Readonly<Record<string, string | number | null>>;

/** The rows of one table, by its name. */
export type Rows = Readonly<Record<string, readonly Row[]>>;

const kept = (place: number, value: { readonly id: string }): Row => ({
  place,
  id: value.id,
  body: JSON.stringify(value),
});
const named = (name: string, value: unknown): Row => ({ name, body: JSON.stringify(value) });

const { head, adapter, shaft, grip } = looseParts;
const inspection = {
  id: "i1",
  on: "2026-11-20",
  part: "h1",
  answers: [{ row: "head-rattle", answer: "yes" }],
  asserted: ["rattle"],
  denied: ["crack"],
};
const clearance = {
  id: "c1",
  on: "2026-11-21",
  part: "h1",
  fault: "rattle",
  because: "put-right",
  by: "Bench",
  note: "epoxy let in and the rattle is gone",
};
const measurement = {
  id: "m1",
  on: "2026-11-22",
  club: "h1+a1+s1+g1",
  parts: ["h1", "a1", "s1", "g1"],
  measured: { massG: { value: 318, plusMinus: 0.5 } },
  estimated: {},
};
const hit = {
  id: "hit-1",
  watch: "w1",
  sighting: "s1",
  item: 0,
  on: "2026-11-20",
  clubs: [],
  isDealtWith: false,
  text: "an adapter of Quillon 2",
  priceMinor: 2800,
};
const watch = {
  id: "w1",
  kind: "adapter",
  needs: { family: "Quillon 2" },
  text: "an adapter of Quillon 2",
  by: "hand",
};
const given = JSON.stringify({ text: "Northmoor Ombrel driver head, 40 euros" });
const result = JSON.stringify({
  sighting: "s1",
  verdict: "buy",
  mostToPayMinor: 5000,
  netMinor: 1200,
  hits: ["w1"],
  problem: null,
});

/** What each version added, with rows as it wrote them: the first at place 1 was deleted and can be brought back. */
const added: readonly Rows[] = [
  {
    parts: [kept(2, head), kept(3, adapter), kept(4, shaft)],
    joints: [kept(1, bondedShaft)],
    claims: [
      kept(1, {
        ...{ receiver: "Quillon 2", adapter: "Quillon 1", verdict: "fits", evidence: "tried" },
        id: "f1",
      }),
    ],
    goals: [named("bench", { skill: "bond" })],
    deletions: [
      { number: 1, body: JSON.stringify({ parts: [{ place: 1, value: grip }], joints: [], claims: [] }) },
    ],
    settings: [named("example", false), named("page", { theme: "dark" })],
  },
  {
    catalogue: [kept(1, model)],
    evidence: [kept(1, asked)],
    sightings: [kept(1, sighting)],
    books: [kept(1, entry)],
    costs: [named("bench", { perKmMinor: 31 })],
  },
  {
    watches: [kept(1, watch)],
    hits: [{ ...kept(1, hit), sighting: "s1" }],
    batches: [
      {
        place: 1,
        id: "batch-1",
        name: "An evening",
        state: "done",
        total: 1,
        done: 1,
        startedOn: "2026-11-20",
      },
    ],
    batch_rows: [{ batch: "batch-1", row: 0, given, result, netMinor: 1200 }],
  },
  {
    measurements: [kept(1, measurement)],
    inspections: [kept(1, inspection)],
    clearances: [kept(1, clearance)],
  },
  {
    devices: [
      {
        place: 1,
        id: "d1",
        name: "Phone at the bench",
        pairedOn: "2026-11-01",
        seenOn: "2026-11-20",
        tokenHash: "0f".repeat(32),
      },
    ],
    kept_answers: [{ key: "3f1c0a52-key", status: 201, body: '{"id":"h1"}', answeredOn: "2026-11-20" }],
  },
];

/** The versions of which there are benches here, the first one first; the present one wrote none of them. */
export const olderSchemas = added.map((_, at) => at + 1);

/** All rows of a bench of a version. */
export function rowsOf(schema: number): Rows {
  return Object.assign({}, ...added.slice(0, schema));
}

/** Makes the bench of an older version in a folder: the steps that it knew, and the rows that it wrote. */
export function makeOlderBench(folder: string, schema: number): void {
  mkdirSync(folder, { recursive: true });
  const database = openSqlite(join(folder, "bench.sqlite"));
  database.exec("PRAGMA journal_mode = WAL");
  migrate(database, schema);
  for (const [table, rows] of Object.entries(rowsOf(schema)))
    for (const row of rows) insert(database, table, row);
  database.close();
}

function insert(database: Database, table: string, row: Row): void {
  const names = Object.keys(row);
  const places = names.map(() => "?").join(", ");
  database
    .prepare(`INSERT INTO ${table} (${names.join(", ")}) VALUES (${places})`)
    .run(...Object.values(row));
}

/** The rows of the same tables and columns as they are in a file now. */
export function rowsIn(file: string, schema: number): Rows {
  const database = openSqlite(file, { readOnly: true });
  try {
    const tables = Object.entries(rowsOf(schema)).map(([table, [first = {}]]) => {
      const found = database.prepare(`SELECT ${Object.keys(first).join(", ")} FROM ${table}`).all();
      return [table, found.map((row) => ({ ...(row as Row) }))];
    });
    return Object.fromEntries(tables);
  } finally {
    database.close();
  }
}
