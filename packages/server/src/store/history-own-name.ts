import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

/** What the machine that serves is called in the history; null until somebody says. */
export interface OwnNameTable {
  read(): string | null;
  write(name: string | null): void;
}

export function ownNameTable(database: Database): OwnNameTable {
  const read = database.prepare("SELECT body FROM settings WHERE name = 'own-name'");
  const write = database.prepare(
    "INSERT INTO settings (name, body) VALUES ('own-name', ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body",
  );
  return {
    read: () => {
      const row = read.get() as { body: string } | undefined;
      return row === undefined ? null : keptJson<string | null>(row.body);
    },
    write: (name) => void write.run(JSON.stringify(name)),
  };
}
