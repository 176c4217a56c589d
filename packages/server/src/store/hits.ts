import type { Hit } from "@ferrule/core";
import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

/** A hit as it is kept: what is asked, so that how much over the cap it is can be told whenever the cap changes. */
export interface KeptHit extends Omit<Hit, "overMinor"> {
  /** What was wanted, in words, for when it is wanted no more. */
  readonly text: string;
  readonly priceMinor: number | null;
}

export interface HitsTable {
  /** The newest first. */
  all(): KeptHit[];
  get(id: string): KeptHit | undefined;
  ofSighting(sighting: string): KeptHit[];
  /** Keeps a hit under a new id. */
  add(hit: Omit<KeptHit, "id">): KeptHit;
  replace(hit: KeptHit): void;
  remove(id: string): void;
}

export function hitsTable(database: Database): HitsTable {
  const all = database.prepare("SELECT body FROM hits ORDER BY place DESC");
  const one = database.prepare("SELECT body FROM hits WHERE id = ?");
  const ofSighting = database.prepare("SELECT body FROM hits WHERE sighting = ? ORDER BY place");
  const next = database.prepare(
    "SELECT 1 + coalesce((SELECT seq FROM sqlite_sequence WHERE name = 'hits'), 0) AS number",
  );
  const insert = database.prepare("INSERT INTO hits (id, sighting, body) VALUES (?, ?, ?)");
  const replace = database.prepare("UPDATE hits SET body = ? WHERE id = ?");
  const remove = database.prepare("DELETE FROM hits WHERE id = ?");
  const read = (row: unknown) => keptJson<KeptHit>((row as { body: string }).body);
  return {
    all: () => all.all().map(read),
    get: (id) => {
      const row = one.get(id);
      return row === undefined ? undefined : read(row);
    },
    ofSighting: (sighting) => ofSighting.all(sighting).map(read),
    add: (hit) => {
      const { number } = next.get() as { number: number };
      const kept = { ...hit, id: `hit-${number}` };
      insert.run(kept.id, kept.sighting, JSON.stringify(kept));
      return kept;
    },
    replace: (hit) => void replace.run(JSON.stringify(hit), hit.id),
    remove: (id) => void remove.run(id),
  };
}
