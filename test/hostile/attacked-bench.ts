import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { databaseFileName } from "../../packages/server/src/store/database.ts";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { bondedShaft, looseParts, type TestApp } from "../api/server.test-kit.ts";
import { asked, emptyListing, itemOf, model } from "../api/trade.test-kit.ts";

const sighting = (id: string) => {
  const listing = { ...emptyListing, items: [itemOf({ kind: "shaft", flex: "stiff" })] };
  return { id, seenOn: "2026-11-20", text: "a stiff shaft, 35 EUR", read: listing, listing, outcome: "open" };
};
const entry = {
  id: "b1",
  on: "2026-11-02",
  type: "buy",
  amount: { amountMinor: -2500, currency: "EUR" },
  parts: ["h1"],
};
const claim = { id: "cl1", receiver: "Quillon 2", adapter: "Quillon 1", verdict: "fits", evidence: "tried" };

/** What the routes can be asked about: ids of everything that is stocked, and words with a meaning. */
export const benchWords: readonly string[] = [
  ...["h1", "a1", "s1", "g1", "j1", "cl1", "m1", "p1", "s-1", "s-2", "b1", "w1", "none"],
  ...[
    "h1+a1+s1+g1",
    "h1+a1+s1",
    "eu",
    "driver",
    "Quillon 2",
    "Quillon 1",
    "Northmoor",
    "Ombrel",
    "2026-11-25",
  ],
  ...["Northmoor Ombrel driver head, 10.5 degrees, RH, 35 EUR", "kind,id\r\ngrip,g7", '{"parts":[]}', "[]"],
];

/** Fields whose schema would let a test wait as long as a person may want to. */
export const benchFields: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  seconds: fc.constantFrom(0.1, 0.2),
};

/** Puts one of each kind of thing where it may be missing by now; what is there stays. */
export async function stock(app: TestApp): Promise<void> {
  const parts = [...Object.values(looseParts), { id: "w1", kind: "wrench", family: "Quillon 2" }];
  const files = [
    ["/api/bench/import", { parts: parts, joints: [bondedShaft], claims: [claim] }],
    ["/api/catalogue/import", { models: [model] }],
    ["/api/evidence/import", { evidence: [asked] }],
    ["/api/books/import", { entries: [entry] }],
  ] as const;
  for (const [url, file] of files)
    await app.inject({
      method: "POST",
      url,
      payload: { format: "json", text: JSON.stringify(file), take: "good" },
    });
  for (const id of ["s-1", "s-2"])
    await app.inject({ method: "POST", url: "/api/sightings", payload: sighting(id) });
}

/** Looks into the database of a server as another program would. */
export function openWitness(dataFolder: string) {
  const file = readdirSync(dataFolder).find((name) => name === databaseFileName);
  const database = openSqlite(join(dataFolder, file ?? databaseFileName), { readOnly: true });
  const tables = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").all();
  const running = database.prepare("SELECT 1 FROM batches WHERE state = 'running' LIMIT 1");
  const version = database.prepare("PRAGMA data_version");
  return {
    /** Differs after every commit of the server. */
    version: () => JSON.stringify(version.get()),
    /** All that is kept, except what a thread still works out after an earlier change. */
    dump: () =>
      JSON.stringify(
        (tables as { name: string }[])
          .filter(({ name }) => !/^(sqlite_|watches|hits|batch)/.test(name))
          .map(({ name }) => [name, database.prepare(`SELECT * FROM ${name}`).all()]),
      ),
    /** Whether listings are still being judged for an earlier request, and written as they are. */
    isBusy: () => running.get() !== undefined,
    close: () => database.close(),
  };
}
