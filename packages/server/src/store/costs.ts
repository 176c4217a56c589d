import type { CostSettings } from "@ferrule/core";
import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

/** What the user decided about money; one row for now, under the name `bench`. */
export interface CostsTable {
  /** Only what has been written: a setting that came later is not in it. */
  read(): Partial<CostSettings>;
  write(costs: CostSettings): void;
}

export function costsTable(database: Database): CostsTable {
  const read = database.prepare("SELECT body FROM costs WHERE name = 'bench'");
  const write = database.prepare(
    "INSERT INTO costs (name, body) VALUES ('bench', ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body",
  );
  return {
    read: () => {
      const row = read.get() as { body: string } | undefined;
      return row === undefined ? {} : keptJson<CostSettings>(row.body);
    },
    write: (costs) => void write.run(JSON.stringify(costs)),
  };
}
