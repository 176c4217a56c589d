import type { Tables } from "../store/tables.ts";
import type { WantValues } from "./want-values.ts";
import type { WatchDesks } from "./watch-desk.ts";

/** What the watchlist looks things up in. */
export interface WatchBook {
  readonly tables: Tables;
  readonly desks: WatchDesks;
  readonly values: WantValues;
}
