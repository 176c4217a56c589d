import {
  type Hit,
  modelFinder,
  type Part,
  type Sighting,
  searchWords,
  titleOfClub,
  titleOfPart,
  type Want,
  type Watch,
  type WatchIndex,
  watchIndex,
} from "@ferrule/core";
import type { Answers } from "../bench/answers.ts";
import { mergePatch } from "../bench/merge-patch.ts";
import { newId } from "../bench/new-id.ts";
import { done, type Outcome, problem } from "../errors.ts";
import { wishesOf } from "../plan/plans.ts";
import type { DocumentTable } from "../store/document-table.ts";
import type { KeptHit } from "../store/hits.ts";
import type { Tables } from "../store/tables.ts";
import type { ThreadPool } from "../threads/thread-pool.ts";
import type { ValuedWant } from "../threads/value-wants.ts";
import type { Waiting } from "../threads/waiting-for.ts";
import { type WorldTools, worldOf } from "../trade/world.ts";
import { type Watched, watchedThings } from "./bench-watches.ts";
import { watchRefusals } from "./hand-watch.ts";
import { openWantValues } from "./want-values.ts";

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

export interface SeenHit extends Hit {
  /** What was wanted, and the words of the listing. */
  readonly wanted: string;
  readonly text: string;
  readonly asking: Sighting["listing"]["asking"];
  readonly verdict: NonNullable<Sighting["verdict"]> | null;
}

/** A change of what the user says about something that is watched; null takes it back. */
export type WatchChange = {
  readonly [Key in "pinned" | "muted" | "capMinor" | "place" | "note"]?: Watch[Key] | null;
};

