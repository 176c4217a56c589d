#!/usr/bin/env node
import { realpathSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { buildApp } from "./app.ts";
import { emptyContents } from "./bench/bench-contents.ts";
import { localToday } from "./clock.ts";
import { readEnvironment } from "./environment.ts";
import { openNetwork } from "./network/network.ts";
import { offerText } from "./pairing/offer-text.ts";
import { readDemo, readReference } from "./reference-files.ts";
import { listenProblem, networkProblem, StartupProblem } from "./startup-problem.ts";
import { openDailyBackups } from "./store/daily-backups.ts";

/** The same from `src` and from `dist`. */
const checkout = fileURLToPath(new URL("../../../", import.meta.url));

/** Starts the server as the environment says and prints its address. It stops by SIGTERM or SIGINT. */
export async function main(): Promise<void> {
  try {
    await start();
  } catch (error) {
    if (!(error instanceof StartupProblem)) throw error;
    process.stderr.write(`Ferrule cannot start. ${error.message}\n`);
    process.exitCode = 1;
  }
}

async function start(): Promise<void> {
  const environment = readEnvironment(process.env);
  const { port, host, dataFolder, allowedHosts, networkPort, dailyBackups, requestsPerMinute } = environment;
  const network = networkPort === undefined ? undefined : await openNetwork(dataFolder);
  const app = await buildApp({
    dataFolder,
    allowedHosts,
    requestsPerMinute,
    network,
    reference: readReference(`${checkout}data`),
    // Read at the first start, and by those who ask for it again; holding it to its schemas takes longer than opening a large bench.
    demo: () => readDemo(`${checkout}data`) ?? emptyContents,
    pageFolder: `${checkout}packages/ui/dist-page`,
    logger: { level: "error" },
    note: say,
  });
  try {
    await app.listen({ port, host });
  } catch (error) {
    await app.close();
    throw listenProblem(error, host, port);
  }
  try {
    if (networkPort !== undefined) await network?.listen(app, networkPort);
  } catch (error) {
    await app.close();
    throw networkProblem(error, networkPort ?? 0);
  }
  for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => void app.close());
  say(`Ferrule is at ${addressOf(app.server.address() as AddressInfo)} and keeps its bench in ${dataFolder}`);
  for (const url of network?.urls() ?? [])
    say(`Other devices find it at ${url}/ once they are paired, on the page Devices`);
  // To those who look on only: what goes into a file or a log stays there.
  if (network && process.stdout.isTTY) process.stdout.write(await offerText(app, network.urls()));
  // Once it serves, so that nobody waits for it; its timer does not hold up the end.
  if (dailyBackups) openDailyBackups({ dataFolder, today: localToday, failed: warn }).look();
}

const say = (words: string) => void process.stdout.write(`${words}\n`);
const warn = (words: string) => void process.stderr.write(`${words}\n`);

function addressOf({ address, family, port }: AddressInfo): string {
  return `http://${family === "IPv6" ? `[${address}]` : address}:${port}/`;
}

const entry = process.argv[1];
if (entry !== undefined && realpathSync(entry) === fileURLToPath(import.meta.url)) await main();
