import type { Database } from "./sqlite.ts";

/** From now on everything is read as it was at one moment, whatever is written meanwhile, until the database is closed. */
export function readOneMoment(database: Database): void {
  database.exec("BEGIN");
}
