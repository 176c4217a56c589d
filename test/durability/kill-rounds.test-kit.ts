import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import type { Entry, Joint, Part, Sighting } from "@ferrule/core";
import { openSqlite } from "../../packages/server/src/store/sqlite.ts";
import { type BenchState, type Change, wrongsOf } from "./ledger.test-kit.ts";
import { type ServerRow, serverRow } from "./server-process.test-kit.ts";
import { storm } from "./storm.test-kit.ts";

export interface KillOptions {
  /** The built `main.js` of the server to kill. */
  readonly mainModule: string;
  readonly rounds: number;
  /** Of what the clients do and for how long; where in the server's own work that ends is left to chance. */
  readonly seed: number;
  readonly log?: (line: string) => void;
}

export interface KillReport {
  readonly rounds: number;
  /** Requests that were answered before a kill. */
  readonly acknowledged: number;
  /** Changes that had been asked for when the server died, and that it had not answered. */
  readonly open: number;
  /** Those of them that were there after all, whole. */
  readonly openAndDone: number;
  readonly killedAtStart: number;
  readonly wrongs: readonly string[];
}

type Counts = { -readonly [Name in keyof Omit<KillReport, "rounds" | "wrongs">]: number };

/** A folder, what was asked of its bench, and what a seed decides. */
interface Siege {
  readonly folder: string;
  readonly servers: ServerRow;
  readonly random: () => number;
  readonly counts: Counts;
  changes: Change[];
}

const clients = 6;
const leastAnswers = 10;
const moreAnswers = 60;
const longestMs = 40;
const longestStartMs = 500;
/** A bench grows by each round, and reading it takes longer. */
const roundsPerBench = 20;

/**
 * Kills a server by SIGKILL in a storm of changes, again and again, and after each time holds its files and the bench that the next
 * server tells to what was asked for and acknowledged. Now and then the next one is killed too, while it starts.
 */
export async function killRounds({ mainModule, rounds, seed, log }: KillOptions): Promise<KillReport> {
  const counts: Counts = { acknowledged: 0, open: 0, openAndDone: 0, killedAtStart: 0 };
  const wrongs: string[] = [];
  const servers = serverRow(mainModule);
  const top = mkdtempSync(join(tmpdir(), "ferrule-kill-"));
  const siege: Siege = { folder: "", servers, random: seeded(seed), counts, changes: [] };
  let at = siege;
  try {
    for (let round = 1; round <= rounds; round += 1) {
      if (round % roundsPerBench === 1) at = await newBench(siege, join(top, `${round}`));
      const found = await oneRound(at, `${round}`);
      wrongs.push(...found.map((wrong) => `round ${round}: ${wrong}`));
      log?.(`round ${round}: ${counts.acknowledged} acknowledged so far, ${found.length} wrong`);
    }
  } finally {
    await servers.end();
    rmSync(top, { recursive: true, force: true });
  }
  return { rounds, ...counts, wrongs };
}

/** A bench without the example, which its server has open. */
async function newBench(siege: Siege, folder: string): Promise<Siege> {
  await siege.servers.kill();
  mkdirSync(folder);
  const address = await siege.servers.start(folder);
  await fetch(`${address}/api/bench/start-own`, { method: "POST" });
  return { ...siege, folder, changes: [] };
}

async function oneRound(siege: Siege, name: string): Promise<string[]> {
  await stormAndKill(siege, name);
  const damage = damageOf(siege.folder);
  if (siege.random() < 0.2) await killAtStart(siege);
  const address = await siege.servers.start(siege.folder);
  const state = await stateOf(address, siege.folder);
  const found = [...damage, ...wrongsOf(siege.changes, state)];
  settle(siege, state);
  return found;
}

