import type { Goal } from "@ferrule/core";
import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

/** What the user wants of the bench; one goal for now, under the name `bench`. */
export interface GoalsTable {
  read(): Goal;
  write(goal: Goal): void;
}

export function goalsTable(database: Database): GoalsTable {
  const read = database.prepare("SELECT body FROM goals WHERE name = 'bench'");
  const write = database.prepare(
    "INSERT INTO goals (name, body) VALUES ('bench', ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body",
  );
  return {
    read: () => {
      const row = read.get() as { body: string } | undefined;
      return row === undefined ? {} : keptJson<Goal>(row.body);
    },
    write: (goal) => void write.run(JSON.stringify(goal)),
  };
}
