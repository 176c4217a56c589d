import { availableParallelism } from "node:os";
import type { Listing } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { GivenRow, KeptBatch, RowResult } from "../store/batches.ts";
import type { Author } from "../store/history.ts";
import type { Tables } from "../store/tables.ts";
import type { ThreadPool } from "../threads/thread-pool.ts";
import { type WorldTools, worldOf } from "../trade/world.ts";
import type { Watchlist } from "../watch/watchlist.ts";
import { openBatchBook } from "./batch-book.ts";
import { openBatchQueue } from "./batch-queue.ts";
import { type BatchRun, runBatch } from "./run-batch.ts";

export interface BatchRow extends RowResult {
  readonly row: number;
  readonly text: string;
  /** What holds of its words now; nothing where it is no longer in the log. */
  readonly listing: Listing | null;
  readonly asking: Listing["asking"];
}

export interface BatchView extends KeptBatch {
  readonly rows: readonly BatchRow[];
}

/** Many listings at once: kept first, then judged one after another, however often the server is stopped meanwhile. */
export interface Batches {
  all(): KeptBatch[];
  get(id: string, limit: number): Outcome<BatchView>;
  add(rows: readonly GivenRow[], name?: string): KeptBatch;
  stop(id: string): Promise<Outcome<KeptBatch>>;
  resume(id: string): Outcome<KeptBatch>;
  /** Goes on with what was running when the server stopped. */
  goOn(): void;
  /** Lets what is running be, to go on at the next start; settled when nothing more is written. */
  close(): Promise<void>;
}

const threadsMost = 4;

export function openBatches(
  tools: WorldTools & { readonly tables: Tables; readonly watchlist: Watchlist },
  pool: ThreadPool,
  onFailure: (error: unknown) => void,
): Batches {
  const { tables, watchlist } = tools;
  const { batches } = tables;
  const found = (id: string): Outcome<KeptBatch> => {
    const batch = batches.get(id);
    return batch ? done(batch) : problem("not-found", `There is no batch "${id}"`);
  };
  // What runs goes on after the request, and one batch may begin when another ends.
  const begunBy = new Map<string, Author>();
  const start = (id: string): BatchRun => {
    const book = openBatchBook(tables, watchlist, id, tools.today(), begunBy.get(id));
    const world = worldOf(tools, {}, "The listings cannot be judged");
    if (!world.ok) throw new Error("the stored bench cannot be judged for");
    const task = { do: "rows", world: world.value, watches: watchlist.watches() } as const;
    return runBatch(pool, task, book.open(), Math.min(threadsMost, availableParallelism()), book.enter);
  };
  const queue = openBatchQueue(batches, start, onFailure);
  return {
    all: () => batches.all(),
    get: (id, limit) => {
      const batch = found(id);
      return batch.ok ? done({ ...batch.value, rows: rowsOf(tables, id, limit) }) : batch;
    },
    add: (rows, name = rows.length === 1 ? "1 listing" : `${rows.length} listings`) => {
      const batch = tables.together(() => batches.add(name, tools.today(), rows));
      begunBy.set(batch.id, tables.author());
      queue.begin(batch.id);
      return batch;
    },
    stop: async (id) => {
      await queue.stop(id);
      return found(id);
    },
    resume: (id) => {
      const batch = found(id);
      if (!batch.ok || batch.value.state !== "stopped") return batch;
      batches.setState(id, "running");
      begunBy.set(id, tables.author());
      queue.begin(id);
      return found(id);
    },
    goOn: () => {
      const open = batches.all().filter(({ state }) => state === "running");
      for (const { id } of open.reverse()) queue.begin(id);
    },
    close: () => queue.close(),
  };
}

function rowsOf(tables: Tables, id: string, limit: number): BatchRow[] {
  return tables.batches.best(id, limit).map(({ row, given, result }) => {
    const sighting = result.sighting === null ? undefined : tables.sightings.get(result.sighting)?.value;
    const listing = sighting?.listing ?? null;
    return { row, text: given.text, ...result, listing, asking: listing?.asking ?? null };
  });
}