/** What is wanted, and what has turned up of it. */
export interface Watchlist {
  entries(): { readonly entries: WatchEntry[]; readonly upToDate: boolean };
  add(watch: Omit<Watch, "id"> & { readonly id?: string }): Outcome<Watch>;
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

/** What was found of a watched thing in a listing. */
export interface FoundMatch {
  readonly watch: string;
  readonly item: number;
  readonly priceMinor: number | null;
}

export interface WatchTools extends WorldTools {
  readonly tables: Tables;
  readonly answers: Answers;
}

const clubsShown = 20;

export function openWatchlist(
  tools: WatchTools,
  pool: ThreadPool,
  onFailure: (error: unknown) => void,
): Watchlist {
  const { tables, bench, answers, costs, models } = tools;
  const watched = () => {
    const answer = answers.resolve(bench.goal());
    const kept = tables.watches.all().map(({ value }) => value);
    return watchedThings(answer.ok ? answer.value.wants : [], kept);
  };
  const world = () => {
    const made = worldOf(tools, {}, "The wants cannot be valued");
    return made.ok ? { ...made.value, wishes: wishesOf({}) } : undefined;
  };
  const stampOf = (...more: readonly Pick<DocumentTable<never>, "changes">[]) =>
    JSON.stringify([bench.stamp(), tables.stampOf(...more), bench.goal(), costs.read(), tools.today()]);
  const stamp = () => stampOf(tables.evidence, tables.sightings, tables.models, tables.watches);
  const values = openWantValues({ stamp, world, watched }, pool, onFailure);
  let index: { readonly stamp: string; readonly find: WatchIndex; readonly watched: Watched[] } | undefined;
  const ready = () => {
    const now = stampOf(tables.models, tables.watches);
    if (index?.stamp === now) return index;
    const things = watched();
    const find = watchIndex(
      things.map(({ watch }) => watch),
      modelFinder(models.all()),
      costs.read(),
    );
    index = { stamp: now, find, watched: things };
    return index;
  };
  const keep = (sighting: Sighting, matches: readonly FoundMatch[]) => {
    if (sighting.outcome !== "open") return;
    const things = new Map(ready().watched.map((each) => [each.watch.id, each]));
    const known = values.known();
    keepHits(tables, sighting, matches, (id) => {
      const thing = things.get(id);
      return thing && { text: thing.watch.text, clubs: clubsOf(thing.want, known, tables) };
    });
  };
  const seen = (hit: KeptHit): SeenHit | undefined => {
    const sighting = tables.sightings.get(hit.sighting)?.value;
    if (sighting === undefined) return undefined;
    const thing = ready().watched.find(({ watch }) => watch.id === hit.watch);
    const cap = thing && capOf(thing, values.known());
    return seenHit(hit, sighting, cap ?? null);
  };
  const seenHits = () => tables.hits.all().flatMap((hit) => seen(hit) ?? []);
  return {
    entries: () => {
      const { values: known, isUpToDate } = values.read();
      const open = seenHits().filter(({ isDealtWith }) => !isDealtWith);
      const catalogue = models.all();
      const entries = ready().watched.map((thing): WatchEntry => {
        const { watch, want } = thing;
        const value = known.get(want.id);
        return {
          watch,
          worthMinor: value?.worthMinor ?? null,
          capMinor: capOf(thing, known),
          clubs: clubsOf(want, known, tables),
          search: searchWords(want, catalogue),
          waiting: value?.waiting ?? null,
          hits: open.filter((hit) => hit.watch === watch.id).length,
        };
      });
      return { entries: entries.sort(inOrder), upToDate: isUpToDate };
    },
    add: (given) => tables.together(() => addWatch(tables, given)),
    change: (id, change) =>
      tables.together(() => {
        const thing = ready().watched.find(({ watch }) => watch.id === id);
        return thing ? changeWatch(tables, thing.watch, change) : notWatched(id);
      }),
    remove: (id) => tables.together(() => removeWatch(tables, id)),
    watches: () => ready().watched.map(({ watch }) => watch),
    note: (sighting) => {
      const matches = ready().find(sighting.listing, sighting.place);
      keep(
        sighting,
        matches.map(({ watch, ...rest }) => ({ ...rest, watch: watch.id })),
      );
    },
    keep,
    hits: (all) => {
      const hits = seenHits().filter(({ isDealtWith }) => all || !isDealtWith);
      return hits.sort((one, other) => Number(one.isDealtWith) - Number(other.isDealtWith));
    },
    deal: (id, isDealtWith) => {
      const hit = tables.hits.get(id);
      const changed = hit && { ...hit, isDealtWith };
      if (changed) tables.hits.replace(changed);
      const shown = changed && seen(changed);
      return shown ? done(shown) : problem("not-found", `There is no hit "${id}"`);
    },
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

function addWatch(tables: Tables, given: Omit<Watch, "id"> & { readonly id?: string }): Outcome<Watch> {
  const isTaken = (id: string) => tables.watches.get(id) !== undefined || id.startsWith("want-");
  if (given.id !== undefined && isTaken(given.id))
    return problem("id-taken", `Something is watched under the id "${given.id}" already`);
  const watch: Watch = { ...given, id: given.id ?? newId("watch", isTaken), by: "hand" };
  const refusals = watchRefusals(watch);
  if (refusals.length > 0) return problem("bad-request", "This cannot be watched for", refusals);
  tables.watches.insert(watch);
  return done(watch);
}

/** Of a want of the bench only what the user says of it is kept: the want itself is made of the bench each time. */
function changeWatch(tables: Tables, watch: Watch, change: WatchChange): Outcome<Watch> {
  const changed = mergePatch(watch, change) as Watch;
  const { kind: _kind, needs: _needs, text: _text, ...marks } = changed;
  const kept = changed.by === "hand" ? changed : { ...marks, by: "bench" as const };
  if (tables.watches.get(watch.id)) tables.watches.replace(watch.id, kept);
  else tables.watches.insert(kept);
  return done(changed);
}

function removeWatch(tables: Tables, id: string): Outcome<Watch> {
  const kept = tables.watches.get(id)?.value;
  if (kept?.by !== "hand") return notWatched(id, " by hand");
  tables.watches.remove(id);
  return done(kept);
}

function notWatched(id: string, how = ""): Outcome<never> {
  return problem("not-found", `Nothing is watched${how} under the id "${id}"`);
}

/** What a sighting hits now takes the place of what it hit before; what has been dealt with stays dealt with. */
function keepHits(
  tables: Tables,
  { id, seenOn }: Sighting,
  matches: readonly FoundMatch[],
  tell: (watch: string) => Pick<KeptHit, "text" | "clubs"> | undefined,
): void {
  const before = tables.hits.ofSighting(id);
  const isSame = (hit: KeptHit, match: FoundMatch) => hit.watch === match.watch && hit.item === match.item;
  for (const hit of before)
    if (!hit.isDealtWith && !matches.some((match) => isSame(hit, match))) tables.hits.remove(hit.id);
  for (const match of matches) {
    const known = before.find((hit) => isSame(hit, match));
    const told = tell(match.watch);
    if (known) tables.hits.replace({ ...known, ...told, priceMinor: match.priceMinor });
    else if (told) tables.hits.add({ ...match, ...told, sighting: id, on: seenOn, isDealtWith: false });
  }
}

/** What has become of the listing deals with its hits too. */
function seenHit(hit: KeptHit, sighting: Sighting, capMinor: number | null): SeenHit {
  const { text: wanted, priceMinor, ...rest } = hit;
  return {
    ...rest,
    wanted,
    isDealtWith: hit.isDealtWith || sighting.outcome !== "open",
    overMinor: priceMinor === null || capMinor === null ? null : priceMinor - capMinor,
    text: sighting.text,
    asking: sighting.listing.asking,
    verdict: sighting.verdict ?? null,
  };
}
