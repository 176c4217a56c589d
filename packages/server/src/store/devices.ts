import type { Database } from "./sqlite.ts";

/** A device that may open the bench over the network. */
export interface Device {
  readonly id: string;
  readonly name: string;
  readonly pairedOn: string;
  /** The last day on which it asked for anything. */
  readonly seenOn: string;
}

/** Devices under the hash of their token; the token itself is nowhere here. */
export interface DevicesTable {
  all(): Device[];
  byToken(tokenHash: string): Device | undefined;
  add(device: Device, tokenHash: string): void;
  rename(id: string, name: string): void;
  see(id: string, on: string): void;
  remove(id: string): void;
}

const fields = "id, name, pairedOn, seenOn";

export function devicesTable(database: Database): DevicesTable {
  const all = database.prepare(`SELECT ${fields} FROM devices ORDER BY place`);
  const byToken = database.prepare(`SELECT ${fields} FROM devices WHERE tokenHash = ?`);
  const insert = database.prepare(
    "INSERT INTO devices (id, name, pairedOn, seenOn, tokenHash) VALUES (?, ?, ?, ?, ?)",
  );
  const rename = database.prepare("UPDATE devices SET name = ? WHERE id = ?");
  const see = database.prepare("UPDATE devices SET seenOn = ? WHERE id = ?");
  const remove = database.prepare("DELETE FROM devices WHERE id = ?");
  return {
    all: () => all.all().map((row) => ({ ...(row as object) }) as Device),
    byToken: (tokenHash) => byToken.get(tokenHash) as Device | undefined,
    add: ({ id, name, pairedOn, seenOn }, tokenHash) =>
      void insert.run(id, name, pairedOn, seenOn, tokenHash),
    rename: (id, name) => void rename.run(name, id),
    see: (id, on) => void see.run(on, id),
    remove: (id) => void remove.run(id),
  };
}
