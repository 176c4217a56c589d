#!/usr/bin/env node
// The command line. What it is built from is built first where it has changed since; all that is said of that goes to
// standard error, so that standard output holds the answer and nothing else.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { isServerBuilt } from "./build-server.mjs";
import { checkNode } from "./check-node.mjs";
import { checkout } from "./run-step.mjs";

checkNode();
if (!isServerBuilt()) {
  const builder = fileURLToPath(new URL("build-server.mjs", import.meta.url));
  const { status } = spawnSync(process.execPath, [builder], { stdio: ["ignore", 2, 2] });
  if (status !== 0) process.exit(70);
}
const { main } = await import("../packages/server/bundle/command-line.js");
await main(checkout);