/** The storm is let go on for so many answers and a little longer: on a slow machine a time alone would be over before it began. */
async function stormAndKill({ servers, changes, random, counts }: Siege, name: string): Promise<void> {
  const address = await servers.address();
  const storms: Promise<void>[] = [];
  let left = leastAnswers + Math.floor(random() * moreAnswers);
  const enough = new Promise<void>((resolve) => {
    const answered = () => {
      counts.acknowledged += 1;
      left -= 1;
      if (left === 0) resolve();
    };
    for (let at = 0; at < clients; at += 1)
      storms.push(
        storm(address, { changes, random: seeded(random() * 2 ** 31), name: `${name}-${at}`, answered }),
      );
  });
  await Promise.race([enough, Promise.all(storms)]);
  await wait(random() * longestMs);
  await servers.kill();
  await Promise.all(storms);
}

async function killAtStart({ servers, folder, random, counts }: Siege): Promise<void> {
  void servers.start(folder).catch(() => {});
  await wait(random() * longestStartMs);
  await servers.kill();
  counts.killedAtStart += 1;
}

/**
 * What is wrong in the files as the crash left them, by SQLite's own check and by the history, which has as many lines of each change as it
 * says. It looks at copies, so that the next start finds the very same.
 */
function damageOf(folder: string): string[] {
  return onCopies(folder, (database) => {
    const answers = database.prepare("PRAGMA integrity_check").all() as { integrity_check: string }[];
    const halves = database
      .prepare(
        "SELECT number FROM changes WHERE things <> (SELECT count(*) FROM change_entries WHERE change = number)",
      )
      .all() as { number: number }[];
    return [
      ...answers.map((answer) => answer.integrity_check).filter((words) => words !== "ok"),
      ...halves.map(({ number }) => `change ${number} of the history: half of it is there`),
    ];
  });
}

function onCopies<T>(folder: string, ask: (database: ReturnType<typeof openSqlite>) => T): T {
  const copies = mkdtempSync(join(tmpdir(), "ferrule-killed-"));
  const name = "bench.sqlite";
  try {
    for (const end of ["", "-wal"])
      if (existsSync(join(folder, name + end))) cpSync(join(folder, name + end), join(copies, name + end));
    const database = openSqlite(join(copies, name));
    try {
      return ask(database);
    } finally {
      database.close();
    }
  } finally {
    rmSync(copies, { recursive: true });
  }
}

async function stateOf(address: string, folder: string): Promise<BenchState> {
  const get = async (path: string) => (await fetch(address + path)).json();
  const [bench, books, log, prices] = await Promise.all(
    ["/api/bench", "/api/books", "/api/sightings", "/api/evidence"].map(get),
  );
  const byId = <T extends { id?: string }>(things: readonly T[]) =>
    new Map(things.map((thing) => [thing.id as string, thing]));
  const deletions = onCopies(folder, (database) => database.prepare("SELECT body FROM deletions").all());
  return {
    parts: byId(bench.parts as Part[]),
    joints: byId(bench.joints as Joint[]),
    entries: books.entries as Entry[],
    sightings: byId(log.sightings as Sighting[]),
    evidence: prices.evidence.length,
    deletions: (deletions as { body: string }[]).map(({ body }) => body),
  };
}

/** What the next start showed stays so: what was not answered is counted, and from now on is either there or was never asked for. */
function settle(siege: Siege, state: BenchState): void {
  const open = siege.changes.filter(({ acknowledged }) => !acknowledged);
  siege.counts.open += open.length;
  siege.counts.openAndDone += open.filter(({ isDone }) => isDone(state)).length;
  siege.changes = siege.changes.flatMap((change) => {
    if (change.acknowledged || change.isDone(state)) return { ...change, acknowledged: true };
    // What stood before the step that was cut off has to go on standing.
    return { ...change, isDone: change.isUndone, acknowledged: true };
  });
}

/** Mulberry32 (Tommy Ettinger, public domain): numbers from 0 up to and without 1. */
function seeded(seed: number): () => number {
  let state = Math.floor(seed) | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
