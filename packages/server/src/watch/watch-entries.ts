import {
  type CatalogueModel,
  type Part,
  searchWords,
  titleOfClub,
  titleOfPart,
  type Want,
  type Watch,
} from "@ferrule/core";
import type { Tables } from "../store/tables.ts";
import type { ValuedWant } from "../threads/value-wants.ts";
import type { Waiting } from "../threads/waiting-for.ts";
import type { Watched } from "./bench-watches.ts";
import type { SeenHit } from "./kept-hits.ts";
import type { WatchBook } from "./watch-book.ts";

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

/** Everything that is watched with what is known of it: pinned ones first and muted ones last, and the most worth first. */
export function watchEntries(
  { tables, desks, values }: WatchBook,
  open: readonly SeenHit[],
  catalogue: readonly CatalogueModel[],
): WatchEntry[] {
  const known = values.known();
  const hitsOf = new Map<string, number>();
  for (const { watch } of open) hitsOf.set(watch, (hitsOf.get(watch) ?? 0) + 1);
  return desks
    .ready()
    .watched.map((thing): WatchEntry => {
      const { watch, want } = thing;
      const value = known.get(want.id);
      return {
        watch,
        worthMinor: value?.worthMinor ?? null,
        capMinor: capOf(thing, known),
        clubs: clubsOf(want, known, tables),
        search: searchWords(want, catalogue),
        waiting: value?.waiting ?? null,
        hits: hitsOf.get(watch.id) ?? 0,
      };
    })
    .sort(inOrder);
}

export function capOf({ watch, want }: Watched, values: ReadonlyMap<string, ValuedWant>): number | null {
  return watch.capMinor ?? values.get(want.id)?.worthMinor ?? null;
}

function inOrder(one: WatchEntry, other: WatchEntry): number {
  const place = ({ watch }: WatchEntry) => (watch.muted ? 2 : watch.pinned ? 0 : 1);
  const worth = ({ worthMinor }: WatchEntry) => worthMinor ?? -1;
  return place(one) - place(other) || worth(other) - worth(one) || (one.watch.id < other.watch.id ? -1 : 1);
}

const clubsShown = 20;

/** The clubs that the plan would build with it, then others that it would complete. */
export function clubsOf(
  { id, completes }: Want,
  values: ReadonlyMap<string, ValuedWant>,
  tables: Tables,
): string[] {
  const part = (name: string | null) => (name === null ? undefined : tables.parts.get(name)?.value);
  const title = (head: Part | undefined, shaft: Part | undefined) => {
    if (head && shaft) return titleOfClub(head, shaft);
    const one = head ?? shaft;
    return one ? titleOfPart(one) : [];
  };
  const others = completes.slice(0, clubsShown).flatMap(({ head, shaft }) => title(part(head), part(shaft)));
  return [...new Set([...(values.get(id)?.clubs ?? []), ...others])].slice(0, clubsShown);
}
