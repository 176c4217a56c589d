import { spawn } from "node:child_process";
import { chmodSync, cpSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Example, emptyContents } from "../../packages/server/src/bench/bench-contents.ts";
import { readDemo, readReference } from "../../packages/server/src/reference-files.ts";
import { backupTo } from "../../packages/server/src/store/backup.ts";
import { closeDatabase, openDatabase } from "../../packages/server/src/store/database.ts";
import { openTables } from "../../packages/server/src/store/tables.ts";
import { evidenceSheet, modelsSheet } from "../../packages/server/src/transfer/list-files.ts";
import { writeCsv, writeListCsv } from "../../packages/server/src/transfer/write-csv.ts";
import { openTestApp, temporaryFolder } from "./server.test-kit.ts";

const checkout = fileURLToPath(new URL("../../", import.meta.url));
export const reference = readReference(join(checkout, "data"));
export const demo: Example = readDemo(join(checkout, "data")) ?? emptyContents;

export const listing =
  "Northmoor Ombrel driver head only, right handed, 10.5 degrees, 50 euros, postage 4.50. Small sky mark, no cracks\n";
export const listings = [
  "Haldenbach Skerrick driver head, RH, 9 degrees, 20 euros posted",
  "Brunsgaard Plain Steel 115 shafts, steel, regular, 6 of them, 5 euros each",
  "Wanted: lefty driver head, any loft, up to 30 euros",
].join("\n---\n");

/** A place to run command lines in: its files, and a bench of its own. */
export interface Place {
  readonly folder: string;
  readonly data: string;
}

/** The example as a stored bench, and the files that the examples of the help name. Gone when the test is over. */
export async function place(example: Example | null = demo): Promise<Place> {
  const top = temporaryFolder();
  const [folder, data, bin] = ["files", "data", "bin"].map((name) => join(top, name)) as [
    string,
    string,
    string,
  ];
  for (const made of [folder, bin]) mkdirSync(made);
  const command = join(bin, "ferrule");
  writeFileSync(command, `#!/bin/sh\nexec "${process.execPath}" "${checkout}scripts/ferrule.mjs" "$@"\n`);
  chmodSync(command, 0o755);
  if (example) {
    const made = join(top, "made");
    await keepAsOwn(example, made);
    // A copy: this process may still hold the database that it made.
    cpSync(made, data, { recursive: true });
  }
  for (const [name, text] of Object.entries(files())) writeFileSync(join(folder, name), text);
  const kept = openDatabase(undefined);
  backupTo(kept, join(folder, "backup.sqlite"));
  kept.close();
  return { folder, data };
}

/** What is on the bench is the user's own, not the example that it was taken from. */
async function keepAsOwn(example: Example, data: string): Promise<void> {
  await (await openTestApp({ dataFolder: data, demo: example, reference })).close();
  const database = openDatabase(data);
  openTables(database).settings.markExample(false);
  closeDatabase(database);
}

function files(): Record<string, string> {
  const { parts, joints, claims, goal } = demo;
  const shafts = [
    "kind,id,maker,model,suits,massG,massG.source",
    "shaft,NEW1,Vexholm,Reedlace 60,wood,61,measured",
    "shaft,NEW2,Vexholm,Reedlace 60,wood,60.5,measured",
  ];
  const prices = [
    "on,what,kind,price,currency",
    "2026-11-01,sold,club,88.50,EUR",
    "2026-11-03,asked,shaft,30,EUR",
  ];
  return {
    "listing.txt": listing,
    "listings.txt": listings,
    "bench.json": JSON.stringify({ parts, joints, claims, goal }),
    "parts.csv": writeCsv(demo),
    "shafts.csv": shafts.join("\n"),
    "models.csv": writeListCsv(demo.models ?? [], modelsSheet.columns, modelsSheet.always),
    "evidence.csv": writeListCsv(demo.evidence ?? [], evidenceSheet.columns, evidenceSheet.always),
    "prices.csv": prices.join("\n"),
    "log.json": JSON.stringify({ sightings: demo.sightings ?? [] }),
  };
}

export interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a line of the shell at a place, with `ferrule` on its path. */
export function shell({ folder, data }: Place, line: string, input = ""): Promise<Ended> {
  const path = `${join(folder, "..", "bin")}:${process.env.PATH}`;
  const child = spawn("sh", ["-c", line], {
    cwd: folder,
    env: { ...process.env, PATH: path, FERRULE_DATA: data },
  });
  const said = { out: "", err: "" };
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    said.out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    said.err += text;
  });
  // A command that reads no input may be gone before it is written.
  child.stdin.on("error", () => {}).end(input);
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (exit) => resolve({ exit, ...said }));
  });
}
