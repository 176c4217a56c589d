import { createRequire } from "node:module";

// The server's own database package, or the one that comes with Node where it does.
const fromServer = createRequire(new URL("../packages/server/package.json", import.meta.url));
const sqlite = await import("node:sqlite").catch(() => fromServer("@photostructure/sqlite"));

/** SQLite as it comes, without anything of ours. */
export function openPlainDatabase(file) {
  return new sqlite.DatabaseSync(file);
}
