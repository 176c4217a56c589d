import type {
  BooksSummary,
  CatalogueModel,
  CostSettings,
  Deal,
  Entry,
  Evidence,
  Joint,
  Listing,
  Money,
  Part,
  Resale,
  Sighting,
  Subject,
} from "@ferrule/core";
import { call, type ImportReply, type ImportRequest } from "./api.ts";

export interface JudgeRequest {
  readonly text?: string;
  readonly listing?: Listing;
  readonly sighting?: string;
  readonly roundTripKm?: number;
  readonly place?: string;
  readonly log?: boolean;
}

export interface JudgeReply {
  readonly deal: Deal;
  readonly listing: Listing;
  readonly sighting: Sighting | null;
}

export interface BuyRequest {
  readonly paid: Money;
  readonly rate?: number;
  readonly on: string;
  readonly items?: readonly number[];
  readonly roundTripKm?: number;
  readonly minutes?: number;
  readonly postage?: Money;
}

export interface BuyReply {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly entries: readonly Entry[];
  readonly sighting: Sighting;
}

export interface SellReply {
  readonly entries: readonly Entry[];
  readonly parts: readonly Part[];
  readonly evidence: Evidence;
}

type Deleted = { readonly undo: number };
type Id = { readonly id: string };

/** The calls for a list that things are added to, changed in and deleted from. */
function shelf<T extends Id, Name extends string>(path: string) {
  const one = (id: string) => `${path}/${encodeURIComponent(id)}`;
  return {
    all: () => call<Readonly<Record<Name, readonly T[]>>>("GET", path),
    one: (id: string) => call<T>("GET", one(id)),
    add: (thing: unknown) => call<T>("POST", path, thing),
    put: (id: string, thing: unknown, base?: object) =>
      call<T>("PUT", one(id), thing, { from: base && { base } }),
    patch: (id: string, change: unknown, base?: T) =>
      call<T>("PATCH", one(id), change, { from: base && { base, sendsFields: true, merges: true } }),
    remove: (id: string, base?: object) =>
      call<Deleted>("DELETE", one(id), undefined, { from: base && { base } }),
    importFile: (request: ImportRequest) => call<ImportReply>("POST", `${path}/import`, request),
  };
}

/** Every call about listings and money. */
export const tradeApi = {
  models: shelf<CatalogueModel, "models">("/api/catalogue"),
  evidence: shelf<Evidence, "evidence">("/api/evidence"),
  sightings: shelf<Sighting, "sightings">("/api/sightings"),
  books: shelf<Entry, "entries">("/api/books"),
  judge: (request: JudgeRequest) => call<JudgeReply>("POST", "/api/judge", request),
  resale: (subject: Subject) => call<Resale>("POST", "/api/resale", { subject }),
  buy: (sighting: string, request: BuyRequest) =>
    call<BuyReply>("POST", `/api/sightings/${encodeURIComponent(sighting)}/buy`, request),
  sell: (request: unknown) => call<SellReply>("POST", "/api/books/sell", request),
  summary: () => call<BooksSummary>("GET", "/api/books/summary"),
  costs: () => call<CostSettings>("GET", "/api/costs"),
  changeCosts: (change: Partial<CostSettings>, base: CostSettings) =>
    call<CostSettings>("PUT", "/api/costs", change, { from: { base, sendsFields: true, merges: true } }),
};
