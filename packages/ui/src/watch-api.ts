import type { DealVerdict, Hit, Money, Watch } from "@ferrule/core";
import { call } from "./api.ts";

/** One thing on the watchlist, with what it is worth here. */
export interface WatchEntry {
  readonly watch: Watch;
  /** Null until it has been worked out. */
  readonly worthMinor: number | null;
  readonly capMinor: number | null;
  readonly clubs: readonly string[];
  readonly search: { readonly any: readonly string[]; readonly without: readonly string[] };
  readonly waiting: {
    readonly takeAtOrUnderMinor: number;
    readonly expectedWaitWeeks: number | null;
    readonly ratePerWeek: number;
    readonly sightings: number;
    readonly priorOnly: boolean;
  } | null;
  readonly hits: number;
}

/** A hit, with the words that it stands in. */
export interface SeenHit extends Hit {
  readonly wanted: string;
  readonly text: string;
  readonly asking: Money | null;
  readonly verdict: DealVerdict | null;
}

export interface WatchChange {
  readonly pinned?: boolean | null;
  readonly muted?: boolean | null;
  readonly capMinor?: number | null;
  readonly place?: string | null;
  readonly note?: string | null;
}

const watchPath = (id: string) => `/api/watch/${encodeURIComponent(id)}`;

/** Every call about what is watched for, and what has turned up of it. */
export const watchApi = {
  entries: () =>
    call<{ readonly entries: readonly WatchEntry[]; readonly upToDate: boolean }>("GET", "/api/watch"),
  add: (watch: unknown) => call<Watch>("POST", "/api/watch", watch),
  change: (id: string, change: WatchChange, base?: Watch) =>
    call<Watch>("PATCH", watchPath(id), change, {
      from: base && { base, sendsFields: true, merges: true },
    }),
  remove: (id: string, base?: Watch) =>
    call<{ readonly deleted: Watch }>("DELETE", watchPath(id), undefined, { from: base && { base } }),
  hits: (all = false) =>
    call<{ readonly hits: readonly SeenHit[] }>("GET", all ? "/api/hits?all=true" : "/api/hits"),
  dealWith: (id: string, isDealtWith: boolean) =>
    call<SeenHit>("PATCH", `/api/hits/${encodeURIComponent(id)}`, { isDealtWith }),
};
