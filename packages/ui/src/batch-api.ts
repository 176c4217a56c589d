import type { DealVerdict, Listing, Money } from "@ferrule/core";
import { call } from "./api.ts";

/** Many listings that came together. */
export interface Batch {
  readonly id: string;
  readonly name: string;
  readonly state: "running" | "done" | "stopped";
  readonly total: number;
  readonly done: number;
  readonly startedOn: string;
}

export interface BatchRow {
  readonly row: number;
  readonly text: string;
  readonly listing: Listing | null;
  readonly verdict: DealVerdict | null;
  readonly mostToPayMinor: number | null;
  readonly netMinor: number | null;
  readonly asking: Money | null;
  /** Ids of what is watched for and was found in it. */
  readonly hits: readonly string[];
  readonly sighting: string | null;
  /** Why it could not be judged. */
  readonly problem: string | null;
}

const batchPath = (id: string) => `/api/batches/${encodeURIComponent(id)}`;

/** Every call about many listings at once. */
export const batchApi = {
  add: (text: string, name?: string) =>
    call<{ readonly batch: string; readonly total: number }>("POST", "/api/batches", {
      text,
      ...(name && { name }),
    }),
  all: () => call<{ readonly batches: readonly Batch[] }>("GET", "/api/batches"),
  one: (id: string, limit: number) =>
    call<Batch & { readonly rows: readonly BatchRow[] }>("GET", `${batchPath(id)}?limit=${limit}`),
  stop: (id: string) => call<Batch>("DELETE", batchPath(id)),
  resume: (id: string) => call<Batch>("POST", `${batchPath(id)}/resume`),
};
