import type { Sighting, Watch } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import { wishesOf } from "../plan/plans.ts";
import type { ThreadPool } from "../threads/thread-pool.ts";
import { worldOf } from "../trade/world.ts";
import type { FoundMatch, SeenHit } from "./kept-hits.ts";
import {
  addWatch,
  changeWatch,
  type NewWatch,
  notWatched,
  removeWatch,
  type WatchChange,
} from "./kept-watches.ts";
import { openWantValues } from "./want-values.ts";
import type { WatchBook } from "./watch-book.ts";
import { openWatchDesks, type WatchDesks, type WatchTools } from "./watch-desk.ts";
import { type WatchEntry, watchEntries } from "./watch-entries.ts";
import { keepFound, noteSighting, openCatchUp, seenHits, seenNow } from "./watch-hits.ts";

/** What is wanted, and what has turned up of it. */
export interface Watchlist {
  entries(): { readonly entries: WatchEntry[]; readonly upToDate: boolean };
  add(watch: NewWatch): Outcome<Watch>;
  change(id: string, change: WatchChange): Outcome<Watch>;
  remove(id: string): Outcome<Watch>;
  /** Everything that is watched, for matching many listings elsewhere. */
  watches(): readonly Watch[];
  /** Matches a sighting of the log, and keeps what it hits. */
  note(sighting: Sighting): void;
  /** Keeps what a sighting hits, found elsewhere. */
  keep(sighting: Sighting, matches: readonly FoundMatch[]): void;
  hits(all: boolean): SeenHit[];
  deal(id: string, isDealtWith: boolean): Outcome<SeenHit>;
}

export function openWatchlist(
  tools: WatchTools,
  pool: ThreadPool,
  onFailure: (error: unknown) => void,
): Watchlist {
  const { tables, models } = tools;
  const desks = openWatchDesks(tools);
  const values = openWantValues(valuesSource(tools, desks), pool, onFailure);
  const book: WatchBook = { tables, desks, values };
  const catchUp = openCatchUp(book);
  const hits = (all: boolean) => {
    catchUp();
    return seenHits(book).filter(({ isDealtWith }) => all || !isDealtWith);
  };
  return {
    ...listOf(book),
    entries: () => {
      const { isUpToDate } = values.read();
      return { entries: watchEntries(book, hits(false), models.all()), upToDate: isUpToDate };
    },
    note: (sighting) => noteSighting(book, sighting),
    keep: (sighting, matches) => keepFound(book, sighting, matches),
    hits: (all) => hits(all).sort((one, other) => Number(one.isDealtWith) - Number(other.isDealtWith)),
    deal: (id, isDealtWith) => dealWith(id, isDealtWith, book),
  };
}

/** What the user puts on the list and says about it. */
function listOf({ tables, desks }: WatchBook): Pick<Watchlist, "watches" | "add" | "change" | "remove"> {
  const watched = () => desks.ready().watched;
  return {
    watches: () => watched().map(({ watch }) => watch),
    add: (given) => tables.together(() => addWatch(tables, given), { what: "watch-added" }),
    change: (id, change) =>
      tables.together(
        () => {
          const thing = watched().find(({ watch }) => watch.id === id);
          return thing ? changeWatch(tables, thing.watch, change) : notWatched(id);
        },
        { what: "watch-changed" },
      ),
    remove: (id) => tables.together(() => removeWatch(tables, id), { what: "watch-deleted" }),
  };
}

function dealWith(id: string, isDealtWith: boolean, book: WatchBook): Outcome<SeenHit> {
  const { hits } = book.tables;
  const hit = hits.get(id);
  const changed = hit && { ...hit, isDealtWith };
  if (changed) hits.replace(changed);
  const shown = changed && seenNow(changed, book);
  return shown ? done(shown) : problem("not-found", `There is no hit "${id}"`);
}

function valuesSource(tools: WatchTools, desks: WatchDesks) {
  const { evidence, sightings, models, watches } = tools.tables;
  return {
    stamp: () => desks.stampOf(evidence, sightings, models, watches),
    world: () => {
      const made = worldOf(tools, {}, "The wants cannot be valued");
      return made.ok ? made.value : undefined;
    },
    wishes: () => wishesOf({}),
    watched: () => desks.ready().watched,
  };
}
