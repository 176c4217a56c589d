#!/usr/bin/env node
import { realpathSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { buildApp } from "./app.ts";
import { readEnvironment } from "./environment.ts";
import { openNetwork } from "./network/network.ts";
import { offerText } from "./pairing/offer-text.ts";
import { readDemo, readReference } from "./reference-files.ts";
import { listenProblem, networkProblem, StartupProblem } from "./startup-problem.ts";

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
  const { port, host, dataFolder, allowedHosts, networkPort } = readEnvironment(process.env);
  const network = networkPort === undefined ? undefined : await openNetwork(dataFolder);
  const app = await buildApp({
    dataFolder,
    allowedHosts,
    network,
    reference: readReference(`${checkout}data`),
    demo: readDemo(`${checkout}data`),
    pageFolder: `${checkout}packages/ui/dist-page`,
    logger: { level: "error" },
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
  process.stdout.write(
    `Ferrule is at ${addressOf(app.server.address() as AddressInfo)} and keeps its bench in ${dataFolder}\n`,
  );
  for (const url of network?.urls() ?? [])
    process.stdout.write(`Other devices find it at ${url}/ once they are paired, on the page Devices\n`);
  // To those who look on only: what goes into a file or a log stays there.
  if (network && process.stdout.isTTY) process.stdout.write(await offerText(app, network.urls()));
}

function addressOf({ address, family, port }: AddressInfo): string {
  return `http://${family === "IPv6" ? `[${address}]` : address}:${port}/`;
}

const entry = process.argv[1];
if (entry !== undefined && realpathSync(entry) === fileURLToPath(import.meta.url)) await main();
