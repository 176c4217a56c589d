import { buildServer } from "./build-server.mjs";
import { checkNode } from "./check-node.mjs";
import { install } from "./install.mjs";
import { orExit } from "./run-step.mjs";

checkNode();
await orExit(async () => {
  await install();
  await buildServer();
});

const { bench } = await import("../bench/all.mjs");
await orExit(() => bench(process.argv.slice(2)));
