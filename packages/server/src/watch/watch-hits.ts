import type { Match, Sighting } from "@ferrule/core";
import type { KeptHit } from "../store/hits.ts";
import { addHits, type FoundMatch, keepHits, type SeenHit, seenHit, type TellWatch } from "./kept-hits.ts";
import type { WatchBook } from "./watch-book.ts";
import type { WatchDesk } from "./watch-desk.ts";
import { capOf, clubsOf } from "./watch-entries.ts";

/** Keeps what a sighting hits in the place of what it hit before. */
export function keepFound(book: WatchBook, sighting: Sighting, matches: readonly FoundMatch[]): void {
  keepHits(book.tables, sighting, leftOf(matches, sighting), tellOf(book));
}

/** Matches a sighting of the log while it is open. */
export function noteSighting(book: WatchBook, sighting: Sighting): void {
  if (sighting.outcome !== "open") return;
  const matches = book.desks.ready().find(sighting.listing, sighting.place);
  book.tables.together(() => keepFound(book, sighting, found(matches)));
}

/**
 * Matches the listings of the log with what has come onto the list, and with what is looked for elsewhere or no longer muted,
 * since it was last called. The first time that is everything, so that nothing is missed that came while no server ran.
 */
export function openCatchUp(book: WatchBook): () => void {
  let matched = new Map<string, string>();
  let last: WatchDesk | undefined;
  return () => {
    const desk = book.desks.ready();
    if (desk === last) return;
    last = desk;
    const now = new Map(desk.watched.map(({ watch }) => [watch.id, lookedFor(watch)]));
    const fresh = desk.watched.flatMap(({ watch }) =>
      matched.get(watch.id) === now.get(watch.id) ? [] : [watch],
    );
    matched = now;
    if (fresh.length > 0) book.tables.together(() => matchLog(book, desk.findOf(fresh)));
  };
}

const lookedFor = ({ kind, needs, place, muted }: WatchDesk["watched"][number]["watch"]) =>
  JSON.stringify([kind, needs, place, muted === true]);

function matchLog(book: WatchBook, find: WatchDesk["find"]): void {
  for (const { value: sighting } of book.tables.sightings.all()) {
    if (sighting.outcome !== "open") continue;
    const matches = leftOf(found(find(sighting.listing, sighting.place)), sighting);
    if (matches.length > 0) addHits(book.tables, sighting, matches, tellOf(book));
  }
}

const found = (matches: readonly Match[]): FoundMatch[] =>
  matches.map(({ watch, ...rest }) => ({ ...rest, watch: watch.id }));

/** What has been bought of a listing is no longer on offer. */
const leftOf = (matches: readonly FoundMatch[], { boughtItems = [] }: Sighting) =>
  matches.filter(({ item }) => !boughtItems.includes(item));

function tellOf({ tables, desks, values }: WatchBook): TellWatch {
  const known = values.known();
  const { watched } = desks.ready();
  return (id) => {
    const thing = watched.find(({ watch }) => watch.id === id);
    return thing && { text: thing.watch.text, clubs: clubsOf(thing.want, known, tables) };
  };
}

/** Hits of listings that are still in the log, the newest first. */
export function seenHits(book: WatchBook): SeenHit[] {
  return book.tables.hits.all().flatMap((hit) => seenNow(hit, book) ?? []);
}

/** A hit as it stands to the cap of today; nothing where its listing is no longer in the log. */
export function seenNow(hit: KeptHit, { tables, desks, values }: WatchBook): SeenHit | undefined {
  const sighting = tables.sightings.get(hit.sighting)?.value;
  if (sighting === undefined) return undefined;
  const thing = desks.ready().watched.find(({ watch }) => watch.id === hit.watch);
  return seenHit(hit, sighting, thing ? capOf(thing, values.known()) : null);
}
