import {
  type Part,
  type Sighting,
  searchWords,
  titleOfClub,
  titleOfPart,
  type Want,
  type Watch,
} from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import { wishesOf } from "../plan/plans.ts";
import type { KeptHit } from "../store/hits.ts";
import type { Tables } from "../store/tables.ts";
import type { ThreadPool } from "../threads/thread-pool.ts";
import type { ValuedWant } from "../threads/value-wants.ts";
import type { Waiting } from "../threads/waiting-for.ts";
import { worldOf } from "../trade/world.ts";
import type { Watched } from "./bench-watches.ts";
import { type FoundMatch, keepHits, type SeenHit, seenHit } from "./kept-hits.ts";
import {
  addWatch,
  changeWatch,
  type NewWatch,
  notWatched,
  removeWatch,
  type WatchChange,
} from "./kept-watches.ts";
import { openWantValues, type WantValues } from "./want-values.ts";
import { openWatchDesks, type WatchDesks, type WatchTools } from "./watch-desk.ts";

export interface WatchEntry {
  readonly watch: Watch;
  readonly worthMinor: number | null;
  /** The most to pay: what the user says, or what it is worth. */
  readonly capMinor: number | null;
  readonly clubs: readonly string[];
  readonly search: { readonly any: readonly string[]; readonly without: readonly string[] };
  readonly waiting: Waiting | null;
  /** Hits that are not dealt with. */
  readonly hits: number;
}

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

/** What everything below looks things up in. */
interface Book {
  readonly tables: Tables;
  readonly desks: WatchDesks;
  readonly values: WantValues;
}

export function openWatchlist(
  tools: WatchTools,
  pool: ThreadPool,
  onFailure: (error: unknown) => void,
): Watchlist {
  const { tables, models } = tools;
  const desks = openWatchDesks(tools);
  const values = openWantValues(valuesSource(tools, desks), pool, onFailure);
  const book: Book = { tables, desks, values };
  const watched = () => desks.ready().watched;
  return {
    entries: () => {
      const { isUpToDate } = values.read();
      const open = seenHits(book).filter(({ isDealtWith }) => !isDealtWith);
      const catalogue = models.all();
      const entries = watched().map((thing) => ({
        ...entryOf(thing, book, open),
        search: searchWords(thing.want, catalogue),
      }));
      return { entries: entries.sort(inOrder), upToDate: isUpToDate };
    },
    add: (given) => tables.together(() => addWatch(tables, given)),
    change: (id, change) =>
      tables.together(() => {
        const thing = watched().find(({ watch }) => watch.id === id);
        return thing ? changeWatch(tables, thing.watch, change) : notWatched(id);
      }),
    remove: (id) => tables.together(() => removeWatch(tables, id)),
    watches: () => watched().map(({ watch }) => watch),
    note: (sighting) => {
      if (sighting.outcome !== "open") return;
      const matches = desks.ready().find(sighting.listing, sighting.place);
      const found = matches.map(({ watch, ...rest }) => ({ ...rest, watch: watch.id }));
      tables.together(() => keep(book, sighting, found));
    },
    keep: (sighting, matches) => keep(book, sighting, matches),
    hits: (all) => {
      const hits = seenHits(book).filter(({ isDealtWith }) => all || !isDealtWith);
      return hits.sort((one, other) => Number(one.isDealtWith) - Number(other.isDealtWith));
    },
    deal: (id, isDealtWith) => {
      const hit = tables.hits.get(id);
      const changed = hit && { ...hit, isDealtWith };
      if (changed) tables.hits.replace(changed);
      const shown = changed && seen(changed, book);
      return shown ? done(shown) : problem("not-found", `There is no hit "${id}"`);
    },
  };
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

function entryOf(
  thing: Watched,
  { tables, values }: Book,
  open: readonly SeenHit[],
): Omit<WatchEntry, "search"> {
  const { watch, want } = thing;
  const known = values.known();
  const value = known.get(want.id);
  return {
    watch,
    worthMinor: value?.worthMinor ?? null,
    capMinor: capOf(thing, known),
    clubs: clubsOf(want, known, tables),
    waiting: value?.waiting ?? null,
    hits: open.filter((hit) => hit.watch === watch.id).length,
  };
}

function capOf({ watch, want }: Watched, values: ReadonlyMap<string, ValuedWant>): number | null {
  return watch.capMinor ?? values.get(want.id)?.worthMinor ?? null;
}

/** Pinned ones first and muted ones last, and the most worth first. */
function inOrder(one: WatchEntry, other: WatchEntry): number {
  const place = ({ watch }: WatchEntry) => (watch.muted ? 2 : watch.pinned ? 0 : 1);
  const worth = ({ worthMinor }: WatchEntry) => worthMinor ?? -1;
  return place(one) - place(other) || worth(other) - worth(one) || (one.watch.id < other.watch.id ? -1 : 1);
}

const clubsShown = 20;

/** The clubs that the plan would build with it, then others that it would complete. */
function clubsOf({ id, completes }: Want, values: ReadonlyMap<string, ValuedWant>, tables: Tables): string[] {
  const part = (name: string | null) => (name === null ? undefined : tables.parts.get(name)?.value);
  const title = (head: Part | undefined, shaft: Part | undefined) => {
    if (head && shaft) return titleOfClub(head, shaft);
    const one = head ?? shaft;
    return one ? titleOfPart(one) : [];
  };
  const others = completes.slice(0, clubsShown).flatMap(({ head, shaft }) => title(part(head), part(shaft)));
  return [...new Set([...(values.get(id)?.clubs ?? []), ...others])].slice(0, clubsShown);
}

function keep({ tables, desks, values }: Book, sighting: Sighting, matches: readonly FoundMatch[]): void {
  const known = values.known();
  const { watched } = desks.ready();
  keepHits(tables, sighting, matches, (id) => {
    const thing = watched.find(({ watch }) => watch.id === id);
    return thing && { text: thing.watch.text, clubs: clubsOf(thing.want, known, tables) };
  });
}

function seen(hit: KeptHit, { tables, desks, values }: Book): SeenHit | undefined {
  const sighting = tables.sightings.get(hit.sighting)?.value;
  if (sighting === undefined) return undefined;
  const thing = desks.ready().watched.find(({ watch }) => watch.id === hit.watch);
  return seenHit(hit, sighting, thing ? capOf(thing, values.known()) : null);
}

/** Hits of listings that are still in the log. */
function seenHits(book: Book): SeenHit[] {
  return book.tables.hits.all().flatMap((hit) => seen(hit, book) ?? []);
}
