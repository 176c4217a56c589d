import { createRequire } from "node:module";
import type { DatabaseSync } from "@photostructure/sqlite";

export type Database = InstanceType<typeof DatabaseSync>;

/** Opens a database file, or `:memory:`; throws what SQLite says when it cannot. */
export function openSqlite(file: string, options?: { readOnly: boolean }): Database {
  const { DatabaseSync } = sqlite();
  return options === undefined ? new DatabaseSync(file) : new DatabaseSync(file, options);
}

/** Node's own SQLite where it has one; else the package that offers the same interface. */
function sqlite(): { readonly DatabaseSync: typeof DatabaseSync } {
  const require = createRequire(import.meta.url);
  try {
    return require("node:sqlite");
  } catch {
    return require("@photostructure/sqlite");
  }
}
