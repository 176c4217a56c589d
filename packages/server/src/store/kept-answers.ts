import type { Database } from "./sqlite.ts";

/** The answer to a request that came with a key, so that the same request sent again gets the same answer. */
export interface KeptAnswer {
  readonly status: number;
  readonly body: string;
}

export interface KeptAnswersTable {
  get(key: string): KeptAnswer | undefined;
  put(key: string, answer: KeptAnswer, on: string): void;
  /** Forgets what was answered before a day. */
  forgetBefore(day: string): void;
}

export function keptAnswersTable(database: Database): KeptAnswersTable {
  const get = database.prepare("SELECT status, body FROM kept_answers WHERE key = ?");
  const put = database.prepare(
    "INSERT INTO kept_answers (key, status, body, answeredOn) VALUES (?, ?, ?, ?) ON CONFLICT (key) DO NOTHING",
  );
  const forget = database.prepare("DELETE FROM kept_answers WHERE answeredOn < ?");
  return {
    get: (key) => get.get(key) as KeptAnswer | undefined,
    put: (key, { status, body }, on) => void put.run(key, status, body, on),
    forgetBefore: (day) => void forget.run(day),
  };
}
